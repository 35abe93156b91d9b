import { readPair } from "../quantity/amount.js";
import { outlineOfCorners, outlineOfFourSides, outlineOfTriangle, type Boundary, type Corner, type Outline } from "../science/boundary.js";
import { groundOnLeft } from "../science/rings.js";
import { AMOUNT_KEYS } from "./amount-keys.js";
import { amountAt, amountIn, say, toWrite, type Desk, type Thing } from "./desk.js";
import { boundaryName } from "./map/used-names.js";
import { child, itemsOf, textOf, type Place, type Tree } from "./tree.js";

/** A typed area, ha, undefined when none is written, NaN when refused; and corners, in metres from a point of their own. */
export interface TypedGround {
  readonly areaHa: number | undefined;
  readonly boundary: Boundary | null;
}

/** What is typed of a field or cell as its area, sides or corners. */
export function typedGround(desk: Desk, thing: Thing): TypedGround {
  const sides = child(thing.map, "sides");
  const boundary = child(thing.map, "boundary");
  const onMap = boundaryName(boundary) !== undefined;
  const ways = ["area", "sides", "boundary"].filter((key) => child(thing.map, key) !== undefined);
  if (ways.length > 1 && !(onMap && !sides)) {
    const second = child(thing.map, ways[1]!)!;
    say(desk, second, { code: "two-ways", found: `${thing.name} has ${ways.join(" and ")}`, allowed: "one of them says how large it is", next: `take out all but ${ways[0]}` });
    return { areaHa: Number.NaN, boundary: null };
  }
  if (sides) return { areaHa: withinReach(desk, thing.name, sides, areaOfSides(desk, thing, sides)), boundary: null };
  if (!boundary || onMap) return { areaHa: amountIn(desk, thing, "area"), boundary: null };
  const corners = itemsOf(boundary).map((corner) => cornerAt(desk, thing, corner));
  const areaHa = withinReach(desk, thing.name, boundary, areaOfCorners(desk, thing, boundary, corners));
  return { areaHa, boundary: Number.isNaN(areaHa) ? null : ringOf(corners as readonly Corner[]) };
}

/** Without the first corner again at the end. */
function ringOf(corners: readonly Corner[]): Boundary {
  const [first, last] = [corners[0]!, corners.at(-1)!];
  return groundOnLeft({ rings: [first[0] === last[0] && first[1] === last[1] ? corners.slice(0, -1) : corners] });
}

function areaOfSides(desk: Desk, thing: Thing, node: Tree): number {
  const sides = itemsOf(node).map((side) => amountAt(desk, side, `${thing.name}: side`, AMOUNT_KEYS.side));
  const across = child(thing.map, "diagonal");
  const diagonal = across ? amountAt(desk, across, `${thing.name}: diagonal`, AMOUNT_KEYS.side) : undefined;
  if ([...sides, diagonal ?? 1].some(Number.isNaN)) return Number.NaN;
  const outline = outlineOfSides(sides, diagonal);
  if (outline.ok) return outline.areaM2 / 10_000;
  const found = sides.length === 4 && diagonal === undefined ? "four sides without a diagonal" : "sides that do not meet";
  say(desk, node, { code: "sides-open", found: `${thing.name} has ${found}`, allowed: "three sides, or four in order round and the diagonal from the first's start to the second's end", next: "measure the diagonal too, or write the area" });
  return Number.NaN;
}

function outlineOfSides(sides: readonly number[], diagonal: number | undefined): Outline {
  const [a, b, c, d] = sides as [number, number, number, number];
  if (sides.length === 3) return outlineOfTriangle([a, b, c]);
  return sides.length === 4 && diagonal !== undefined ? outlineOfFourSides([a, b, c, d], diagonal) : { ok: false, why: "sides do not meet" };
}

const BOUNDARY_WORDS: Readonly<Record<string, string>> = {
  "too few corners": "fewer than three corners", "crosses itself": "a boundary that crosses itself", "no area": "a boundary that holds no ground",
};

function areaOfCorners(desk: Desk, thing: Thing, node: Tree, corners: readonly (Corner | undefined)[]): number {
  if (corners.some((corner) => corner === undefined)) return Number.NaN;
  const outline = outlineOfCorners(corners as readonly Corner[]);
  if (outline.ok) return outline.areaM2 / 10_000;
  say(desk, node, { code: "sides-open", found: `${thing.name} has ${BOUNDARY_WORDS[outline.why] ?? outline.why}`, allowed: "three corners or more, in order round: 0 m x 0 m, 60 m x 0 m, 60 m x 45 m", next: "write all corners in order" });
  return Number.NaN;
}

function cornerAt(desk: Desk, thing: Thing, node: Tree): Corner | undefined {
  const text = textOf(node);
  if (text === undefined) return undefined;
  const read = readPair(text);
  if (read.ok && read.value.every((m) => m <= AMOUNT_KEYS.corner.most)) return read.value;
  if (read.ok) say(desk, node, { code: "out-of-reach", found: `${thing.name}: the corner ${text} is far off`, allowed: `corners lie ${AMOUNT_KEYS.corner.reach} from the first`, next: "measure from a corner of the ground" });
  else say(desk, node, { code: read.code, found: `${thing.name}: ${read.found}`, allowed: read.allowed, next: toWrite(read.next) });
  return undefined;
}

/** An area that fields and cells may have, ha; else a finding, and NaN. */
export function withinReach(desk: Desk, name: string, at: Place, areaHa: number): number {
  const { least, most, reach } = AMOUNT_KEYS.area;
  if (Number.isNaN(areaHa) || (areaHa >= least && areaHa <= most)) return areaHa;
  say(desk, at, { code: "out-of-reach", found: `${name}: area comes to ${Number(areaHa.toPrecision(3))} ha`, allowed: `it may be ${reach}`, next: "look at the lengths" });
  return Number.NaN;
}

/** To a square metre. */
export function hectares(value: number): string {
  return String(Number(value.toFixed(4)));
}
