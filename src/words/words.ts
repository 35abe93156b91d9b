import { IntlMessageFormat } from "intl-messageformat";
import type { IsoDate } from "../quantity/calendar.js";

/** One language's texts for sheets: messages in ICU's form by key, and the locale of its dates and numbers. */
export interface Catalogue {
  /** BCP 47, "en-GB". */
  readonly locale: string;
  readonly texts: Readonly<Record<string, string>>;
}

export type Values = Readonly<Record<string, string | number>>;

/** What a sheet leaves to be written into: a box for a figure, a box to tick, a line to write on. In the catalogue `<box></box>`, `<tick></tick>`, `<line></line>`. */
const MARKS = ["box", "tick", "line"] as const;
export type Mark = (typeof MARKS)[number];

/** A stretch of a text; strong where the catalogue has it between <b> and </b>. Of a mark, without words. */
export interface Piece {
  readonly text: string;
  readonly strong: boolean;
  readonly mark?: Mark;
}

/** All that a sheet says, in one language. Throws on a key that the catalogue does not have, which is a fault of ours. */
export interface Words {
  readonly locale: string;
  /** A text without stress. */
  readonly say: (key: string, values?: Values) => string;
  /** A text as stretches, some of them strong. */
  readonly pieces: (key: string, values?: Values) => readonly Piece[];
  /** "Wednesday 23 June", "Wed 23 Jun", "23 Jun", "Wed", "June 2027", "23 June 2027". */
  readonly longDay: (day: IsoDate) => string;
  readonly weekdayDay: (day: IsoDate) => string;
  readonly dayMonth: (day: IsoDate) => string;
  readonly weekday: (day: IsoDate) => string;
  readonly longWeekday: (day: IsoDate) => string;
  readonly monthYear: (day: IsoDate) => string;
  readonly fullDay: (day: IsoDate) => string;
  /** "Wed 23", "Wed 23 Jun 2027", "W", "Jun". */
  readonly weekdayFigure: (day: IsoDate) => string;
  readonly weekdayDate: (day: IsoDate) => string;
  readonly weekdayLetter: (day: IsoDate) => string;
  readonly month: (day: IsoDate) => string;
  /** A figure with at most so many decimals, 0 unless given. */
  readonly figure: (value: number, digits?: number) => string;
  /** A figure with just so many decimals. */
  readonly fixed: (value: number, digits: number) => string;
  /** Money without its small coin, in the currency's own sign: "£1,610". */
  readonly money: (value: number, currency: string) => string;
  /** "Cows, Layers and Pigs". */
  readonly list: (items: readonly string[]) => string;
}

interface Strong {
  readonly strong: string;
}

interface Marked {
  readonly mark: Mark;
}

/** Reads a catalogue once; texts are read when they are first said. */
export function wordsOf({ locale, texts }: Catalogue): Words {
  const read = new Map<string, IntlMessageFormat>();
  const formatOf = (key: string): IntlMessageFormat => {
    const known = read.get(key);
    if (known) return known;
    const text = texts[key];
    if (text === undefined) throw new Error(`the catalogue has no text ${key}`);
    const format = new IntlMessageFormat(text, locale);
    read.set(key, format);
    return format;
  };
  const pieces = (key: string, values: Values = {}): readonly Piece[] => {
    const told = formatOf(key).format<Strong | Marked>({ ...values, ...TAGS });
    return (Array.isArray(told) ? told : [told]).map(pieceOf);
  };
  return { locale, pieces, say: (key, values) => pieces(key, values).map(({ text }) => text).join(""), ...daysOf(locale), ...figuresOf(locale) };
}

const TAGS = {
  b: (chunks: readonly unknown[]): Strong => ({ strong: chunks.join("") }),
  ...Object.fromEntries(MARKS.map((mark) => [mark, (): Marked => ({ mark })])),
};

function pieceOf(part: string | Strong | Marked): Piece {
  if (typeof part === "string") return { text: part, strong: false };
  return "mark" in part ? { text: "", strong: false, mark: part.mark } : { text: part.strong, strong: true };
}

type DayWords = Pick<Words, "longDay" | "weekdayDay" | "dayMonth" | "weekday" | "longWeekday" | "monthYear" | "fullDay" | "weekdayFigure" | "weekdayDate" | "weekdayLetter" | "month">;

/** Days are calendar days, so they are told in UTC, where they were made. */
function daysOf(locale: string): DayWords {
  const teller = (options: Intl.DateTimeFormatOptions) => {
    const format = new Intl.DateTimeFormat(locale, { ...options, timeZone: "UTC" });
    return (day: IsoDate): string => format.format(new Date(`${day}T00:00:00Z`)).replace(",", "");
  };
  return {
    longDay: teller({ weekday: "long", day: "numeric", month: "long" }),
    weekdayDay: teller({ weekday: "short", day: "numeric", month: "short" }),
    dayMonth: teller({ day: "numeric", month: "short" }),
    weekday: teller({ weekday: "short" }),
    longWeekday: teller({ weekday: "long" }),
    monthYear: teller({ month: "long", year: "numeric" }),
    fullDay: teller({ day: "numeric", month: "long", year: "numeric" }),
    weekdayFigure: teller({ weekday: "short", day: "numeric" }),
    weekdayDate: teller({ weekday: "short", day: "numeric", month: "short", year: "numeric" }),
    weekdayLetter: teller({ weekday: "narrow" }),
    month: teller({ month: "short" }),
  };
}

function figuresOf(locale: string): Pick<Words, "figure" | "fixed" | "money" | "list"> {
  const list = new Intl.ListFormat(locale, { type: "conjunction" });
  return {
    figure: (value, digits = 0) => new Intl.NumberFormat(locale, { maximumFractionDigits: digits, useGrouping: "min2" }).format(value),
    fixed: (value, digits) => new Intl.NumberFormat(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: "min2" }).format(value),
    money: (value, currency) => new Intl.NumberFormat(locale, { style: "currency", currency, currencyDisplay: "narrowSymbol", maximumFractionDigits: 0 }).format(value),
    list: (items) => list.format(items),
  };
}
