import { linesIn } from "../fit.js";
import { MM_PER_PT } from "../grid/svg.js";
import type { WeekLine, WeekRow } from "./rows.js";

/** Widths of the columns, mm, by what is left of the paper: day, morning, evening, at night, counted, note. */
export function columnsMm(wide: number): readonly number[] {
  const [day, night, count] = [28, 34, 21];
  const rest = wide - day - night - count;
  return [day, rest * 0.38, rest * 0.42, night, count, rest * 0.2];
}

/** Sizes of what is written, points: the largest at which the week stands on one sheet is taken. */
const SIZES_PT = [11, 10.4, 9.8];
/** Line to line, and the air below a line. */
const LEADING = 1.18;
const AIR_MM = 0.8;
const TICK_MM = 5.2;
const PADDING_MM = 3;
const MOST_DAY_MM = 40;
const STAND_MM = 5.7;

/** About how tall a day is, mm; rather too tall than too low. */
function rowMm(row: WeekRow, columns: readonly number[], pt: number): number {
  const told = ({ words, strong }: WeekLine, room: number): number => linesIn(words, room - PADDING_MM - TICK_MM, pt, strong) * pt * MM_PER_PT * LEADING + AIR_MM;
  const morning = (row.moves.length > 0 ? row.moves.length * 7.6 : 5.6) + row.morning.reduce((sum, line) => sum + told(line, columns[1]!), 0);
  const evening = row.evening.reduce((sum, line) => sum + told(line, columns[2]!), 0);
  const nights = row.stands.length * STAND_MM;
  return Math.max(16, morning, evening, nights) + 2.2;
}

export interface WeekPages {
  readonly pt: number;
  readonly pages: readonly (readonly WeekRow[])[];
  /** Height of a day at least, mm: so that the days fill the sheet and leave room to write. */
  readonly dayMm: number;
}

/** Days to a sheet: all on one where they fit, else broken between days as evenly as that goes. */
export function pagesOf(rows: readonly WeekRow[], columns: readonly number[], roomMm: number): WeekPages {
  const tall = (pt: number): number => rows.reduce((sum, row) => sum + rowMm(row, columns, pt), 0);
  const pt = SIZES_PT.find((one) => tall(one) <= roomMm) ?? SIZES_PT[0]!;
  const pages = broken(rows, rows.map((row) => rowMm(row, columns, pt)), roomMm);
  return { pt, pages, dayMm: fillingMm(pages[0]!.map((row) => rowMm(row, columns, pt)), roomMm) };
}

/** The least height of rows with which rows of these heights come to the room. */
function fillingMm(heights: readonly number[], roomMm: number): number {
  const whole = (least: number): number => heights.reduce((sum, one) => sum + Math.max(one, least), 0);
  let least = MOST_DAY_MM;
  while (least > 0 && whole(least) > roomMm) least -= 0.5;
  return Math.max(0, least);
}

function broken(rows: readonly WeekRow[], heights: readonly number[], roomMm: number): readonly (readonly WeekRow[])[] {
  const all = heights.reduce((sum, one) => sum + one, 0);
  const pages = Math.max(1, Math.ceil(all / roomMm));
  const even = all / pages;
  const made: WeekRow[][] = [[]];
  let used = 0;
  rows.forEach((row, i) => {
    const wide = heights[i]!;
    const full = used + wide > roomMm || (used > 0 && used + wide / 2 > even && made.length < pages);
    if (full && made.at(-1)!.length > 0) {
      made.push([]);
      used = 0;
    }
    made.at(-1)!.push(row);
    used += wide;
  });
  return made;
}
