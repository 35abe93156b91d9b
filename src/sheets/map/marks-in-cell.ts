import { heldMm } from "../held-fonts.js";
import { escaped, mm, rect, text } from "../grid/svg.js";
import type { MarkRoom, Point } from "./planned-ground.js";

/** What stands in a cell on the map: its name, letters of who is there, numbers of tasks. */
export interface Mark {
  readonly kind: "name" | "letter" | "number";
  readonly words: string;
}

/** Sizes that are tried, the largest first, points. */
const SIZES = [7, 6.5, 6, 5.5];
const LINE_EMS = 1.32;
const GAP_MM = 0.5;
const PAD_MM: Readonly<Record<Mark["kind"], number>> = { name: 0.2, letter: 0.5, number: 0.55 };
const MM_PER_PT = 25.4 / 72;

interface Placed {
  readonly mark: Mark;
  readonly w: number;
}

/** Whether marks have room in letters that can be read. */
export function marksFit(room: MarkRoom, marks: readonly Mark[]): boolean {
  return SIZES.some((pt) => fits(linesOf(marks, room.w, pt), room, pt));
}

/** Marks in lines in their room, in the largest letters that fit; where none do, they stand over its edges. */
export function marksAt(room: MarkRoom, marks: readonly Mark[]): string {
  const laid = SIZES.map((pt) => ({ pt, lines: linesOf(marks, room.w, pt) }));
  const { pt, lines } = laid.find((one) => fits(one.lines, room, one.pt)) ?? laid.at(-1)!;
  const high = pt * MM_PER_PT * LINE_EMS;
  const [x, y] = room.at;
  return lines.map((line, i) => {
    const left = room.from === "left" ? x : x - wideOf(line) / 2;
    return lineAt([left, y + (i - (lines.length - 1) / 2) * high], line, pt, high);
  }).join("");
}

function widthOf({ kind, words }: Mark, pt: number): number {
  const own = heldMm(words, pt, true) + 2 * PAD_MM[kind];
  return kind === "number" ? Math.max(own, pt * MM_PER_PT * LINE_EMS) : own;
}

function linesOf(marks: readonly Mark[], wide: number, pt: number): readonly (readonly Placed[])[] {
  const lines: Placed[][] = [[]];
  let used = 0;
  for (const mark of marks) {
    const w = widthOf(mark, pt);
    if (used > 0 && used + GAP_MM + w > wide) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)!.push({ mark, w });
    used += (used > 0 ? GAP_MM : 0) + w;
  }
  return lines;
}

function wideOf(line: readonly Placed[]): number {
  return line.reduce((sum, { w }) => sum + w, GAP_MM * (line.length - 1));
}

function fits(lines: readonly (readonly Placed[])[], { w, h }: { readonly w: number; readonly h: number }, pt: number): boolean {
  return lines.length * pt * MM_PER_PT * LINE_EMS <= h && lines.every((line) => wideOf(line) <= w);
}

function lineAt([left, y]: Point, line: readonly Placed[], pt: number, high: number): string {
  let at = left;
  return line.map(({ mark, w }) => {
    const drawn = markAt([at + w / 2, y], w, high, mark, pt);
    at += w + GAP_MM;
    return drawn;
  }).join("");
}

/** A name stands on white, a letter in a frame, a number in a ring. */
function markAt([x, y]: Point, w: number, high: number, { kind, words }: Mark, pt: number): string {
  const h = high - 0.25;
  const box = { x: x - w / 2, y: y - h / 2, w, h };
  const round = kind === "number" ? ` rx="${mm(h / 2)}"` : "";
  const frame = kind === "name" ? 'class="white"' : `class="framed" stroke-width=".25"${round}`;
  return `${rect(box, frame)}${text(x, y + pt * MM_PER_PT * 0.36, words, { pt, bold: true, anchor: "middle", as: "ink" })}`;
}

/** What a drawing is of, for whoever cannot see it. */
export function titled(title: string, id: string): string {
  return `<title id="${id}">${escaped(title)}</title>`;
}
