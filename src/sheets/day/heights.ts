import { widestMm } from "../fit.js";
import type { Bits, DaySheet, Line, Task } from "./model.js";

/** Sizes of a sheet, points and mm. */
export const BODY_PT = 11;
export const LINE_MM = 5.2;
const TITLE_PT = 12.5;
const NUMBER_MM = 9;
const LABEL_MM = 16;
const TICK_MM = 11;
const GAP_MM = 4;
const MARKS_MM = { box: 14, tick: 6, line: 44 } as const;

export function widthOf(bits: Bits, pt = BODY_PT): number {
  return bits.reduce((sum, { text, strong, mark }) => sum + (mark ? MARKS_MM[mark] : widestMm(text, pt, strong)), 0);
}

/** Lines that a paragraph takes at most; words too long for one are broken. */
export function linesOf(bits: Bits, roomMm: number, pt = BODY_PT): number {
  let lines = 1;
  let used = 0;
  for (const { text, strong, mark } of bits) {
    for (const word of mark ? [""] : text.split(/(?<= )/)) {
      const wide = mark ? MARKS_MM[mark] : widthOf([{ text: word, strong }], pt);
      if (used > 0 && used + wide > roomMm) {
        lines += 1;
        used = 0;
      }
      lines += Math.floor(wide / roomMm);
      used += wide % roomMm;
    }
  }
  return lines;
}

export function lineBits({ steps }: Line): Bits {
  return steps.flatMap(({ bits }, i) => (i > 0 ? [{ text: " ", strong: false }, ...bits] : bits));
}

/** Height of a task, mm: its lines stand side by side where they fit. */
export function taskMm(task: Task, pageMm: number, right: string): number {
  const room = pageMm - NUMBER_MM - TICK_MM;
  const title = linesOf([{ text: task.title, strong: true }], room - 13 - widthOf([{ text: right, strong: false }]) - 4, TITLE_PT);
  let rows = 0;
  let used = Infinity;
  for (const line of task.lines) {
    const wide = LABEL_MM + widthOf(lineBits(line)) + GAP_MM;
    if (wide > room) rows += linesOf(lineBits(line), room - LABEL_MM);
    else if (used + wide > room) rows += 1;
    used = wide > room ? Infinity : used + wide > room ? wide : used + wide;
  }
  return Math.max(10.5, title * 6.1 + rows * LINE_MM + 1.6) + 1.4;
}

/** Height of what stands above the tasks on the first page, mm. */
export function topMm(sheet: DaySheet, pageMm: number, mapMm: { readonly w: number; readonly h: number } | null): number {
  const boxes = sheet.before.boxes.flatMap((bits) => [...bits, { text: "      ", strong: false }]);
  const before = linesOf(sheet.before.ask, pageMm - 6, 12) + (boxes.length > 0 ? linesOf(boxes, pageMm - 6) : 0);
  const room = pageMm - (mapMm ? mapMm.w + 4 : 0);
  const head = sheet.head.reduce((sum, bits) => sum + linesOf(bits, room) * LINE_MM + 0.8, 0);
  return 11.5 + before * 5.8 + 5 + Math.max(head, mapMm?.h ?? 0) + 2;
}

/** Height of what stands below the tasks on the last page, mm. */
export function bottomMm(sheet: DaySheet, pageMm: number): number {
  const half = pageMm / 2 - 4;
  const wrong = 6.5 + sheet.wrong.lines.reduce((sum, bits) => sum + linesOf(bits, half) * LINE_MM, 0) + linesOf(sheet.phone, half) * LINE_MM;
  const calls = sheet.calls.reduce((sum, { who, what }) => sum + (linesOf([{ text: `${who}      ${what ?? sheet.notFilled}`, strong: what === null }], half) * LINE_MM + 1.1), 0) + LINE_MM + 2;
  const waits = sheet.waits.reduce((sum, bits) => sum + linesOf(bits, pageMm) * LINE_MM, 0);
  return 2 + waits + 2 + Math.max(wrong, calls) + 1 + linesOf(sheet.cautions, pageMm, 10) * 4.6 + footMm(sheet, pageMm);
}

export function footMm(sheet: DaySheet, pageMm: number): number {
  return linesOf([...sheet.foot, { text: " Sheet 99 of 99.", strong: false }], pageMm, 9) * 4.2 + 1.5;
}
