import { figureOf, isBird, useOf, type Cell, type Group, type Scenario, type Strip } from "../../farm/scenario.js";
import { addDays } from "../../quantity/calendar.js";
import type { RuleId } from "../../rules/rule.js";
import { takenKgDm } from "../../science/intake.js";

/** What ends a pen's stand on one position: its own rule, nitrogen on the footprint, the grass under it, or the pressure of pigs. */
export interface StandLimit {
  readonly by: "step" | "nitrogen" | "grass" | "pressure";
  /** Whole days, 0 where not even one is borne. */
  readonly days: number;
  /** Who printed the figure that it rests on: a page, "judgement", or the farm file. */
  readonly source: string;
}

const OWN = "the farm file";

/** Days of twelve months. */
const YEAR = 365;

/** Nitrogen of the whole group in a day, kg. */
export function nitrogenADay(group: Group): number {
  return group.head * group.nitrogenKgPerHeadDay + (group.young?.head ?? 0) * group.youngNitrogenKgPerHeadDay;
}

/** Nitrogen that may still fall on a cell in twelve months, kg/ha: the ceiling less what lay there before the season. */
export function ceilingLeft(scenario: Scenario, cell: Cell): number {
  if (useOf(scenario, "nitrogen-ceiling", cell.field, null) === "off") return Infinity;
  const most = figureOf(scenario, "nitrogen-ceiling", "cell", cell.field, null) ?? Infinity;
  const since = addDays(scenario.season.firstDay, -YEAR);
  const past = cell.pastNitrogen.filter(({ day }) => day > since).reduce((sum, { kgPerHa }) => sum + kgPerHa, 0);
  return Math.max(0, most - past);
}

/**
 * How long one position bears a group in a cell, by each thing that ends it, shortest first.
 *
 * @param leftKgPerHa N that may still fall there, kg/ha
 */
export function standLimits(scenario: Scenario, group: Group, strip: Strip, cell: Cell, leftKgPerHa: number): readonly StandLimit[] {
  const nitrogenDays = (leftKgPerHa * strip.areaHa) / nitrogenADay(group);
  const limits = [
    limit("nitrogen", nitrogenDays, sourceOf(scenario, "nitrogen-ceiling", "cell", cell.field, null)),
    ...(isBird(group.kind) ? birdLimits(scenario, group, strip, cell) : pigLimits(scenario, group, strip, cell)),
  ];
  return limits.filter(({ days }) => Number.isFinite(days)).sort((a, b) => a.days - b.days);
}

function birdLimits(scenario: Scenario, group: Group, strip: Strip, cell: Cell): readonly StandLimit[] {
  const figure = (rule: RuleId, key: string, otherwise: number): number => figureOf(scenario, rule, key, cell.field, group.name) ?? otherwise;
  const off = useOf(scenario, "pen-steps", cell.field, group.name) === "off";
  const { intake } = group;
  const eaten = "kgDmPerHeadDay" in intake ? group.head * intake.kgDmPerHeadDay : group.head * group.weightKg * intake.shareOfWeight;
  const standing = Math.max(0, cell.coverKgPerHa - figure("demand-met", "least-standing", 0)) * strip.areaHa;
  return [
    limit("step", off ? Infinity : figure("pen-steps", "most-step", Infinity), sourceOf(scenario, "pen-steps", "most-step", cell.field, group.name)),
    limit("grass", standing / takenKgDm(eaten, scenario.troddenShare), assumedFrom(scenario, `intake of ${group.name}`)),
  ];
}

function pigLimits(scenario: Scenario, group: Group, strip: Strip, cell: Cell): readonly StandLimit[] {
  if (useOf(scenario, "pig-pressure", cell.field, group.name) === "off") return [];
  const most = figureOf(scenario, "pig-pressure", "most", cell.field, group.name) ?? Infinity;
  return [limit("pressure", (most * strip.areaHa) / group.head, sourceOf(scenario, "pig-pressure", "most", cell.field, group.name))];
}

function limit(by: StandLimit["by"], days: number, source: string): StandLimit {
  return { by, days: Number.isFinite(days) ? Math.floor(days + 1e-9) : Infinity, source };
}

/** Where a rule's figure comes from for a cell's field and a group. */
function sourceOf(scenario: Scenario, rule: RuleId, key: string, field: string | null, group: string | null): string {
  const own = figureOf(scenario, rule, key, field, group) !== figureOf(scenario, rule, key, null, null);
  return own ? OWN : assumedFrom(scenario, `${rule} ${key}`);
}

/** Where a figure comes from that was assumed unless the farm file has it. */
function assumedFrom(scenario: Scenario, key: string): string {
  return scenario.assumed.find((one) => one.key === key)?.source ?? OWN;
}

/** Where the nitrogen of a group's animals comes from. */
export function nitrogenSource(scenario: Scenario, group: Group): string {
  return assumedFrom(scenario, `nitrogen of ${group.name}`);
}
