import { groundResting, groundTaken, lastUseBefore, restBetween } from "../check/earlier.js";
import { replayPlan, type Replay } from "../check/replay.js";
import type { Report } from "../check/report.js";
import { positionOf } from "../check/season-days.js";
import type { CellStay } from "../check/stays.js";
import { areaOver, areaShort, coverSet, daysText, over, plain, shortOf } from "../check/words.js";
import { figureOf, isBird, isGrazer, type Group, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import type { Charge, RuleId } from "../rules/rule.js";
import { stayOn, type Place } from "./why-forced.js";

/** What a rule that is kept finds of a stay, and what it allows, both with units. */
export interface Fact {
  readonly rule: RuleId;
  /** What the figures are of: "grass on the first morning". */
  readonly what: string;
  readonly found: string;
  readonly allowed: string;
}

/** Where a group stands on a day, under which rules, and what the stay costs by the check. */
export interface Here extends Place, Span {
  /** The hold of the owner's that puts it there, or null. */
  readonly held: string | null;
  readonly facts: readonly Fact[];
  readonly charges: readonly Charge[];
}

/** Steps that kept figures are rounded by, away from what is allowed: cover, kg DM/ha, and minutes. */
const COVER_STEP = 100;
const MINUTES_STEP = 5;

/** The stay of a group that holds a day, with the figures that the check finds of it; null where the group has no place. */
export function hereOf(scenario: Scenario, plan: Plan, report: Report, name: string, day: IsoDate): Here | null {
  const stay = stayOn(plan, name, day);
  const group = scenario.groups.find((one) => one.name === name);
  if (!stay || !group) return null;
  const replay = replayPlan(scenario, plan);
  const t = positionOf(replay.days, day);
  const own = replay.groups.find((one) => one.group.name === name)?.stays.find(({ first, last }) => first <= t && t <= last);
  const hold = scenario.holds.find((one) => one.group === name && spanHolds(one.days, day));
  const charges = report.charges.filter((charge) => charge.group === name && (charge.cell === null || charge.cell === stay.cell) && touches(charge, stay));
  const { cell, yard, firstDay, lastDay } = stay;
  return { cell, yard, firstDay, lastDay, held: hold?.name ?? null, charges, facts: [...(own ? factsOfStay(scenario, replay, own, group) : []), workOn(replay, t)] };
}

function touches(a: Span, b: Span): boolean {
  return a.firstDay <= b.lastDay && b.firstDay <= a.lastDay;
}

function factsOfStay(scenario: Scenario, replay: Replay, stay: CellStay, group: Group): readonly Fact[] {
  const figure = (rule: RuleId, key: string): number | null => figureOf(scenario, rule, key, scenario.cells[stay.cell]!.field, group.name);
  const ground = openFact(scenario, replay, stay, figure);
  if (isGrazer(group.kind)) return [...grazingFacts(scenario, replay, stay, figure), ...ground, lengthFact(stay, figure)];
  return isBird(group.kind) ? birdFacts(scenario, replay, stay, figure) : pigFacts(scenario, replay, stay, group, figure);
}

type FigureOf = (rule: RuleId, key: string) => number | null;

function standing(kgPerHa: number, step = COVER_STEP): string {
  return `${plain(shortOf(kgPerHa, step))} kg DM/ha`;
}

function grazingFacts(scenario: Scenario, replay: Replay, stay: CellStay, figure: FigureOf): readonly Fact[] {
  const cell = replay.cells[stay.cell]!;
  const earlier = replay.stays.some((one) => one.cell === stay.cell && one.first < stay.first && isGrazer(scenario.groups[one.group]!.kind));
  const firstPass = !earlier && stay.first < (figure("entry-cover", "first-pass-days") ?? 0);
  const entry = (firstPass ? figure("entry-cover", "first-pass") : figure("entry-cover", "grazers")) ?? 0;
  const left = cell.grazed.filter(({ day }) => day >= stay.first && day <= stay.last).reduce((least, one) => Math.min(least, one.leftKgPerHa), Infinity);
  const rested = lastUseBefore(scenario, replay.days, cell, stay.first, isGrazer);
  return [
    { rule: "entry-cover", what: `grass on the first morning${firstPass ? " (first pass)" : ""}`, found: standing(cell.cover[stay.first]!), allowed: `at least ${coverSet(entry)}` },
    ...(Number.isFinite(left) ? [{ rule: "residual-cover" as const, what: "grass left at the least", found: standing(left), allowed: `at least ${coverSet(figure("residual-cover", "grazers") ?? 0)}` }] : []),
    ...(rested === null ? [] : [{ rule: "rest-period" as const, what: "rest before", found: daysText(restBetween(rested, stay.first)), allowed: `at least ${daysText(figure("rest-period", "floor") ?? 0)}` }]),
  ];
}

function lengthFact(stay: CellStay, figure: FigureOf): Fact {
  const limit = figure("stay-limit", "limit");
  return { rule: "stay-limit", what: "days of the stay", found: daysText(stay.days), allowed: limit === null ? "no limit" : `at most ${daysText(limit)}` };
}

/** What is open of a cell of which a part is shut behind a back fence. */
function openFact(scenario: Scenario, replay: Replay, stay: CellStay, figure: FigureOf): readonly Fact[] {
  const { open } = replay.cells[stay.cell]!;
  const share = (open[stay.first]! / scenario.cells[stay.cell]!.areaHa) * 100;
  if (share > 100 - 1e-6) return [];
  return [{ rule: "worked-ground", what: "ground open", found: `${plain(shortOf(share))} %`, allowed: `at least ${plain(figure("worked-ground", "least-open") ?? 0, 1)} %` }];
}

function birdFacts(scenario: Scenario, replay: Replay, stay: CellStay, figure: FigureOf): readonly Fact[] {
  const cell = replay.cells[stay.cell]!;
  const longest = cell.lots.filter((lot) => lot.stay === stay && lot.areaHa > 0).reduce((most, lot) => Math.max(most, lot.coverKgPerHa), 0);
  const resting = groundResting(scenario, replay.days, cell, stay, isBird, (kind) => figure("poultry-rest", kind) ?? 0);
  return [
    { rule: "upper-cover", what: "longest grass on new ground", found: `${plain(over(longest, COVER_STEP))} kg DM/ha`, allowed: `at most ${coverSet(figure("upper-cover", "birds-barrier") ?? Infinity)}` },
    freshFact("poultry-rest", groundTaken(scenario, stay), cell.cell.areaHa - resting, "birds"),
  ];
}

function pigFacts(scenario: Scenario, replay: Replay, stay: CellStay, { head, strip }: Group, figure: FigureOf): readonly Fact[] {
  const cell = replay.cells[stay.cell]!;
  if (!strip) return [];
  const resting = groundResting(scenario, replay.days, cell, stay, (kind) => kind === "pigs", () => figure("pig-rest", "rest") ?? 0);
  const pressure = (head * Math.min(strip.days, stay.days)) / strip.areaHa;
  return [
    { rule: "entry-cover", what: "grass on the first morning", found: standing(cell.cover[stay.first]!), allowed: `at least ${coverSet(figure("entry-cover", "pigs") ?? 0)}` },
    { rule: "pig-pressure", what: "pigs on a strip", found: `${plain(over(pressure))} pig-days/ha`, allowed: `at most ${plain(figure("pig-pressure", "most") ?? Infinity)} pig-days/ha` },
    freshFact("pig-rest", groundTaken(scenario, stay), cell.cell.areaHa - resting, "pigs"),
  ];
}

function freshFact(rule: "poultry-rest" | "pig-rest", taken: number, fresh: number, kind: string): Fact {
  return { rule, what: "ground the stay takes", found: areaOver(taken), allowed: `at most ${areaShort(Math.max(0, fresh))} rested from ${kind}` };
}

function workOn({ labour }: Replay, t: number): Fact {
  const [needed, home] = [over(labour.minutes[t]!, MINUTES_STEP), shortOf(labour.minutesAtHome[t]!, MINUTES_STEP)];
  return { rule: "people", what: "everybody's work that day", found: `${plain(needed)} min`, allowed: `at most ${plain(home)} min` };
}
