import type { Pattern } from "../marks.js";
import { mm, type Box } from "./svg.js";

/** Distance of figures, mm, and the share of it that a line takes. */
const PITCH = 1.15;
const LINE = 0.22 * PITCH;

/** Middles of whole figures spread evenly over a length, from the bar's own edge. */
function middles(start: number, length: number, pitch: number): readonly number[] {
  const count = Math.max(1, Math.round(length / pitch));
  return Array.from({ length: count }, (_, i) => start + ((i + 0.5) * length) / count);
}

const stroke = (d: string, width: number, round = false): string =>
  d === "" ? "" : `<path class="pl" stroke-width="${mm(width)}"${round ? ' stroke-linecap="round"' : ""} d="${d}"/>`;
const uprights = (box: Box, pitch: number): string => middles(box.x, box.w, pitch).map((x) => `M${mm(x)} ${mm(box.y)}v${mm(box.h)}`).join("");
const levels = (box: Box, pitch: number): string => middles(box.y, box.h, pitch).map((y) => `M${mm(box.x)} ${mm(y)}h${mm(box.w)}`).join("");

/** Points of a figure: rows, every second one set between the first. */
function points(box: Box, pitch: number, between: boolean): readonly (readonly [number, number])[] {
  const xs = middles(box.x, box.w, pitch);
  const step = box.w / xs.length;
  return middles(box.y, box.h, between ? pitch * 0.72 : pitch).flatMap((y, row) =>
    (between && row % 2 === 1 ? xs.slice(1).map((x) => x - step / 2) : xs).map((x) => [x, y] as const));
}

/** Small waves in rows: a crest and a trough each two figures long. */
function waves(box: Box): string {
  const count = Math.max(1, Math.round(box.w / (2 * PITCH)));
  const [half, high] = [box.w / count / 2, 0.42 * PITCH];
  return middles(box.y, box.h, PITCH * 1.15)
    .map((y) => `M${mm(box.x)} ${mm(y)}${`q${mm(half / 2)} ${mm(-2 * high)} ${mm(half)} 0q${mm(half / 2)} ${mm(2 * high)} ${mm(half)} 0`.repeat(count)}`)
    .join("");
}

function rings(box: Box): string {
  const r = 0.34 * PITCH;
  return points(box, PITCH, false).map(([x, y]) => `M${mm(x - r)} ${mm(y)}a${mm(r)} ${mm(r)} 0 1 0 ${mm(2 * r)} 0a${mm(r)} ${mm(r)} 0 1 0 ${mm(-2 * r)} 0`).join("");
}

function pluses(box: Box): string {
  const arm = 0.3 * PITCH;
  return points(box, PITCH, false).map(([x, y]) => `M${mm(x - arm)} ${mm(y)}h${mm(2 * arm)}M${mm(x)} ${mm(y - arm)}v${mm(2 * arm)}`).join("");
}

const filled = ({ x, y, w, h }: Box): string => `<path class="pf" d="M${mm(x)} ${mm(y)}h${mm(w)}v${mm(h)}h${mm(-w)}z"/>`;

/** Draws a pattern figure by figure into a box: whole figures only. */
const FIGURES: Readonly<Record<Pattern, (box: Box) => string>> = {
  solid: filled,
  "upright-lines": (box) => stroke(uprights(box, PITCH * 0.9), LINE),
  "level-lines": (box) => stroke(levels(box, PITCH * 0.9), LINE),
  "upright-bands": (box) => stroke(uprights(box, PITCH * 1.8), PITCH * 0.85),
  squares: (box) => stroke(uprights(box, PITCH) + levels(box, PITCH), LINE),
  dots: (box) => stroke(points(box, PITCH, true).map(([x, y]) => `M${mm(x)} ${mm(y)}h0`).join(""), PITCH * 0.5, true),
  rings: (box) => stroke(rings(box), LINE * 0.8),
  half: (box) => filled({ ...box, h: box.h / 2 }),
  waves: (box) => stroke(waves(box), LINE),
  pluses: (box) => stroke(pluses(box), LINE),
};

export function patternFigures(pattern: Pattern, box: Box): string {
  return box.w <= 0 || box.h <= 0 ? "" : FIGURES[pattern](box);
}
