import { figureOf, isBird, useOf, type Cell, type Group, type Scenario, type Strip } from "../../farm/scenario.js";
import { addDays } from "../../quantity/calendar.js";
import { RULES } from "../../rules/index.js";
import type { RuleId } from "../../rules/rule.js";
import { takenKgDm } from "../../science/intake.js";

/** What ends a pen's stand on one position: its own rule, nitrogen on the footprint, the grass under it, or the pressure of pigs. */
export interface StandLimit {
  readonly by: "step" | "nitrogen" | "grass" | "pressure";
  /** Whole days, 0 where not even one is borne. */
  readonly days: number;
  /** Key of the published row or rule figure that it rests on. */
  readonly source: string;
}

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
    limit("nitrogen", nitrogenDays, sourceOf("nitrogen-ceiling", "cell")),
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
    limit("step", off ? Infinity : figure("pen-steps", "most-step", Infinity), sourceOf("pen-steps", "most-step")),
    limit("grass", standing / takenKgDm(eaten, scenario.troddenShare), `intake ${group.kind}`),
  ];
}

function pigLimits(scenario: Scenario, group: Group, strip: Strip, cell: Cell): readonly StandLimit[] {
  if (useOf(scenario, "pig-pressure", cell.field, group.name) === "off") return [];
  const most = figureOf(scenario, "pig-pressure", "most", cell.field, group.name) ?? Infinity;
  return [limit("pressure", (most * strip.areaHa) / group.head, sourceOf("pig-pressure", "most"))];
}

function limit(by: StandLimit["by"], days: number, source: string): StandLimit {
  return { by, days: Number.isFinite(days) ? Math.floor(days + 1e-9) : Infinity, source };
}

function sourceOf(rule: RuleId, key: string): string {
  return RULES.find(({ id }) => id === rule)!.parameters.find((parameter) => parameter.key === key)!.source;
}
