import { CsvError, parse, type InfoRecord } from "csv-parse/sync";
import type { Finding } from "../farm/finding.js";
import { unguardBox } from "./guarded-box.js";

/** One box of a written grid, with where it stands in the file. */
export interface Box {
  readonly text: string;
  /** Line and character in the file, from 1. */
  readonly line: number;
  readonly column: number;
  /** As spreadsheets name it: "C5". */
  readonly name: string;
}

/** A grid file cut into boxes: empty rows and empty columns at the right are left off. */
export interface GridTable {
  readonly file: string;
  readonly head: readonly Box[];
  readonly rows: readonly (readonly Box[])[];
  readonly findings: readonly Finding[];
}

interface RawRow {
  readonly record: readonly string[];
  readonly raw: string;
  readonly info: InfoRecord;
}

/**
 * Cuts a text separated by commas, semicolons or tabs (RFC 4180, byte order mark allowed) into boxes; blanks around a box
 * and the apostrophe that keeps a name from a spreadsheet are taken off.
 *
 * @param text the whole file
 * @param file its name, for findings
 */
export function gridTable(text: string, file: string): GridTable {
  const plain = text.replace(/^\uFEFF/, "");
  const separator = separatorOf(plain);
  const { rows, fault } = rawRows(plain, separator, file);
  const boxes = rows.map((row, i) => boxesOf(row, i, separator));
  const full = boxes.filter((row) => row.some((box) => box.text !== ""));
  const width = lastFull(full[0] ?? []);
  const findings = fault ? [fault] : [];
  for (const row of full.slice(1)) if (!inShortBlock(row, boxes)) findings.push(...lengthFault(row, full[0]!.length, file));
  return { file, head: (full[0] ?? []).slice(0, width), rows: full.slice(1).map((row) => padded(row, width)), findings };
}

type Separator = "," | ";" | "\t";

/** What stands right behind the word in the first box; of a file that begins otherwise, the first separator there is. */
function separatorOf(text: string): Separator {
  const behind = /^[\s,;"]*(?:cell|day|group)"?[ ]*([,;\t])/i.exec(text) ?? /([,;\t])/.exec(text);
  return (behind?.[1] ?? ",") as Separator;
}

function rawRows(text: string, delimiter: string, file: string): { rows: RawRow[]; fault: Finding | null } {
  const rows: RawRow[] = [];
  try {
    parse(text, {
      delimiter, info: true, raw: true, relax_column_count: true, record_delimiter: ["\r\n", "\n", "\r"],
      on_record: (row) => {
        rows.push(row as unknown as RawRow);
        return null;
      },
    });
    return { rows, fault: null };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error["lines"] === "number" ? error["lines"] : 1;
    return { rows, fault: quoteFault(file, line, error.code) };
  }
}

function quoteFault(file: string, line: number, code: string): Finding {
  return {
    file, line, column: 1, code: "quote-open",
    found: `the quotes of a box do not close (${code.toLowerCase().replaceAll("_", " ").replace(/^csv /, "")})`,
    allowed: 'a box in quotes begins and ends with ", and a quote inside is written twice',
    next: "take the quotes out, or close them",
  };
}

function boxesOf(row: RawRow, index: number, separator: string): Box[] {
  const starts = boxStarts(row.raw, separator);
  const breaks = (row.raw.replace(/[\r\n]+$/, "").match(/\n/g) ?? []).length;
  const line = row.info.lines - breaks;
  return row.record.map((text, i) => ({
    text: unguardBox(text.trim()), line, column: (starts[i] ?? 0) + 1, name: `${columnLetters(i)}${index + 1}`,
  }));
}

/** Where each box begins in a raw line. */
function boxStarts(raw: string, separator: string): number[] {
  const starts = [0];
  let quoted = false;
  for (let i = 0; i < raw.length; i += 1) {
    if (raw[i] === '"') quoted = !quoted;
    else if (raw[i] === separator && !quoted) starts.push(i + 1);
  }
  return starts;
}

function columnLetters(index: number): string {
  const rest = index % 26;
  const letter = String.fromCharCode(65 + rest);
  return index < 26 ? letter : columnLetters((index - rest) / 26 - 1) + letter;
}

function lastFull(row: readonly Box[]): number {
  return row.findLastIndex((box) => box.text !== "") + 1;
}

/** Rows of a block in which Excel leaves out last columns that are empty in all of them. */
const BLOCK_ROWS = 16;

/**
 * Whether all rows around this one end at the same column, as Excel saves them: by blocks of 16 rows counted from the first, each as wide as
 * its last full box. From memory of its maker's note on missing delimiters in saved text. One row alone may as well have lost a box.
 */
function inShortBlock(row: readonly Box[], rows: readonly (readonly Box[])[]): boolean {
  const start = rows.findIndex((one) => one === row);
  const first = start - (start % BLOCK_ROWS);
  const block = rows.slice(first, first + BLOCK_ROWS);
  return first > 0 && block.length > 1 && block.every((one) => one.length === row.length) && block.some((one) => one.at(-1)!.text !== "") && row.length < rows[0]!.length;
}

function lengthFault(row: readonly Box[], wanted: number, file: string): Finding[] {
  if (row.length === wanted) return [];
  const first = row[0]!;
  return [{
    file, line: first.line, column: 1, code: "row-length",
    found: `the row "${first.text}" has ${boxes(row.length)}, the head has ${wanted}`,
    allowed: "every row as long as the head, empty boxes too",
    next: row.length < wanted ? `add ${boxes(wanted - row.length, "empty ")} where ${wanted - row.length === 1 ? "it is" : "they are"} missing` : `take ${boxes(row.length - wanted)} out`,
  }];
}

function boxes(count: number, which = ""): string {
  return `${count} ${which}${count === 1 ? "box" : "boxes"}`;
}

/** Cut or filled up to the head's length, so that reading may go on after a finding. */
function padded(row: readonly Box[], width: number): readonly Box[] {
  const first = row[0]!;
  const missing = Array.from({ length: Math.max(0, width - row.length) }, (_, i) => ({ ...first, text: "", name: `${columnLetters(row.length + i)}${first.name.replace(/^[A-Z]+/, "")}` }));
  return [...row.slice(0, width), ...missing];
}
