import type { Report } from "../../src/check/report.js";
import type { Plan, Stay } from "../../src/plan/plan.js";
import { RULE_IDS } from "../../src/rules/rule.js";
import { madeDates, type Made } from "../../src/sheets/made.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

/** A made-up month of two groups of cattle, hens and pigs on six cells, with one of everything a sheet can show. */
export const TINY = tinyFarm({
  days: 56,
  firstDay: "2027-05-01",
  cells: [
    cell("H1", { field: "Home" }), cell("H2", { field: "Home" }), cell("H3", { field: "Home", closed: [{ reason: "hay", firstDay: "2027-05-10", lastDay: "2027-06-08" }] }),
    cell("F1", { field: "Far" }), cell("F2", { field: "Far", closed: [{ reason: "wet", firstDay: "2027-04-01", lastDay: "2027-05-12" }] }), cell("F3", { field: "Far" }),
  ],
  groups: [
    group("Cows", { young: { head: 5, weightKg: 80, gainKgPerDay: 1 } }),
    group("Young cows", { letter: "Cy", animalClass: "growing", head: 4, here: [{ firstDay: "2027-05-15", lastDay: "2027-06-25" }] }),
    group("Hens", { letter: "L", kind: "layers", animalClass: "", head: 60, follows: "Cows", strip: { areaHa: 0.015, days: 3, movedBy: "tow", stepMinutes: 40, nets: 2, pen: "Hen house" } }),
    group("Pigs", { kind: "pigs", animalClass: "weaner", head: 8, here: [{ firstDay: "2027-05-03", lastDay: "2027-05-23" }], strip: { areaHa: 0.08, days: 7, movedBy: "hand", stepMinutes: 60, nets: 0, pen: null } }),
  ],
  more: { people: [{ name: "Owner", tows: true, minutesByWeekday: [90, 90, 90, 90, 90, 180, 180], minutesByDay: {}, away: [{ firstDay: "2027-05-20", lastDay: "2027-05-21" }] }] },
});

const stay = (name: string, place: string, firstDay: string, lastDay: string): Stay => ({
  group: name, cell: place === "Yard" ? null : place, yard: place === "Yard" ? place : null, firstDay: `2027-${firstDay}`, lastDay: `2027-${lastDay}`,
});

export const TINY_PLAN: Plan = {
  stays: [
    stay("Cows", "H1", "05-01", "05-03"), stay("Hens", "Yard", "05-01", "05-06"), stay("Pigs", "F3", "05-03", "05-23"), stay("Cows", "H2", "05-04", "05-06"),
    stay("Cows", "H3", "05-07", "05-09"), stay("Hens", "H1", "05-07", "05-12"), stay("Cows", "F1", "05-10", "05-12"), stay("Cows", "F2", "05-13", "05-16"),
    stay("Hens", "F1", "05-13", "06-25"), stay("Young cows", "H2", "05-15", "06-25"), stay("Cows", "Yard", "05-17", "05-18"), stay("Cows", "F2", "05-19", "06-25"),
  ],
  cuts: [{ cell: "H3", cut: "hay", day: "2027-06-08" }],
};

const COVER = Array<number>(57).fill(2400);
const OPEN: Readonly<Record<string, (t: number) => number>> = {
  H1: (t) => (t > 8 && t < 33 ? 0.27 : 0.3),
  F3: (t) => (t > 22 ? 0.06 : 0.3),
};

export const TINY_REPORT: Report = {
  firstDay: "2027-05-01", breaches: [], cost: 71.4, chargesByRule: Object.fromEntries(RULE_IDS.map((rule) => [rule, 0])) as Report["chargesByRule"],
  charges: [
    { rule: "rest-period", group: "Cows", cell: "F2", firstDay: "2027-05-19", lastDay: "2027-05-19", money: 3.4, found: "2 days of rest, 21 usual" },
    { rule: "demand-met", group: "Cows", cell: null, firstDay: "2027-05-17", lastDay: "2027-05-17", money: 18, found: "hay fed" },
    { rule: "demand-met", group: "Cows", cell: null, firstDay: "2027-05-18", lastDay: "2027-05-18", money: 18, found: "hay fed" },
    { rule: "people", group: "Cows", cell: "H2", firstDay: "2027-05-04", lastDay: "2027-05-04", money: 10.5, found: "45 min of moving" },
    { rule: "follow-window", group: "Hens", cell: "F1", firstDay: "2027-05-13", lastDay: "2027-05-13", money: 4, found: "1 day behind the cows, 2 to 4 wanted" },
    { rule: "stay-limit", group: "Cows", cell: "F2", firstDay: "2027-05-22", lastDay: "2027-05-22", money: 0.2, found: "4 days, 3 usual" },
    { rule: "grass-in-hand", group: null, cell: null, firstDay: "2027-06-05", lastDay: "2027-06-05", money: 9, found: "8 days of grass, 15 wished" },
    { rule: "grass-in-hand", group: null, cell: null, firstDay: "2027-06-12", lastDay: "2027-06-12", money: 8.3, found: "9 days of grass, 15 wished" },
  ],
  cells: TINY.cells.map((one) => ({
    cell: one.name, coverKgPerHa: COVER, openHa: COVER.map((_, t) => OPEN[one.name]?.(t) ?? 0.3), nitrogenKgPerHa: 64.9, workedHa: 0, openedHa: 0,
    balance: { start: 0, grown: 0, eaten: 0, trodden: 0, cut: 0, end: 0 },
  })),
  measures: {
    hayFedKg: 412, hayMadeKg: 300, moves: 12, hauls: 3, minutesByDay: [], minutesAtHomeByDay: [], yardDays: { Cows: 2, Hens: 6 },
    nitrogenByCell: {}, nitrogenInYardKg: 4, nitrogenOnHoldingKgPerHa: 64,
  },
};

export const TINY_MADE: Made = {
  ...madeDates("2027-05-03"), version: 3, cost: 71.4, bound: 64.2, handRuleCost: 120, currency: "GBP",
  hay: { dry: { kg: 900, yardDays: { Cows: 5 } }, usual: { kg: 412, yardDays: { Cows: 2 } }, wet: { kg: 400, yardDays: { Cows: 2 } } },
};
