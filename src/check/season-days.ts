import { dayNumber, isoDate, monthOf, weekdayOf, type IsoDate, type Span } from "../quantity/calendar.js";

/** The wall calendar of a season: what each of its days is called. Position 0 is the season's first day. */
export interface SeasonDays {
  readonly count: number;
  /** Day number of the first day. */
  readonly start: number;
  readonly dates: readonly IsoDate[];
  /** 0 for January. */
  readonly months: readonly number[];
  /** 0 for Monday. */
  readonly weekdays: readonly number[];
  /** 1 for the first of January. */
  readonly daysOfYear: readonly number[];
  readonly years: readonly number[];
}

/** First and last position in the season, both counted. */
export interface DayRange {
  readonly first: number;
  readonly last: number;
}

export function seasonDays(season: Span): SeasonDays {
  const start = dayNumber(season.firstDay);
  const count = Math.max(0, dayNumber(season.lastDay) - start + 1);
  const dates = Array.from({ length: count }, (_, t) => isoDate(start + t));
  const years = dates.map((date) => Number(date.slice(0, 4)));
  return {
    count, start, dates, years,
    months: dates.map(monthOf),
    weekdays: dates.map(weekdayOf),
    daysOfYear: dates.map((_, t) => start + t - dayNumber(`${dates[t]!.slice(0, 4)}-01-01`) + 1),
  };
}

/** Days from the season's first day to a date; negative before it. */
export function positionOf(days: SeasonDays, date: IsoDate): number {
  return dayNumber(date) - days.start;
}

/** The part of a span inside the season, or null when none of it is. */
export function rangeIn(days: SeasonDays, span: Span): DayRange | null {
  const first = Math.max(0, positionOf(days, span.firstDay));
  const last = Math.min(days.count - 1, positionOf(days, span.lastDay));
  return first <= last ? { first, last } : null;
}

/** One flag a day: 1 on the days that lie in any of the spans. */
export function daysIn(days: SeasonDays, spans: readonly Span[]): Uint8Array {
  const flags = new Uint8Array(days.count);
  for (const span of spans) {
    const range = rangeIn(days, span);
    if (range) flags.fill(1, range.first, range.last + 1);
  }
  return flags;
}
