import { figureOf, type Cell, type Scenario } from "../farm/scenario.js";
import { takenKgDm } from "../science/intake.js";
import { SHUT_BY_BIRDS, SHUT_BY_PIGS, type CellInput, type Ground, type Log } from "./cell-record.js";
import type { CellStay } from "./stays.js";

/** Takes the ground of a week on its first day; birds graze it at once, pigs turn it to what rooting leaves. */
export function takeStrip(input: CellInput, ground: Ground, stay: CellStay, t: number, log: Log): void {
  const { scenario, cell, parties } = input;
  const group = scenario.groups[stay.group]!;
  const strip = group.strip!;
  const birds = group.kind !== "pigs";
  if (t === stay.first) ground.opens = Math.max(ground.opens, stay.last + 1 + shutDays(scenario, cell, group.name, birds));
  if ((t - stay.first) % 7 !== 0) return;
  const last = Math.min(t + 6, stay.last);
  const positions = startsBetween(t - stay.first, last - stay.first, strip.days);
  if (positions === 0) return;
  let intake = 0;
  for (let day = t; day <= last; day++) if (input.occupants[day] === stay.group) intake += parties[stay.group]!.intakeKg[day]!;
  const wantedHa = positions * strip.areaHa;
  const areaHa = Math.min(wantedHa, ground.open);
  const taken = takenKgDm(intake, scenario.troddenShare);
  const least = figureOf(scenario, "demand-met", "least-standing", cell.field, group.name) ?? 0;
  const standingKg = Math.max(0, ground.cover - least) * areaHa;
  const rooted = figureOf(scenario, "after-pigs", "cover", cell.field, group.name) ?? 0;
  const goneKg = birds ? Math.min(taken, standingKg) : Math.max(0, ground.cover - rooted) * areaHa;
  log.lots.push({
    stay, first: t, last, areaHa, wantedHa, openHa: ground.open, coverKgPerHa: ground.cover,
    wantedKg: birds ? taken : 0, standingKg: birds ? standingKg : 0,
  });
  const eaten = birds ? goneKg / (1 + scenario.troddenShare) : Math.min(intake, goneKg);
  log.balance.eaten += eaten;
  log.balance.trodden += goneKg - eaten;
  if (areaHa <= 0) return;
  ground.open -= areaHa;
  ground.shut |= birds ? SHUT_BY_BIRDS : SHUT_BY_PIGS;
  ground.lots.push({ areaHa, cover: ground.cover - goneKg / areaHa, growsFrom: last + 1 });
}

function shutDays(scenario: Scenario, { field }: Cell, group: string, birds: boolean): number {
  if (birds) return figureOf(scenario, "worked-ground", "birds", field, group) ?? 0;
  const reseeded = figureOf(scenario, "after-pigs", "reseed", field, group) === 1;
  return figureOf(scenario, "after-pigs", reseeded ? "reseeded" : "back", field, group) ?? 0;
}

/** Positions that begin in a run of days of a stay, the first day being 0. */
function startsBetween(first: number, last: number, daysEach: number): number {
  return Math.floor(last / daysEach) - Math.ceil(first / daysEach) + 1;
}
