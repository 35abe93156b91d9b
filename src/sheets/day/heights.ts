import { heldMm } from "../held-fonts.js";
import type { Bit, Bits, DaySheet, Line, LineName, Task } from "./model.js";

/** Sizes of a sheet, points and mm. */
export const BODY_PT = 11;
export const LINE_MM = 4.85;
const TITLE_PT = 12.5;
const NUMBER_MM = 9;
const LABEL_MM = 16;
const TICK_MM = 11;
const GAP_MM = 4;
const MARKS_MM = { box: 14, tick: 6, line: 44 } as const;

export function widthOf(bits: Bits, pt = BODY_PT): number {
  return bits.reduce((sum, { text, strong, mark }) => sum + (mark ? MARKS_MM[mark] : heldMm(text, pt, strong)), 0);
}

/** Lines that a paragraph takes at most; words too long for one are broken. */
export function linesOf(bits: Bits, roomMm: number, pt = BODY_PT): number {
  return linesOfWidths(bits.flatMap((bit) => wordWidths(bit, pt)), roomMm);
}

function wordWidths({ text, strong, mark }: Bit, pt: number): readonly number[] {
  return mark ? [MARKS_MM[mark]] : text.split(/(?<= )/).map((word) => heldMm(word, pt, strong));
}

function linesOfWidths(widths: readonly number[], roomMm: number): number {
  let lines = 1;
  let used = 0;
  for (const wide of widths) {
    if (used > 0 && used + wide > roomMm) {
      lines += 1;
      used = 0;
    }
    lines += Math.floor(wide / roomMm);
    used += wide % roomMm;
  }
  return lines;
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

/** Height of a task, mm: its lines stand side by side where they fit. */
export function taskMm(task: Task, pageMm: number, right: string): number {
  const room = pageMm - NUMBER_MM - TICK_MM;
  const title = linesOf([{ text: task.title, strong: true }], room - 13 - widthOf([{ text: right, strong: false }]) - 4, TITLE_PT);
  let rows = 0;
  let used = Infinity;
  for (const line of printedLines(task)) {
    const widths = stepWidths(line);
    const wide = LABEL_MM + widths.reduce((sum, one) => sum + one, 0) + GAP_MM;
    if (wide > room) rows += linesOfWidths(widths, room - LABEL_MM);
    else if (used + wide > room) rows += 1;
    used = wide > room ? Infinity : used + wide > room ? wide : used + wide;
  }
  return Math.max(9.6, title * 5.7 + rows * LINE_MM + 1) + 0.8;
}

/** Height of what stands above the tasks on the first page, mm. Paragraphs stand beside the map, and over the whole width below it. */
export function topMm(sheet: DaySheet, pageMm: number, map: { readonly w: number; readonly h: number }): number {
  const asked = linesOf([...sheet.before.ask, ...sheet.before.boxes.flatMap((bits) => [{ text: "    ", strong: false }, ...bits])], pageMm - 6, 12);
  const head = sheet.head.reduce((sum, bits) => sum + linesOf(bits, sum < map.h ? pageMm - map.w - 4 : pageMm) * LINE_MM + 0.6, 0);
  return 9.8 + asked * 5.5 + 3.8 + Math.max(head, map.h) + 1.4;
}

/** Shares of the width that what to do when something is wrong, and whom to call, have. */
export const WRONG_SHARE = 0.6;
const BETWEEN_MM = 6;

/** Height of what stands below the tasks on the last page, mm. */
export function bottomMm(sheet: DaySheet, pageMm: number): number {
  const [left, right] = [WRONG_SHARE, 1 - WRONG_SHARE].map((share) => share * (pageMm - BETWEEN_MM)) as [number, number];
  const wrong = 5.8 + [...sheet.wrong.lines, sheet.phone].reduce((sum, bits) => sum + linesOf(bits, left) * LINE_MM, 0);
  const calls = sheet.calls.reduce((sum, { who, what }) => sum + linesOf([{ text: `${who}      ${what ?? sheet.notFilled}`, strong: what === null }], right) * LINE_MM + 0.9, 0) + LINE_MM + 1.5;
  return 1 + linesOf(sheet.waits, pageMm) * LINE_MM + 1.5 + Math.max(wrong, calls) + 1 + linesOf(sheet.cautions, pageMm, 10) * 4.4 + footMm(sheet, pageMm);
}

export function footMm(sheet: DaySheet, pageMm: number): number {
  return linesOf([...sheet.foot, { text: " Sheet 99 of 99.", strong: false }], pageMm, 9) * 3.9 + 1;
}
