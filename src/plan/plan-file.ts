import { daysBetween, spanHolds } from "../quantity/calendar.js";
import type { Assumed, Scenario } from "../farm/scenario.js";
import type { Cut, Plan, Stay } from "./plan.js";

/** Yard days of each group in a dry, a usual and a wet year. */
export interface YardDays {
  readonly dry: Readonly<Record<string, number>>;
  readonly usual: Readonly<Record<string, number>>;
  readonly wet: Readonly<Record<string, number>>;
}

/** What plan.json holds: the plan, and what a reader of it must know. Figures as text, with their unit, rounded once. */
export interface PlanFile {
  readonly farm: string;
  readonly version: number;
  /** Version that this one takes the place of. */
  readonly replaces: number | null;
  /** Day on which the plan was made, last firm and last likely day. */
  readonly madeOn: string;
  readonly firmTo: string;
  readonly likelyTo: string;
  /** Print of the farm, changes laid over it. */
  readonly farmPrint: string;
  /** The farm file's long form that the print is of, as one line of JSON; null where the plan was made without one. */
  readonly farmForm: string | null;
  readonly changes: readonly string[];
  readonly plan: Plan;
  readonly measures: Readonly<Record<string, string>>;
  readonly charges: Readonly<Record<string, string>>;
  /** Money in whole hundredths, with its currency: what it costs, what none can cost less than, and by the hand rule. */
  readonly cost: string;
  readonly bound: string | null;
  readonly handRule: string | null;
  readonly yardDays: YardDays | null;
  readonly assumed: readonly Assumed[];
}

/** The plan as plan.json: keys in hyphens, one stay a line. */
export function writePlanFile(scenario: Scenario, file: PlanFile): string {
  const entries: readonly (readonly [string, string])[] = [
    ["inbye", JSON.stringify("plan 1")], ["farm", JSON.stringify(file.farm)], ["version", String(file.version)],
    ["replaces", JSON.stringify(file.replaces)], ["made-on", JSON.stringify(file.madeOn)], ["firm-to", JSON.stringify(file.firmTo)],
    ["likely-to", JSON.stringify(file.likelyTo)], ["farm-print", JSON.stringify(file.farmPrint)],
    ...(file.farmForm === null ? [] : [["farm-file", spaced(JSON.parse(file.farmForm))] as const]), ["changes", spaced(file.changes)],
    ["stays", listed(file.plan.stays.map((stay) => stayEntry(scenario, file.plan, stay)))],
    ["cuts", listed(file.plan.cuts.map((cut) => ({ cell: cut.cell, cut: cut.cut, day: cut.day, held: heldCut(scenario, cut) })))],
    ["measures", spaced(file.measures)], ["charges", spaced(file.charges)], ["cost", JSON.stringify(file.cost)],
    ["bound", JSON.stringify(file.bound)], ["hand-rule", JSON.stringify(file.handRule)], ["yard-days", spaced(file.yardDays)],
    ["assumed", listed(file.assumed.map(({ key, value, source, status }) => ({ key, value, source, status })))],
  ];
  return `{\n${entries.map(([key, value]) => `  ${JSON.stringify(key)}: ${value}`).join(",\n")}\n}\n`;
}

/** JSON on one line, with blanks where people want them. */
function spaced(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(spaced).join(", ")}]`;
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  const pairs = Object.entries(value).filter(([, one]) => one !== undefined);
  return pairs.length === 0 ? "{}" : `{ ${pairs.map(([key, one]) => `${JSON.stringify(key)}: ${spaced(one)}`).join(", ")} }`;
}

function listed(values: readonly object[]): string {
  return values.length === 0 ? "[]" : `[\n${values.map((value) => `    ${spaced(value)}`).join(",\n")}\n  ]`;
}

function stayEntry(scenario: Scenario, plan: Plan, stay: Stay): object {
  const place = stay.cell === null ? { yard: stay.yard } : { cell: stay.cell };
  return {
    group: stay.group, ...place, "first-day": stay.firstDay, "last-day": stay.lastDay,
    positions: positionsOf(scenario, plan, stay) ?? undefined, held: holdOf(scenario, stay),
  };
}

/** Numbers of the pen's or strip's positions in the cell that a stay takes, counted on over the season: "3-4". */
export function positionsOf(scenario: Scenario, plan: Plan, stay: Stay): string | null {
  const span = positionSpan(scenario, plan, stay);
  if (span === null) return null;
  return span.first === span.last ? String(span.first) : `${span.first}-${span.last}`;
}

/** The same as numbers. */
export function positionSpan(scenario: Scenario, plan: Plan, stay: Stay): { readonly first: number; readonly last: number } | null {
  const strip = scenario.groups.find((group) => group.name === stay.group)?.strip;
  if (!strip || stay.cell === null) return null;
  const taken = (one: Stay): number => Math.ceil((daysBetween(one.firstDay, one.lastDay) + 1) / strip.days);
  const earlier = plan.stays.filter((one) => one.group === stay.group && one.cell === stay.cell && one.firstDay < stay.firstDay);
  const before = earlier.reduce((sum, one) => sum + taken(one), 0);
  return { first: before + 1, last: before + taken(stay) };
}

function holdOf(scenario: Scenario, stay: Stay): string | undefined {
  return scenario.holds.find((hold) =>
    hold.group === stay.group && hold.cell === stay.cell && hold.yard === stay.yard && (spanHolds(stay, hold.days.firstDay) || spanHolds(hold.days, stay.firstDay)))?.name;
}

function heldCut(scenario: Scenario, cut: Cut): string | undefined {
  return scenario.holds.find((hold) => hold.cell === cut.cell && hold.cut === cut.cut && spanHolds(hold.days, cut.day))?.name;
}
