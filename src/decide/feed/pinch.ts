import type { FeedWeek } from "../feed-budget.js";

/** Weeks in a row, by their places in the list. */
export interface WeekSpan {
  readonly from: number;
  readonly to: number;
  /** Hay as stored and grazers' days in the yard that the budget feeds in them, all groups. */
  readonly hayStoredKg: number;
  readonly hayDays: number;
}

/** From so much up a day's feed is worth about a day on hay: hay fed in such a week is not fed too soon or too late. */
const NEAR_HAY = 0.95;
/** Grass worth less than this share of hay is to spare. */
const SPARE = 0.5;
/** Part of a day on hay that counts. */
const PART_OF_DAY = 0.05;
/** Days of grass ahead above which there is too much (Irish Farmers Journal, spring grass). */
const SURPLUS_DAYS = 20;

/**
 * Weeks in which grass runs short: those in which the budget feeds hay, and those in which a day on hay instead of grass would
 * cost next to nothing more, for then the grass that it saves is wanted in the others.
 */
export function pinches(weeks: readonly FeedWeek[]): readonly WeekSpan[] {
  const fed = weeks.some((week) => hayDaysOf(week) > PART_OF_DAY);
  if (!fed) return [];
  return spansOf(weeks, (week) => hayDaysOf(week) > PART_OF_DAY || (week.worth >= NEAR_HAY && week.daysInHand !== null));
}

/** Weeks that end with more grass standing than is eaten in time, and that no later week is short of. */
export function surpluses(weeks: readonly FeedWeek[]): readonly WeekSpan[] {
  return spansOf(weeks, (week) => (week.daysInHand ?? 0) > SURPLUS_DAYS && week.worth < SPARE);
}

/** The week that ends with the fewest days of grass ahead against the wish; null where no grazers are out. */
export function tightest(weeks: readonly FeedWeek[]): number | null {
  const over = weeks.map(({ daysInHand, daysWished }) => (daysInHand === null ? Infinity : daysInHand - daysWished));
  const least = Math.min(...over);
  return Number.isFinite(least) ? over.indexOf(least) : null;
}

function hayDaysOf({ groups }: FeedWeek): number {
  return groups.reduce((sum, { hayDays }) => sum + hayDays, 0);
}

function spansOf(weeks: readonly FeedWeek[], holds: (week: FeedWeek) => boolean): readonly WeekSpan[] {
  const spans: { from: number; to: number }[] = [];
  weeks.forEach((week, w) => {
    if (!holds(week)) return;
    const last = spans.at(-1);
    if (last && last.to === w - 1) last.to = w;
    else spans.push({ from: w, to: w });
  });
  return spans.map(({ from, to }) => {
    const own = weeks.slice(from, to + 1);
    return {
      from, to, hayDays: own.reduce((sum, week) => sum + hayDaysOf(week), 0),
      hayStoredKg: own.reduce((sum, { groups }) => sum + groups.reduce((kg, one) => kg + one.hayStoredKg, 0), 0),
    };
  });
}
