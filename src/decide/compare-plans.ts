import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { addDays, daysBetween, type IsoDate } from "../quantity/calendar.js";
import { RULE_IDS, type RuleId } from "../rules/rule.js";
import { FIGURES, seasonFigures, type FigureKey, type SeasonFigures } from "./season-figures.js";

/** A farm with its plan, as the check judged it. */
export interface PlannedFarm {
  readonly scenario: Scenario;
  readonly plan: Plan;
  readonly report: Report;
}

/** A figure as it is and with a change; base + difference = change. */
export interface Compared {
  readonly base: number;
  readonly change: number;
  readonly difference: number;
}

/** Where a group of both farms, or of one alone, stands otherwise. */
export interface GroupDiffers {
  readonly group: string;
  readonly on: "both" | "base" | "change";
  /** Days on which it stands in another place or is not there, of the days it is there in either plan. */
  readonly days: number;
  readonly of: number;
  /** Those days by week, counted from the first day of either season; null where it is in neither plan all that week. */
  readonly byWeek: readonly (number | null)[];
}

/** Two plans side by side. */
export interface Comparison {
  readonly base: SeasonFigures;
  readonly change: SeasonFigures;
  readonly figures: Readonly<Record<FigureKey, Compared>>;
  readonly charges: Readonly<Record<RuleId, Compared>>;
  readonly nitrogenByCell: Readonly<Record<string, { readonly base: number | null; readonly change: number | null }>>;
  readonly firstDay: IsoDate;
  readonly groups: readonly GroupDiffers[];
  /** Rules that one plan breaks and the other does not, and that cost something in one and nothing in the other. */
  readonly newlyBroken: readonly RuleId[];
  readonly newlyKept: readonly RuleId[];
  readonly newlyPaid: readonly RuleId[];
  readonly noLongerPaid: readonly RuleId[];
}

const WEEK = 7;

/** Compares two plans figure by figure, group by group and rule by rule. */
export function comparePlans(base: PlannedFarm, change: PlannedFarm): Comparison {
  const [before, after] = [base, change].map(({ scenario, plan, report }) => seasonFigures(scenario, plan, report)) as [SeasonFigures, SeasonFigures];
  const broken = ({ report }: PlannedFarm, id: RuleId): boolean => report.breaches.some(({ rule }) => rule === id);
  const paid = ({ report }: PlannedFarm, id: RuleId): boolean => report.chargesByRule[id] > 0;
  const onlyIn = (has: (farm: PlannedFarm, id: RuleId) => boolean, farm: PlannedFarm, other: PlannedFarm) => RULE_IDS.filter((id) => has(farm, id) && !has(other, id));
  return {
    base: before, change: after,
    figures: record(FIGURES, (key) => compared(before.figures[key], after.figures[key])),
    charges: record(RULE_IDS, (id) => compared(base.report.chargesByRule[id], change.report.chargesByRule[id])),
    nitrogenByCell: nitrogenOfBoth(base.report, change.report),
    firstDay: daysOfEither(base.scenario, change.scenario)[0]!,
    groups: groupsDiffer(base, change),
    newlyBroken: onlyIn(broken, change, base), newlyKept: onlyIn(broken, base, change),
    newlyPaid: onlyIn(paid, change, base), noLongerPaid: onlyIn(paid, base, change),
  };
}

function compared(base: number, change: number): Compared {
  return { base, change, difference: change - base };
}

function record<K extends string, V>(keys: readonly K[], value: (key: K) => V): Record<K, V> {
  return Object.fromEntries(keys.map((key) => [key, value(key)])) as Record<K, V>;
}

function nitrogenOfBoth(base: Report, change: Report): Comparison["nitrogenByCell"] {
  const [before, after] = [base.measures.nitrogenByCell, change.measures.nitrogenByCell];
  return record([...new Set([...Object.keys(before), ...Object.keys(after)])], (cell) => ({ base: before[cell] ?? null, change: after[cell] ?? null }));
}

function daysOfEither({ season: one }: Scenario, { season: other }: Scenario): IsoDate[] {
  const first = one.firstDay < other.firstDay ? one.firstDay : other.firstDay;
  const last = one.lastDay > other.lastDay ? one.lastDay : other.lastDay;
  return Array.from({ length: daysBetween(first, last) + 1 }, (_, t) => addDays(first, t));
}

/** Where the groups of either farm stand otherwise, in the order of the farm files. */
export function groupsDiffer(base: PlannedFarm, change: PlannedFarm): readonly GroupDiffers[] {
  const names = new Set([...base.scenario.groups, ...change.scenario.groups].map(({ name }) => name));
  const days = daysOfEither(base.scenario, change.scenario);
  return [...names].map((group) => groupDiffers(group, base, change, days));
}

function groupDiffers(group: string, base: PlannedFarm, change: PlannedFarm, days: readonly IsoDate[]): GroupDiffers {
  const [before, after] = [base, change].map(({ plan }) => placesByDay(plan, group)) as [Map<IsoDate, string>, Map<IsoDate, string>];
  const has = ({ scenario }: PlannedFarm): boolean => scenario.groups.some(({ name }) => name === group);
  const there = days.map((day) => before.has(day) || after.has(day));
  const other = days.map((day) => before.get(day) !== after.get(day));
  const weeks = Array.from({ length: Math.ceil(days.length / WEEK) }, (_, w) => [w * WEEK, (w + 1) * WEEK] as const);
  return {
    group,
    on: has(base) && has(change) ? "both" : has(base) ? "base" : "change",
    days: count(other), of: count(there),
    byWeek: weeks.map(([from, to]) => (there.slice(from, to).includes(true) ? count(other.slice(from, to)) : null)),
  };
}

function count(flags: readonly boolean[]): number {
  return flags.filter(Boolean).length;
}

/** Where a group stands, by day; one that the plan puts in two places is in both. */
function placesByDay({ stays }: Plan, group: string): Map<IsoDate, string> {
  const places = new Map<IsoDate, string>();
  for (const stay of stays.filter((one) => one.group === group)) {
    const place = stay.cell === null ? `yard ${stay.yard}` : `cell ${stay.cell}`;
    for (let day = stay.firstDay; day <= stay.lastDay; day = addDays(day, 1)) places.set(day, places.has(day) ? `${places.get(day)} and ${place}` : place);
  }
  return places;
}
