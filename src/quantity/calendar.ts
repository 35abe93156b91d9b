/** An ISO 8601 calendar date, "2027-04-10". */
export type IsoDate = string;

const MS_PER_DAY = 86_400_000;

/** Days since 1970-01-01 of an ISO date. Throws on a date that does not exist. */
export function dayNumber(date: IsoDate): number {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!match) throw new Error(`not an ISO date: ${date}`);
  const number = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])) / MS_PER_DAY;
  if (isoDate(number) !== date) throw new Error(`no such day: ${date}`);
  return number;
}

/** The ISO date of a day number. */
export function isoDate(number: number): IsoDate {
  return new Date(number * MS_PER_DAY).toISOString().slice(0, 10);
}

/** True when the text is an ISO date that exists. */
export function isIsoDate(text: string): boolean {
  try {
    dayNumber(text);
    return true;
  } catch {
    return false;
  }
}

/** The date `days` after `date`. */
export function addDays(date: IsoDate, days: number): IsoDate {
  return isoDate(dayNumber(date) + days);
}

/** Days from `from` to `to`: 0 when they are the same day. */
export function daysBetween(from: IsoDate, to: IsoDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** Month of the year, 0 for January. */
export function monthOf(date: IsoDate): number {
  return Number(date.slice(5, 7)) - 1;
}

/** Day of the week, 0 for Monday. */
export function weekdayOf(date: IsoDate): number {
  return (((dayNumber(date) + 3) % 7) + 7) % 7;
}

/** A span of days, both ends counted. */
export interface Span {
  readonly firstDay: IsoDate;
  readonly lastDay: IsoDate;
}

/** True when the date lies in the span. ISO dates compare as text. */
export function spanHolds(span: Span, date: IsoDate): boolean {
  return span.firstDay <= date && date <= span.lastDay;
}
