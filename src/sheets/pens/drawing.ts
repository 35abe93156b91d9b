import type { Layout } from "../../decide/pens/layout.js";
import type { Scenario } from "../../farm/scenario.js";
import { patternFigures } from "../grid/patterns.js";
import { escaped, mm, MM_PER_PT, rect, text, textWidth } from "../grid/svg.js";
import type { Words } from "../../words/words.js";
import type { Pattern } from "../marks.js";
import { scaleBar, scaleFor } from "./scale.js";

/** A cell's ground and the positions on it, ready to be drawn. */
export interface PenPicture {
  readonly title: string;
  readonly layout: Layout;
  /** Positions that a plan uses, each with the day on which it is first stood on, in a few letters. */
  readonly used: ReadonlyMap<number, string>;
  readonly pattern: Pattern;
  readonly kind: string;
  readonly units: Scenario["units"];
}

/** Room for the ground on paper, mm, and what stands round it. */
const WIDE = 180;
const HIGH = 200;
const EDGE = 3;
const FOOT = 14;

/** Numbers are not drawn smaller than this, points. */
const LEAST_PT = 5;
const MOST_PT = 11;

type Point = readonly [x: number, y: number];

/** Ground to paper: mm from the drawing's upper left corner. */
type Paper = (point: Point) => Point;

/** One cell to scale: outline and holes, every position in its place and turned as it stands, the way walked, scale bar. */
export function penDrawing(picture: PenPicture, id: string, words: Words): string {
  const { layout, title, units } = picture;
  const all = layout.rings.flat();
  const [west, east] = [Math.min(...all.map(([x]) => x)), Math.max(...all.map(([x]) => x))];
  const [south, north] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
  const scale = scaleFor(east - west, north - south, WIDE, HIGH);
  const perM = 1000 / scale;
  const paper: Paper = ([x, y]) => [EDGE + (x - west) * perM, EDGE + (north - y) * perM];
  const width = Math.max(90, (east - west) * perM + 2 * EDGE);
  const height = (north - south) * perM + 2 * EDGE;
  const size = `viewBox="0 0 ${mm(width)} ${mm(height + FOOT)}" style="width:${mm(width)}mm"`;
  return [
    `<svg ${size} class="k-${picture.kind}" role="img" aria-labelledby="${id}" data-scale="${scale}">`,
    `<title id="${id}">${escaped(title)}</title>`,
    `<path class="${layout.asIf ? "ground as-if" : "ground"}" d="${layout.rings.map((ring) => outline(ring.map(paper))).join("")}"/>`,
    ...places(picture, paper, perM),
    ...walkLines(layout, paper),
    ...pegs(layout, paper),
    ...numbers(picture, paper, perM),
    scaleBar(EDGE + 3, height + 9, scale, units, words),
    text(EDGE + 60, height + 9, words.say("pens.scale", { scale: words.figure(scale) }), { pt: 8 }),
    ...(layout.northKnown ? [northArrow(width - EDGE - 4, height + 1, words.say("pens.north"))] : []),
    "</svg>",
  ].join("\n");
}

