import type { Scenario } from "../../farm/scenario.js";
import type { RuleId } from "../../rules/rule.js";
import { quantileOf, quantileRanks, shareInterval } from "../../science/quantile.js";
import { CAUSES, KINDS, type Cause, type Failure, type LivedYear, type YearKind } from "./lived-year.js";

/** So many of the years, and between which shares the true one lies, 19 times in 20. */
export interface Often {
  readonly years: number;
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** An amount that is enough in a share of years, and between which amounts the true one lies, 19 times in 20; `high` is null where more years would be needed to say. */
export interface Enough {
  readonly share: number;
  readonly amount: number;
  readonly low: number;
  readonly high: number | null;
}

/** Failures that began alike: what failed first, where, and in how many years. */
export interface Weak {
  readonly rule: RuleId | null;
  readonly cell: string | null;
  readonly years: number;
  readonly example: Failure;
}

/** Years in which a plan fails by one cause, be it the first failure of the year or not. */
export interface ByCause {
  readonly failed: Often;
  /** Week by which half of these years have failed by it; null where none does. */
  readonly middleWeek: number | null;
  /** Rules and cells by which it fails first, most years first; and rules alone. */
  readonly weak: readonly Weak[];
  readonly weakRules: readonly Weak[];
}

export interface KindOfYear {
  readonly kind: YearKind;
  readonly years: number;
  readonly failed: number;
  /** Half of these years need no more; null without such years. */
  readonly hayFedKg: number | null;
  readonly yardDays: Readonly<Record<string, number>> | null;
}

/** Failed years by how much of the season is amiss in them. */
export interface Badness {
  /** Years with at most so many days amiss, null for all that have more; not counted in an earlier row. */
  readonly upToDays: number | null;
  readonly years: number;
}

/** What many years say of a plan. */
export interface WeatherSummary {
  readonly years: number;
  readonly failed: Often;
  readonly badness: readonly Badness[];
  /** Half of the years that fail have no more days amiss; null where none fails. */
  readonly middleDaysAmiss: number | null;
  readonly byCause: Readonly<Record<Cause, ByCause>>;
  /** Years that failed first in each week of the season. */
  readonly byWeek: readonly number[];
  /** Week in which half of the years that fail have failed; null where none does. */
  readonly middleWeek: number | null;
  /** Hay fed in the season. */
  readonly hay: readonly Enough[];
  /** By week of the season, hay fed so far that is enough in each share of years. */
  readonly hayByWeek: readonly { readonly share: number; readonly kg: readonly number[] }[];
  /** Years in which hay in store and hay made feed the yards and leave what winter needs. */
  readonly winterKept: Often;
  readonly kinds: readonly KindOfYear[];
}

/** Half the years, 8 years in 10, 19 in 20. */
export const SHARES = [0.5, 0.8, 0.95] as const;

/** A slip, a bad spell, and what is more than a fortnight. */
const BADNESS_DAYS = [3, 14] as const;

/** @param years at least one */
export function weatherSummary({ hay }: Scenario, years: readonly LivedYear[]): WeatherSummary {
  const failures = years.flatMap(({ failure }) => (failure ? [failure] : []));
  const weeks = weeksOf(failures);
  return {
    years: years.length,
    failed: often(failures.length, years.length),
    badness: badnessOf(years),
    middleDaysAmiss: middleOf(inOrder(years.filter(({ failure }) => failure !== null).map(({ daysAmiss }) => daysAmiss))),
    byCause: Object.fromEntries(CAUSES.map((cause) => [cause, byCause(years, cause)])) as Record<Cause, ByCause>,
    byWeek: years[0].hayByWeek.map((_, week) => weeks.filter((one) => one === week).length),
    middleWeek: middleOf(weeks),
    hay: SHARES.map((share) => enough(years.map(({ hayFedKg }) => hayFedKg), share)),
    hayByWeek: SHARES.map((share) => ({ share, kg: years[0].hayByWeek.map((_, week) => quantileOf(inOrder(years.map(({ hayByWeek }) => hayByWeek[week])), share)) })),
    winterKept: often(years.filter(({ hayFedKg, hayMadeKg }) => hay.inStoreKg + hayMadeKg - hayFedKg >= hay.winterNeedKg).length, years.length),
    kinds: KINDS.map((kind) => kindOfYear(kind, years.filter((year) => year.kind === kind))),
  };
}

function badnessOf(years: readonly LivedYear[]): readonly Badness[] {
  const days = years.filter(({ failure }) => failure !== null).map(({ daysAmiss }) => daysAmiss);
  return [...BADNESS_DAYS, null].map((upToDays, i) => {
    const over = BADNESS_DAYS[i - 1] ?? -1;
    return { upToDays, years: days.filter((one) => one > over && one <= (upToDays ?? Infinity)).length };
  });
}

function byCause(years: readonly LivedYear[], cause: Cause): ByCause {
  const failures = years.flatMap(({ failures: own }) => own[cause] ?? []);
  return {
    failed: often(failures.length, years.length),
    middleWeek: middleOf(weeksOf(failures)),
    weak: gathered(failures, ({ rule, cell }) => JSON.stringify([rule, cell])),
    weakRules: gathered(failures, ({ rule }) => String(rule)),
  };
}

function weeksOf(failures: readonly Failure[]): readonly number[] {
  return inOrder(failures.map(({ day }) => Math.floor(day / 7)));
}

function middleOf(weeks: readonly number[]): number | null {
  return weeks.length > 0 ? quantileOf(weeks, 0.5) : null;
}

function often(many: number, years: number): Often {
  return { years: many, share: many / years, ...shareInterval(many, years) };
}

function enough(amounts: readonly number[], share: number): Enough {
  const sorted = inOrder(amounts);
  const { low, high } = quantileRanks(sorted.length, share);
  return { share, amount: quantileOf(sorted, share), low: sorted[low - 1] ?? 0, high: sorted[high - 1] ?? null };
}

function kindOfYear(kind: YearKind, years: readonly LivedYear[]): KindOfYear {
  const middle = (amounts: readonly number[]): number => quantileOf(inOrder(amounts), 0.5);
  const groups = Object.keys(years[0]?.yardDays ?? {});
  return {
    kind,
    years: years.length,
    failed: years.filter(({ failure }) => failure !== null).length,
    hayFedKg: years.length > 0 ? middle(years.map(({ hayFedKg }) => hayFedKg)) : null,
    yardDays: years.length > 0 ? Object.fromEntries(groups.map((group) => [group, middle(years.map(({ yardDays }) => yardDays[group]))])) : null,
  };
}

/** Failures by what they have in common, the most first; of as many, which came first. */
function gathered(failures: readonly Failure[], keyOf: (failure: Failure) => string): readonly Weak[] {
  const byKey = new Map<string, Failure[]>();
  for (const failure of failures) byKey.set(keyOf(failure), [...(byKey.get(keyOf(failure)) ?? []), failure]);
  return [...byKey.values()]
    .map(([example, ...more]) => ({ rule: example.rule, cell: example.cell, years: 1 + more.length, example }))
    .sort((a, b) => b.years - a.years);
}

function inOrder(amounts: readonly number[]): readonly number[] {
  return [...amounts].sort((a, b) => a - b);
}
