import { isIsoDate, type IsoDate } from "../quantity/calendar.js";

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

/** A day that a text may mean, and the way of writing by which it does. */
interface Meant {
  readonly day: IsoDate;
  readonly form: "year" | "month" | "day" | "name";
}

const two = (n: string): string => n.padStart(2, "0");

/** 10/4/2027 is two days, by who wrote it; "20 Apr 2027" and "April 20, 2027" are one. */
function meant(text: string): readonly Meant[] {
  const figures = /^(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})$/.exec(text);
  const there = (figures ? byFigures(figures[1]!, figures[2]!, figures[3]!) : byName(text)).filter(({ day }) => isIsoDate(day));
  return there.filter(({ day }, i) => there.findIndex((other) => other.day === day) === i);
}

function byFigures(a: string, b: string, c: string): readonly Meant[] {
  if (a.length === 4) return [{ day: inMonth(a, two(b), two(c)), form: "year" }];
  if (c.length !== 4) return [];
  return [{ day: `${c}-${two(a)}-${two(b)}`, form: "month" }, { day: `${c}-${two(b)}-${two(a)}`, form: "day" }];
}

/** The month's last day for one that it does not have. */
function inMonth(year: string, month: string, day: string): IsoDate {
  return Number(day) > 28 && Number(day) <= 31 ? `${year}-${month}-${Math.min(Number(day), lengthOf(year, month))}` : `${year}-${month}-${day}`;
}

function lengthOf(year: string, month: string): number {
  return new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
}

function byName(text: string): readonly Meant[] {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)?[\s.-]*([a-z]{3,9})\.?[\s,-]+(\d{4})$/i.exec(text);
  const monthFirst = /^([a-z]{3,9})\.?\s*(\d{1,2})(?:st|nd|rd|th)?[\s,]+(\d{4})$/i.exec(text);
  const [day, name, year] = dayFirst ? [dayFirst[1]!, dayFirst[2]!, dayFirst[3]!] : monthFirst ? [monthFirst[2]!, monthFirst[1]!, monthFirst[3]!] : ["", "", ""];
  const month = monthNamed(name);
  return month === null ? [] : [{ day: `${year}-${two(String(month))}-${two(day)}`, form: "name" }];
}

/** The month, from 1, whose English name begins so; three letters at least. */
export function monthNamed(name: string): number | null {
  const month = name.length < 3 ? -1 : MONTHS.findIndex((one) => one.toLowerCase().startsWith(name.toLowerCase()));
  return month < 0 ? null : month + 1;
}

/** The days that a text may mean. */
export function daysMeant(text: string): readonly IsoDate[] {
  return meant(text.trim()).map(({ day }) => day);
}

/** Why a day written year-month-day is none: ", April has 30 days"; empty where that is not the reason. */
export function whyNoDay(text: string): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  const month = MONTHS[Number(parts?.[2]) - 1];
  if (!parts) return "";
  if (month === undefined) return `, there is no month ${parts[2]}`;
  const length = lengthOf(parts[1]!, parts[2]!);
  return Number(parts[3]) > length ? `, ${month}${parts[2] === "02" ? ` ${parts[1]}` : ""} has ${length} days` : "";
}

/** Words and signs between the two days of a span, as people write them. A stroke without blanks is one only after a year that comes last. */
const BETWEEN = /\s+(?:to|until|till|through|and)\s+|\s*(?:–|—|\.{2,})\s*|\s+-\s+|(?<=\d[/.]\d{4}|[a-z]\s\d{4})-/i;

/** The spans "A to B" that a text may mean, two at most, from the days that were typed. */
export function spansMeant(text: string): readonly string[] {
  const [from, to, ...rest] = text.trim().split(BETWEEN);
  if (from === undefined || to === undefined || rest.length > 0) return [];
  const last = meant(to.trim());
  const yearless = meant(from.trim()).length === 0 ? /\b\d{4}\b/.exec(to)?.[0] : undefined;
  const first = meant((yearless === undefined ? from : `${from} ${yearless}`).trim());
  const pairs = first.flatMap((a) => last.filter((b) => b.form === a.form || first.length + last.length === 2).map((b) => [a.day, b.day] as const));
  return pairs.filter(([a, b]) => a <= b).map(([a, b]) => `${a} to ${b}`).slice(0, 2);
}
