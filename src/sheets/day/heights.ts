import { heldMm } from "../held-fonts.js";
import type { Bit, Bits, DayPart, DaySheet, Line, LineName, Task } from "./model.js";

/** Sizes of a sheet, points and mm. */
export const BODY_PT = 11;
export const LINE_MM = 4.6;
/** Lines of other sizes, mm. */
export const TITLE_MM = 5.3;
export const CAUTION_MM = 4.1;
export const HEAD_MM = 9.2;
export const BAR_MM = 5.1;
const BAR_PT = 11.5;
export const PARAGRAPH_MM = 0.4;
export const ASK_MM = 5.3;
const TITLE_PT = 12;
/** Columns of a task, mm: its number, the labels of its lines, the box to tick. */
export const NUMBER_MM = 8;
export const LABEL_MM = 14;
export const TICK_MM = 10;
/** Between two tasks side by side, mm. */
export const BESIDE_MM = 5;
const GAP_MM = 4;
const ASK_PT = 12;
/** White before a box of the first question, mm. */
const BOX_MM = 5;
const MARKS_MM = { box: 14, tick: 6, line: 44 } as const;

export function widthOf(bits: Bits, pt = BODY_PT): number {
  return bits.reduce((sum, { text, strong, mark }) => sum + (mark ? MARKS_MM[mark] : heldMm(text, pt, strong)), 0);
}

/** Lines that a paragraph takes at most; words too long for one are broken. */
export function linesOf(bits: Bits, roomMm: number, pt = BODY_PT): number {
  return linesOfWidths(bits.flatMap((bit) => wordWidths(bit, pt)), () => roomMm);
}

function wordWidths({ text, strong, mark }: Bit, pt: number): readonly number[] {
  return mark ? [MARKS_MM[mark]] : text.split(/(?<= )/).map((word) => heldMm(word, pt, strong));
}

/** @param roomOf width that a line has, mm, the first being 1 */
function linesOfWidths(widths: readonly number[], roomOf: (line: number) => number): number {
  let lines = 1;
  let used = 0;
  for (const wide of widths) {
    if (used > 0 && used + wide > roomOf(lines)) {
      lines += 1;
      used = 0;
    }
    const room = roomOf(lines);
    lines += Math.floor(wide / room);
    used += wide % room;
  }
  return lines;
}

/** Height of paragraphs that begin `fromMm` below the top of a map and flow round it, mm from that top. */
function besideMapMm(paragraphs: readonly Bits[], fromMm: number, map: { readonly w: number; readonly h: number }, pageMm: number): number {
  return paragraphs.reduce((y, bits) => {
    const narrow = Math.max(0, Math.ceil((map.h - y) / LINE_MM + 0.1));
    return y + PARAGRAPH_MM + LINE_MM * linesOfWidths(bits.flatMap((bit) => wordWidths(bit, BODY_PT)), (line) => (line <= narrow ? pageMm - map.w - BESIDE_MM : pageMm));
  }, fromMm);
}

export function lineBits({ steps }: Line): Bits {
  return steps.flatMap(({ bits }, i) => (i > 0 ? [{ text: " ", strong: false }, ...bits] : bits));
}

/** What is looked at once the work is done: these run on in one paragraph. */
const CHECKS: readonly LineName[] = ["fence", "water", "count"];

/** A row of a task: its label, and steps; one that is to be filled in and is short stays on one line. */
export interface PrintedLine {
  readonly label: string;
  readonly steps: readonly { readonly bits: Bits; readonly whole: boolean }[];
}

const SHORT = 40;

/** A task's lines as they are printed: First, Take and Do each for itself, then all checks together. */
export function printedLines({ lines }: Task): readonly PrintedLine[] {
  const work = lines.filter(({ name }) => !CHECKS.includes(name)).map(({ label, steps }) => ({ label, steps: steps.map(({ bits }) => printedStep(bits)) }));
  const [first, ...more] = lines.filter(({ name }) => CHECKS.includes(name));
  if (!first) return work;
  const rest = more.flatMap(({ label, steps }) => steps.map(({ bits }, i) => printedStep(i === 0 && label !== first.label ? [{ text: `${label} `, strong: true }, ...bits] : bits)));
  return [...work, { label: first.label, steps: [...first.steps.map(({ bits }) => printedStep(bits)), ...rest] }];
}

function printedStep(bits: Bits): PrintedLine["steps"][number] {
  return { bits, whole: bits.some(({ mark }) => mark !== undefined) && bits.reduce((sum, { text }) => sum + text.length, 0) <= SHORT };
}

const BLANK_MM = heldMm(" ", BODY_PT);

