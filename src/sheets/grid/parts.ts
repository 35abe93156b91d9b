import { addDays, type IsoDate } from "../../quantity/calendar.js";
import type { Cell, Scenario, Yard } from "../../farm/scenario.js";
import type { Sheet } from "../made.js";
import { mondaysIn, seasonDays } from "../season-days.js";

/** Days that one sheet holds at most. */
const MOST_DAYS = 110;
const WEEK = 7;

/** Cells of one field that stand together on a sheet. */
export interface FieldRows {
  readonly name: string;
  readonly cells: readonly Cell[];
}

/** What one printed sheet shows. */
export interface Part {
  readonly days: readonly IsoDate[];
  /** Last day of the week that the sheet before shows too. */
  readonly repeatedTo: IsoDate | null;
  readonly fields: readonly FieldRows[];
  readonly yards: readonly Yard[];
  readonly number: number;
  readonly of: number;
}

/**
 * Cuts a season into sheets: by days, and, where cells do not fit, by field.
 *
 * @param mostRows rows of cells and yards that a sheet holds
 */
export function partsOf(sheet: Sheet, mostRows: number): readonly Part[] {
  const spans = daySpans(seasonDays(sheet.scenario));
  const parts = spans.flatMap((span) => fieldPages(sheet, span.days, mostRows).map((page) => ({ ...span, ...page })));
  return parts.map((part, i) => ({ ...part, number: i + 1, of: parts.length }));
}

/** Sheets cut by days alone, as if all cells stood on each. */
export function wholeParts(sheet: Sheet): readonly Part[] {
  return partsOf(sheet, sheet.scenario.cells.length + sheet.scenario.yards.length);
}

/** Breaks on Mondays; the last week of a sheet is repeated on the next. */
export function daySpans(days: readonly IsoDate[]): readonly Pick<Part, "days" | "repeatedTo">[] {
  const mondays = mondaysIn(days);
  for (let count = 1; ; count += 1) {
    const starts = [0, ...Array.from({ length: count - 1 }, (_, i) => nearest(mondays, ((i + 1) * days.length) / count - WEEK / 2))];
    const ends = [...starts.slice(1).map((start) => start + WEEK), days.length];
    const fits = starts.every((start, i) => ends[i]! - start <= MOST_DAYS);
    if (fits) return starts.map((start, i) => ({ days: days.slice(start, ends[i]), repeatedTo: i === 0 ? null : addDays(days[start]!, WEEK - 1) }));
  }
}

function nearest(mondays: readonly number[], wished: number): number {
  return [...mondays].sort((a, b) => Math.abs(a - wished) - Math.abs(b - wished))[0]!;
}

/** Fields in order, as many a page as fit; a field with more cells than a page holds is split. The yards that are used on these days come last. */
function fieldPages({ scenario, plan }: Sheet, days: Part["days"], mostRows: number): readonly Pick<Part, "fields" | "yards">[] {
  const used = (yard: Yard): boolean => plan.stays.some((stay) => stay.yard === yard.name && stay.firstDay <= days.at(-1)! && days[0]! <= stay.lastDay);
  const yards = scenario.yards.filter(used);
  const room = Math.max(1, mostRows - yards.length);
  const pages: FieldRows[][] = [[]];
  let rowsUsed = 0;
  for (const rows of fieldsOf(scenario).flatMap((field) => split(field, room))) {
    if (rowsUsed > 0 && rowsUsed + rows.cells.length > room) {
      pages.push([]);
      rowsUsed = 0;
    }
    pages.at(-1)!.push(rows);
    rowsUsed += rows.cells.length;
  }
  return pages.map((fields) => ({ fields, yards }));
}

function fieldsOf(scenario: Scenario): readonly FieldRows[] {
  return scenario.fields.map((field) => ({ name: field.name, cells: scenario.cells.filter((cell) => cell.field === field.name) }));
}

function split(field: FieldRows, room: number): readonly FieldRows[] {
  const pieces = Math.ceil(field.cells.length / room);
  return Array.from({ length: pieces }, (_, i) => ({ name: field.name, cells: field.cells.slice(i * room, (i + 1) * room) }));
}