function outline(points: readonly Point[]): string {
  return `${points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${mm(x)} ${mm(y)}`).join("")}Z`;
}

/** Number of the position that a rectangle belongs to; null for one pen's place that is over. */
function numberOf({ each, positions }: Layout, rectangle: number): number | null {
  const number = Math.floor(rectangle / each) + 1;
  return number <= positions ? number : null;
}

function places({ layout, used, pattern }: PenPicture, paper: Paper, perM: number): readonly string[] {
  const [w, h] = [layout.alongM * perM, layout.acrossM * perM];
  const box = { x: -w / 2, y: -h / 2, w, h };
  const turn = String(Number(((-layout.angle * 180) / Math.PI).toFixed(4)));
  return layout.middles.flatMap((middle, i) => {
    const number = numberOf(layout, i);
    if (number === null) return [];
    const [x, y] = paper(middle);
    const filled = used.has(number) ? patternFigures(pattern, box) : "";
    return `<g class="${filled === "" ? "place" : "place used"}" data-number="${number}" transform="translate(${mm(x)} ${mm(y)}) rotate(${turn})">${rect(box, 'class="box" stroke-width=".2"')}${filled}</g>`;
  });
}

/** First and last rectangle of every lane, and how it is reached. */
function laneEnds({ lanes }: Pick<Layout, "lanes">): readonly { readonly first: number; readonly last: number; readonly by: string }[] {
  let first = 0;
  return lanes.map(({ rectangles, by }) => {
    const lane = { first, last: first + rectangles - 1, by };
    first += rectangles;
    return lane;
  });
}

/** The way walked: along each lane, and from lane to lane; long dashes where the pen is brought round something. */
function walkLines(layout: Layout, paper: Paper): readonly string[] {
  const at = (i: number): Point => paper(layout.middles[i]!);
  const ends = laneEnds(layout);
  const along = ends.map(({ first, last }) => path(at(first), at(last))).join("");
  const over = (by: string): string => ends.filter((end) => end.by === by).map(({ first }) => path(at(first - 1), at(first))).join("");
  const drawn = (d: string, name: string): string => (d === "" ? "" : `<path class="walk ${name}" d="${d}"/>`);
  return [drawn(along, "lane"), drawn(over("shift"), "shift"), drawn(over("brought"), "brought")].filter((one) => one !== "");
}

function path([x1, y1]: Point, [x2, y2]: Point): string {
  return `M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}`;
}

/** A peg at the head of every lane and where each position begins, on the side that is at the left when the lane is walked. */
function pegs({ asIf, lanes, middles, each, alongM, acrossM }: Layout, paper: Paper): readonly string[] {
  if (asIf) return [];
  return laneEnds({ lanes }).flatMap(({ first, last }) => {
    const [ahead, aside] = frameOf(middles, first, last, alongM, acrossM);
    const heads = Array.from({ length: last - first + 1 }, (_, i) => first + i).filter((i) => i === first || i % each === 0);
    return heads.map((i) => {
      const [x, y] = middles[i]!;
      const [px, py] = paper([x - ahead[0] + aside[0], y - ahead[1] + aside[1]]);
      return `<path class="peg" d="M${mm(px - 0.9)} ${mm(py)}h1.8M${mm(px)} ${mm(py - 0.9)}v1.8"/>`;
    });
  });
}

/** Half a position along a lane as it is walked, and half a position to its left. */
function frameOf(middles: Layout["middles"], first: number, last: number, alongM: number, acrossM: number): readonly [Point, Point] {
  const [from, to] = [middles[first]!, middles[last]!];
  const far = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = far === 0 ? [1, 0] : [(to[0] - from[0]) / far, (to[1] - from[1]) / far];
  return [[(ux * alongM) / 2, (uy * alongM) / 2], [(-uy * acrossM) / 2, (ux * acrossM) / 2]];
}

/** Every position's number where it can be read, else those at the ends of the lanes; below it the day where that fits too. */
function numbers({ layout, used }: PenPicture, paper: Paper, perM: number): readonly string[] {
  const shown = layout.middles.map((_, i) => numberOf(layout, i));
  const widest = String(layout.positions);
  const [w, h] = [layout.alongM * perM, layout.acrossM * perM];
  const room = Math.min(w, h) * 0.9;
  const pt = Math.min(MOST_PT, (room * LEAST_PT) / textWidth(widest, LEAST_PT), (0.8 * Math.min(w, h)) / MM_PER_PT);
  const ends = new Set(laneEnds(layout).flatMap(({ first, last }) => [first, last]));
  const day = dayStyle([...used.values()], room);
  return shown.flatMap((number, i) => {
    if (number === null || (pt < LEAST_PT && !ends.has(i))) return [];
    const [x, y] = paper(layout.middles[i]!);
    const label = i % layout.each === 0 ? used.get(number) : undefined;
    const size = label !== undefined && day !== null ? Math.min(day.numberPt, pt) : Math.max(LEAST_PT, pt);
    const base = label !== undefined && day !== null ? y : y + 0.36 * size * MM_PER_PT;
    const figure = text(x, base, String(number), { pt: size, anchor: "middle", as: "rim" });
    return label !== undefined && day !== null ? [figure, text(x, y + 0.85 * day.pt * MM_PER_PT, label, { pt: day.pt, anchor: "middle", as: "rim" })] : [figure];
  });
}

/** Sizes of the day and of the number above it in a position, points; null where a day would not be read. */
function dayStyle(labels: readonly string[], room: number): { readonly pt: number; readonly numberPt: number } | null {
  const widest = labels.reduce((most, one) => Math.max(most, textWidth(one, LEAST_PT)), 0);
  if (widest === 0) return null;
  const pt = Math.min(MOST_PT - 3, (room * LEAST_PT) / widest);
  return pt < LEAST_PT || room < 2.4 * LEAST_PT * MM_PER_PT ? null : { pt: Math.min(pt, room / 2.4 / MM_PER_PT), numberPt: room / 2.2 / MM_PER_PT };
}

function northArrow(x: number, y: number, letter: string): string {
  return `<g class="north"><path class="ink" d="M${mm(x)} ${mm(y)}l2 6l-2 -1.4l-2 1.4z"/>${text(x, y + 10, letter, { pt: 9, bold: true, anchor: "middle" })}</g>`;
}
