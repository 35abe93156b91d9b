import { addDays, daysBetween, isIsoDate, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import { monthNamed } from "../farm/days-meant.js";

/** A way in which a spreadsheet writes days. */
export interface DayForm {
  readonly name: string;
  /** The day of the season that a text means in this form, or null where it means none. */
  readonly dayIn: (text: string, season: Span) => IsoDate | null;
}

type Part = "year" | "month" | "day";

const FIGURES = /^(\d{1,4})\s?[./-]\s?(\d{1,2})\s?[./-]\s?(\d{1,4})(?:\.|\s?\p{L}{1,2}\.)?$/u;
const TWO_FIGURES = /^(\d{1,2})\s?[./-]\s?(\d{1,2})\.?$/;
const DAY_NAME = /^(\d{1,2})[\s.-]*(\p{L}{3,})\.?(?:[\s,.-]+(\d{4}|\d{2}))?$/u;
const NAME_DAY = /^(\p{L}{3,})\.?[\s-]*(\d{1,2})(?:,?\s+(\d{4})|\s?,\s?(\d{2}))?$/u;

/** Days since 1899-12-30 or 1904-01-01, as spreadsheets count them (ISO/IEC 29500-1, 18.17.4.1, date systems). */
const EPOCHS = { "1900": "1899-12-30", "1904": "1904-01-01" } as const;

export const DAY_FORMS: readonly DayForm[] = [
  { name: "day, month, year", dayIn: byFigures(FIGURES, ["day", "month", "year"]) },
  { name: "month, day, year", dayIn: byFigures(FIGURES, ["month", "day", "year"]) },
  { name: "year, month, day", dayIn: byFigures(FIGURES, ["year", "month", "day"]) },
  { name: "day, month", dayIn: byFigures(TWO_FIGURES, ["day", "month"]) },
  { name: "month, day", dayIn: byFigures(TWO_FIGURES, ["month", "day"]) },
  { name: "day and the month's name", dayIn: (text, season) => named(DAY_NAME.exec(text), 1, 2, season) },
  { name: "the month's name and day", dayIn: (text, season) => named(NAME_DAY.exec(text), 2, 1, season) },
  { name: "days counted from 1900", dayIn: (text) => counted(text, EPOCHS["1900"]) },
  { name: "days counted from 1904", dayIn: (text) => counted(text, EPOCHS["1904"]) },
];

function byFigures(form: RegExp, order: readonly Part[]): DayForm["dayIn"] {
  return (text, season) => {
    const found = form.exec(text);
    if (!found) return null;
    const part = (name: Part): string | undefined => (order.includes(name) ? found[order.indexOf(name) + 1] : undefined);
    return dayOf(part("year"), part("month")!, part("day")!, season);
  };
}

function named(found: RegExpExecArray | null, day: number, month: number, season: Span): IsoDate | null {
  const at = found === null ? null : monthNamed(found[month]!);
  return found === null || at === null ? null : dayOf(found[3] ?? found[4], String(at), found[day]!, season);
}

/** Years of two figures are of this century; without its year a day is the one of that date in the season. */
function dayOf(year: string | undefined, month: string, day: string, season: Span): IsoDate | null {
  if (month.length > 2 || day.length > 2 || year?.length === 1 || year?.length === 3) return null;
  const rest = `${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  const years = year === undefined ? [...new Set([season.firstDay, season.lastDay].map((one) => one.slice(0, 4)))] : [year.length === 2 ? `20${year}` : year];
  const days = years.map((one) => `${one}-${rest}`).filter(isIsoDate);
  const [only, ...more] = year === undefined ? days.filter((one) => spanHolds(season, one)) : days;
  return only !== undefined && more.length === 0 ? only : null;
}

function counted(text: string, epoch: IsoDate): IsoDate | null {
  return /^\d{5}$/.test(text) ? addDays(epoch, Number(text)) : null;
}

/** The text without a weekday before it and midnight after it. */
export function bareDay(text: string): string {
  return text.replace(/(T|\s+)(0?0|12(?=.*\sAM$)):00(:00(\.0+)?)?(\s*AM)?Z?$/i, "").replace(/^(\p{L}{2,})[.,]*\s+(?=\d|\p{L}{3,}\.?\s*\d)/u, (all, word: string) => (monthNamed(word) === null ? "" : all)).trim();
}

/** Whether days are all those of the season, one after the other. */
export function isWhole(days: readonly IsoDate[], season: Span): boolean {
  return days.length === daysBetween(season.firstDay, season.lastDay) + 1 && days.every((day, i) => day === addDays(season.firstDay, i));
}
