import type { Scenario } from "../../farm/scenario.js";
import { UNITS } from "../../quantity/units.js";
import type { Words } from "../../words/words.js";
import { lengthWords } from "./pen-words.js";
import { line, text } from "../grid/svg.js";

/** One to so many: scales that a ruler reads. */
const SCALES = [50, 100, 200, 250, 500, 1000, 1250, 2000, 2500, 5000, 10_000, 20_000] as const;

/** Lengths of the whole scale bar, m or ft. */
const BARS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000] as const;
const BAR_MM = 45;

/** The largest scale at which ground of so many metres fits into so many millimetres of paper. */
export function scaleFor(wideM: number, highM: number, wideMm: number, highMm: number): number {
  return SCALES.find((scale) => (wideM * 1000) / scale <= wideMm && (highM * 1000) / scale <= highMm) ?? SCALES.at(-1)!;
}

/** A bar of whole metres or feet, halved once, with its length in words. */
export function scaleBar(x: number, y: number, scale: number, units: Scenario["units"], words: Words): string {
  const unitM = units === "US" ? UNITS.length["ft"]! : 1;
  const mmOf = (count: number): number => (count * unitM * 1000) / scale;
  const count = [...BARS].reverse().find((bar) => mmOf(bar) <= BAR_MM) ?? BARS[0];
  const long = mmOf(count);
  return [
    `<g class="bar" data-metres="${count * unitM}">`,
    line(x, y, x + long, y, 'class="stroke" stroke-width=".5"'),
    ...[0, long / 2, long].map((at) => line(x + at, y - 1.4, x + at, y, 'class="stroke" stroke-width=".3"')),
    text(x, y - 2.2, "0", { pt: 8, anchor: "middle" }),
    text(x + long, y - 2.2, lengthWords(count * unitM, units, words), { pt: 8, anchor: "middle" }),
    "</g>",
  ].join("");
}