function stepWidths({ steps }: PrintedLine): readonly number[] {
  return steps.flatMap(({ bits, whole }) => (whole ? [widthOf(bits) + BLANK_MM] : [...bits.flatMap((bit) => wordWidths(bit, BODY_PT)), BLANK_MM]));
}

interface TaskLines {
  readonly title: number;
  readonly rows: number;
}

/** Lines of a task's title and below it: they stand side by side where they fit. */
function linesOfTask(task: Task, pageMm: number, right: string): TaskLines {
  const room = pageMm - NUMBER_MM - TICK_MM;
  const title = linesOf([{ text: task.title, strong: true }], room - 13 - widthOf([{ text: right, strong: false }]) - 4, TITLE_PT);
  let rows = 0;
  let used = Infinity;
  for (const line of printedLines(task)) {
    const widths = stepWidths(line);
    const wide = LABEL_MM + widths.reduce((sum, one) => sum + one, 0) + GAP_MM;
    if (wide > room) rows += linesOfWidths(widths, () => room - LABEL_MM);
    else if (used + wide > room) rows += 1;
    used = wide > room ? Infinity : used + wide > room ? wide : used + wide;
  }
  return { title, rows };
}

function heightOf({ title, rows }: TaskLines): number {
  return Math.max(9.6, title * TITLE_MM + rows * LINE_MM + 1) + 0.8;
}

/** Height of a task over the whole width, mm. */
export function taskMm(task: Task, pageMm: number, right: string): number {
  return heightOf(linesOfTask(task, pageMm, right));
}

/** Height of a task beside another, mm; null where it is too long to stand there well. */
export function besideMm(task: Task, pageMm: number, right: string): number | null {
  const lines = linesOfTask(task, (pageMm - BESIDE_MM) / 2, right);
  return lines.title <= 2 && lines.rows <= 2 ? heightOf(lines) : null;
}

/** Height of the black bar above a part of the day: its minutes, one by one, may be too long for a line. */
export function barMm({ title, sum }: DayPart, pageMm: number): number {
  const wide = widthOf([{ text: title, strong: true }], BAR_PT) + widthOf([{ text: sum, strong: false }], BAR_PT);
  return Math.ceil(wide / (pageMm - 12)) * BAR_MM + 1.1;
}

/** Lines of the first question: each box stays with its words, on lines of its own where they are too long for one. */
function askedLines({ ask, boxes }: DaySheet["before"], roomMm: number): number {
  const wide = (bits: Bits): number => widthOf(bits, ASK_PT) + BOX_MM;
  const long = boxes.filter((bits) => wide(bits) > roomMm);
  const short = boxes.filter((bits) => wide(bits) <= roomMm).map(wide);
  return linesOfWidths([...ask.flatMap((bit) => wordWidths(bit, ASK_PT)), ...short], () => roomMm) + long.reduce((sum, bits) => sum + linesOf(bits, roomMm - BOX_MM, ASK_PT), 0);
}

/** Height of what stands above the tasks on the first page, mm: beside the map, and over the whole width below it. */
export function topMm(sheet: DaySheet, pageMm: number, map: { readonly w: number; readonly h: number }): number {
  const beside = pageMm - map.w - BESIDE_MM;
  const asked = askedLines(sheet.before, beside - 6);
  return Math.max(besideMapMm(sheet.head, HEAD_MM + asked * ASK_MM + 3.8, map, pageMm), map.h) + 1.4;
}

/** Shares of the width that what to do when something is wrong, and whom to call, have. */
export const WRONG_SHARE = 0.54;
const BETWEEN_MM = 6;

/** Height of what stands below the tasks on the last page, mm. */
export function bottomMm(sheet: DaySheet, pageMm: number): number {
  const [left, right] = [WRONG_SHARE, 1 - WRONG_SHARE].map((share) => share * (pageMm - BETWEEN_MM)) as [number, number];
  const wrong = 5.8 + [...sheet.wrong.lines, sheet.phone].reduce((sum, bits) => sum + linesOf(bits, left) * LINE_MM, 0);
  const calls = sheet.calls.reduce((sum, { who, what }) => sum + linesOf([{ text: `${who}      ${what ?? sheet.notFilled}`, strong: what === null }], right) * LINE_MM + 0.9, 0) + LINE_MM + 1.5;
  return 1 + linesOf(sheet.waits, pageMm) * LINE_MM + 1.5 + Math.max(wrong, calls) + 1 + linesOf(sheet.cautions, pageMm, 10) * CAUTION_MM + footMm(sheet, pageMm);
}

export function footMm(sheet: DaySheet, pageMm: number): number {
  return linesOf([...sheet.foot, { text: " Sheet 99 of 99.", strong: false }], pageMm, 9) * 3.9 + 1;
}
