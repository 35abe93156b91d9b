import type { Group } from "../farm/scenario.js";
import { patternFigures } from "./grid/patterns.js";
import { mm, rect, text, type Box } from "./grid/svg.js";
import { markOf } from "./marks.js";

const PLATE: Box = { x: 0, y: 0, w: 11, h: 5 };
const LETTER_PT = 10;

/** A group's letter on its pattern, framed: 11 x 5 mm, black on white. */
export function plate(group: Group): string {
  const { letter, pattern, second } = markOf(group);
  const solid = pattern === "solid";
  const white = letter.length > 1 ? 5.4 : 4.2;
  return `<svg class="plate" viewBox="0 0 ${mm(PLATE.w)} ${mm(PLATE.h)}" style="width:${mm(PLATE.w)}mm;height:${mm(PLATE.h)}mm" role="img" aria-label="${letter}">${[
    rect(PLATE, 'class="white"'), patternFigures(pattern, PLATE),
    solid ? "" : rect({ x: (PLATE.w - white) / 2, y: 0.5, w: white, h: PLATE.h - 1 }, 'class="white"'),
    second ? notch(PLATE) : "",
    rect({ x: 0.15, y: 0.15, w: PLATE.w - 0.3, h: PLATE.h - 0.3 }, 'class="frame" stroke-width=".3"'),
    text(PLATE.w / 2, 3.75, letter, { pt: LETTER_PT, bold: true, anchor: "middle", as: solid ? "on-solid" : "ink" }),
  ].join("")}</svg>`;
}

/** A group's pattern down the side of its column: 2.6 mm wide. */
export function patternDown(group: Group, highMm: number): string {
  const box = { x: 0, y: 0, w: 2.6, h: highMm };
  return `<svg class="down" viewBox="0 0 2.6 ${mm(highMm)}" style="width:2.6mm;height:${mm(highMm)}mm" aria-hidden="true">${patternFigures(markOf(group).pattern, box)}</svg>`;
}

/** The second group of a kind: its lower left corner is cut off. */
function notch({ h }: Box): string {
  return `<path class="white" d="M0 ${mm(h - 1.6)}L1.6 ${mm(h)}H0z"/>`;
}

/** Style of plates and patterns: pure black on white. */
export const PLATE_CSS = `.plate,.down{display:inline-block;vertical-align:middle;flex:none;font-family:"Liberation Sans",Arial,Helvetica,system-ui,sans-serif}
.plate .white{fill:#fff}.plate .frame{fill:none;stroke:#000}.plate text{fill:#000}.plate .on-solid{fill:#fff}
.plate .pl,.down .pl{fill:none;stroke:#000}.plate .pf,.down .pf{fill:#000}`;
