import type { Words } from "../../words/words.js";
import { shutWords, type ShutSpan } from "../shut-ground.js";
import { stretchOf, type Layout, type Row } from "./layout.js";
import type { Cell } from "../../farm/scenario.js";
import type { RestFigure } from "./stay-facts.js";
import { line, mm, text, textWidth } from "./svg.js";

const BARB_EVERY = 3.4;
const WORD_PT = 6.4;

/** Ground to be left alone: a level wire with barbs between two posts, its reason in words. No frame: it is ground. It ends before a figure of rest. */
export function wire(layout: Layout, { y, h }: Row<Cell>, span: ShutSpan, rests: readonly RestFigure[]): string {
  const stretch = stretchOf(layout, span.firstDay, span.lastDay);
  if (!stretch) return "";
  const at = y + h / 2;
  const end = stretch.x + stretch.w - 0.4;
  const from = stretch.x + 0.4;
  const to = Math.min(end, ...rests.filter((rest) => rest.from < end && end < rest.to + 0.1).map((rest) => rest.from - 0.2));
  const posts = [stretch.fromBefore ? null : from, stretch.goesOn ? null : to].filter((x) => x !== null);
  const told = fittingWords(span, to - from, layout.words);
  const spots = told === "" ? [] : spotsOf(from, to);
  const half = textWidth(told, WORD_PT) / 2 + 1;
  const apart = (x: number): boolean => spots.every((spot) => Math.abs(spot - x) > half);
  return [
    line(from, at, to, at, 'class="stroke" stroke-width="0.2"'),
    ...posts.map((x) => line(x, at - 1.1, x, at + 1.1, 'class="stroke" stroke-width="0.25"')),
    barbs(from, to, at, span.openShare > 0 ? 2 * BARB_EVERY : BARB_EVERY, apart),
    ...spots.map((x) => text(x, at + 0.75, told, { pt: WORD_PT, italic: true, anchor: "middle", as: "rim wide", room: textWidth(told, WORD_PT) })),
  ].join("");
}

/** Part-shut ground has half as many barbs; barbs are spread evenly, but for the words. */
function barbs(from: number, to: number, y: number, every: number, apart: (x: number) => boolean): string {
  const count = Math.floor((to - from) / every);
  const step = (to - from) / Math.max(1, count);
  const d = Array.from({ length: count }, (_, i) => from + (i + 0.5) * step).filter(apart)
    .map((x) => `M${mm(x - 0.5)} ${mm(y - 0.5)}l1 1M${mm(x - 0.5)} ${mm(y + 0.5)}l1 -1`).join("");
  return d === "" ? "" : `<path class="stroke" stroke-width="0.2" d="${d}"/>`;
}

function fittingWords(span: ShutSpan, room: number, words: Words): string {
  return [shutWords(span, words), span.reason, span.short].find((told) => textWidth(told, WORD_PT) + 2 <= room) ?? "";
}

/** Words stand once in the middle; on a long wire once in each half. */
function spotsOf(from: number, to: number): readonly number[] {
  return to - from > 100 ? [from + (to - from) / 4, from + (3 * (to - from)) / 4] : [(from + to) / 2];
}
