import { cell, group } from "../fixtures/tiny-farm.js";
import type { Cell, Group } from "../../src/farm/scenario.js";

/** Ground on which nothing grows: covers stay as typed, so that figures can be worked by hand. */
export function bare(name: string, coverKgPerHa: number, more: Partial<Cell> = {}): Cell {
  return cell(name, { growthByMonth: Array<number>(12).fill(0), coverKgPerHa, ...more });
}

/** Five cows of 600 kg eating 2.5 %: 75 kg DM a day, 86.25 kg with what is trodden on top (15 %). */
export function cows(more: Partial<Group> = {}): Group {
  return group("Cows", more);
}

export function ewes(more: Partial<Group> = {}): Group {
  return group("Ewes", { kind: "sheep", animalClass: "ewe", head: 20, weightKg: 70, ...more });
}

/** Eight weaners on strips of 0.02 ha for 7 days: 2,800 pig-days/ha. */
export function pigs(more: Partial<Group> = {}, strip: Partial<NonNullable<Group["strip"]>> = {}): Group {
  return group("Pigs", {
    kind: "pigs", animalClass: "weaner", head: 8, weightKg: 25, intake: { kgDmPerHeadDay: 0.3 }, nitrogenKgPerHeadDay: 0.02, waterLPerHeadDay: 5,
    strip: { areaHa: 0.02, days: 7, movedBy: "hand", stepMinutes: 60, nets: 0, pen: null, ...strip }, ...more,
  });
}

/** Sixty hens in a house and net on 0.03 ha for 3 days at a time, eating 1.5 kg DM of grass a day. */
export function hens(more: Partial<Group> = {}, strip: Partial<NonNullable<Group["strip"]>> = {}): Group {
  return group("Hens", {
    kind: "layers", animalClass: "", head: 60, weightKg: 1.9, intake: { kgDmPerHeadDay: 0.025 }, nitrogenKgPerHeadDay: 0.0015,
    waterLPerHeadDay: 0.25, strip: { areaHa: 0.03, days: 3, movedBy: "tow", stepMinutes: 30, nets: 1, pen: "Hen house", ...strip }, ...more,
  });
}
