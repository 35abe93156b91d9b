import { stringify } from "csv-stringify/sync";
import { parse } from "csv-parse/sync";

/** How a spreadsheet saves a table as text. */
export interface Dialect {
  readonly delimiter: "," | ";" | "\t";
  readonly quoted: boolean;
  readonly lineEnd: "\r\n" | "\n" | "\r";
  readonly encoding: "utf-8" | "utf-8 with mark" | "utf-16le" | "utf-16be";
  /** Empty columns and rows behind the table. */
  readonly columns: number;
  readonly rows: number;
  /** How the days are written. */
  readonly day: (iso: string) => string;
}

/** The boxes of a file of ours, by a reader that knows nothing of grids. */
export function boxesOf(text: string): string[][] {
  return parse(text, { bom: true });
}

const SUM = /^[=+@-]/;
const MONTH_AND_DAY = /^(\d{1,2})?[ /.-]?(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*[ /.-]?(\d{1,4})?$/i;
const DAY_OR_HOUR = /^\d{1,4}[/.:-]\d{1,2}([/.:-]\d{1,4})?$/;

/** What a box becomes when a spreadsheet opens the file: sums are run, numbers lose their noughts, days and hours are counted, truth is written large. */
function opened(box: string, day: Dialect["day"]): string {
  if (/^\d{4}-\d\d-\d\d$/.test(box)) return day(box);
  if (/^[\d.e+-]+$/i.test(box) && !Number.isNaN(Number(box))) return String(Number(box));
  if (/^(true|false)$/i.test(box)) return box.toUpperCase();
  if (SUM.test(box)) return "#NAME?";
  return DAY_OR_HOUR.test(box) || (MONTH_AND_DAY.test(box) && /\d/.test(box)) ? "01/02/2026" : box;
}

/** A file of ours as a spreadsheet saves it that opened it and let it take what it takes for numbers, days and sums. */
export function savedBy(dialect: Dialect, text: string): Uint8Array {
  const table = boxesOf(text).map((row) => [...row.map((box) => opened(box, dialect.day)), ...Array<string>(dialect.columns).fill("")]);
  const empty = Array.from({ length: dialect.rows }, () => table[0]!.map(() => ""));
  const saved = stringify([...table, ...empty], { delimiter: dialect.delimiter, quoted: dialect.quoted, record_delimiter: dialect.lineEnd });
  return encoded(saved, dialect.encoding);
}

function encoded(text: string, encoding: Dialect["encoding"]): Uint8Array {
  if (encoding === "utf-8") return Buffer.from(text, "utf8");
  if (encoding === "utf-8 with mark") return Buffer.from(`\uFEFF${text}`, "utf8");
  const little = Buffer.from(`\uFEFF${text}`, "utf16le");
  return encoding === "utf-16le" ? little : little.swap16();
}
