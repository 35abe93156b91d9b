import type { Boundary, Corner } from "./boundary.js";
import { walked, type Lane, type Run } from "./lane-walk.js";

/**
 * Rectangles of one size in parallel lanes, in the order in which they are walked. In the lanes' own frame x runs along the
 * lanes and y across them, both in m; `groundOf` turns it back.
 */
export interface LanePlan {
  /** Direction of the lanes, radians from east towards north, 0 up to half a turn. */
  readonly angle: number;
  /** Side of a position along the lane, and across it, m. */
  readonly alongM: number;
  readonly acrossM: number;
  /** In walking order: each a stretch of ground with nothing in the way. */
  readonly lanes: readonly Lane[];
  /** Whole positions in all lanes. */
  readonly positions: number;
}

/** Rounding that a boundary may be crossed by, m: a hundredth of a hair. */
const HAIR_M = 1e-7;
/** Directions tried: the longest edges, at least so far apart (radians). */
const MOST_DIRECTIONS = 8;
const APART = Math.PI / 180;
/** Edges whose ends lanes may lie flush with, besides the outermost corners. */
const MOST_FLUSH = 12;

/** One lane more weighs less than one position more. */
const LANE_WEIGHT = 1e-4;

type Edge = readonly [x1: number, y1: number, x2: number, y2: number];

/**
 * Lays rectangles of two sides into ground: along each of its longest edges, either side of the rectangle ahead, lanes flush with
 * whatever corner lets most of them in; takes the way with most positions, then with fewest lanes, then the first tried. No position
 * overlaps another or crosses the boundary or a hole.
 *
 * @param sidesM sides of one position, m
 */
export function layLanes(boundary: Boundary, sidesM: readonly [number, number]): LanePlan {
  const [a, b] = sidesM;
  const ways: readonly (readonly [number, number])[] = a === b ? [[a, b]] : [[a, b], [b, a]];
  let best: { readonly angle: number; readonly alongM: number; readonly acrossM: number; readonly runs: readonly (readonly Run[])[]; readonly worth: number } | null = null;
  for (const angle of directionsOf(boundary)) {
    const edges = edgesAlong(boundary, angle);
    for (const [alongM, acrossM] of ways) {
      const runs = bestLanes(edges, alongM, acrossM);
      const worth = runs.reduce((sum, lane) => sum + worthOf(lane), 0);
      if (best === null || worth > best.worth + LANE_WEIGHT / 2) best = { angle, alongM, acrossM, runs, worth };
    }
  }
  if (best === null) throw new Error("a boundary without edges");
  const { angle, alongM, acrossM, runs } = best;
  return { angle, alongM, acrossM, lanes: walked(runs, alongM, acrossM), positions: runs.flat().reduce((sum, run) => sum + run.count, 0) };
}

/** A point of the lanes' frame on the ground. */
export function groundOf({ angle }: LanePlan, x: number, y: number): Corner {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [x * c - y * s, x * s + y * c];
}

/** Lower left corner of every position in the lanes' frame, in walking order. */
export function placesOf({ lanes, alongM }: LanePlan): readonly (readonly [x: number, y: number])[] {
  return lanes.flatMap(({ x, y, count, forward }) =>
    Array.from({ length: count }, (_, i) => [x + (forward ? i : count - 1 - i) * alongM, y] as const));
}

/** Directions of the longest edges, longest first. */
function directionsOf({ rings }: Boundary): readonly number[] {
  const edges = rings.flatMap((ring) => ring.map(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    return { long: Math.hypot(nextX - x, nextY - y), angle: halfTurn(Math.atan2(nextY - y, nextX - x)) };
  })).filter((edge) => edge.long > 0);
  const chosen: number[] = [];
  for (const { angle } of edges.sort((one, other) => (Math.abs(one.long - other.long) < HAIR_M ? 0 : other.long - one.long))) {
    if (chosen.length < MOST_DIRECTIONS && chosen.every((have) => apart(have, angle) > APART)) chosen.push(angle);
  }
  return chosen;
}

/** An angle as a direction without a sense: 0 up to half a turn. */
function halfTurn(angle: number): number {
  const turned = ((angle % Math.PI) + Math.PI) % Math.PI;
  return Math.PI - turned < 1e-12 ? 0 : turned;
}

function apart(a: number, b: number): number {
  const off = Math.abs(a - b);
  return Math.min(off, Math.PI - off);
}

/** All edges, turned so that lanes run along x. */
function edgesAlong({ rings }: Boundary, angle: number): readonly Edge[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return rings.flatMap((ring) => {
    const turned = ring.map(([x, y]) => [x * c + y * s, y * c - x * s] as const);
    return turned.map(([x, y], i): Edge => [x, y, ...turned[(i + 1) % turned.length]!]);
  });
}

function worthOf(lane: readonly Run[]): number {
  return lane.reduce((sum, run) => sum + run.count - LANE_WEIGHT, 0);
}

/** Lanes side by side that hold most positions, lowest first: each flush with a corner, or with a lane that is. */
function bestLanes(edges: readonly Edge[], alongM: number, acrossM: number): readonly (readonly Run[])[] {
  const starts = laneStarts(edges, acrossM);
  const lanes = starts.map((y) => runsIn(edges, y, alongM, acrossM));
  const best = new Float64Array(starts.length + 1);
  const after = starts.map((y) => firstFrom(starts, y + acrossM - HAIR_M));
  for (let i = starts.length - 1; i >= 0; i--) best[i] = Math.max(best[i + 1]!, worthOf(lanes[i]!) + best[after[i]!]!);
  const taken: (readonly Run[])[] = [];
  for (let i = 0; i < starts.length; ) {
    const worth = worthOf(lanes[i]!);
    if (worth > 0 && worth + best[after[i]!]! >= best[i + 1]! - LANE_WEIGHT / 2) {
      taken.push(lanes[i]!);
      i = after[i]!;
    } else i++;
  }
  return taken;
}

/** First place in a sorted list from a value on. */
function firstFrom(sorted: readonly number[], from: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Lower sides that a lane may have: whole lanes away from the ends of the longest edges and from the outermost corners. */
function laneStarts(edges: readonly Edge[], acrossM: number): readonly number[] {
  const longest = [...edges].sort((one, other) => lengthOf(other) - lengthOf(one)).slice(0, MOST_FLUSH);
  const [least, most] = [Math.min(...edges.map((edge) => edge[1])), Math.max(...edges.map((edge) => edge[1]))];
  const starts = [least, most, ...longest.flatMap((edge) => [edge[1], edge[3]])].flatMap((y) => {
    const lowest = y - Math.floor((y - least) / acrossM + HAIR_M) * acrossM;
    const count = Math.max(0, Math.floor((most - lowest) / acrossM + HAIR_M));
    return Array.from({ length: count }, (_, k) => lowest + k * acrossM);
  });
  return starts.sort((a, b) => a - b).filter((y, i, all) => i === 0 || y - all[i - 1]! > HAIR_M);
}

function lengthOf([x1, y1, x2, y2]: Edge): number {
  return Math.hypot(x2 - x1, y2 - y1);
}

/** What fits between y and y + across: the stretches that no edge enters and that lie inside, each with whole positions from its lower end. */
function runsIn(edges: readonly Edge[], y: number, alongM: number, acrossM: number): readonly Run[] {
  const inTheWay = edges.flatMap((edge) => shadow(edge, y + HAIR_M, y + acrossM - HAIR_M)).sort((a, b) => a[0] - b[0]);
  const runs: Run[] = [];
  let from = Infinity;
  for (const [left, right] of inTheWay) {
    const count = Math.floor((left - from) / alongM + HAIR_M);
    if (count > 0 && isInside(edges, (from + left) / 2, y + acrossM / 2)) runs.push({ x: from, y, count });
    from = from === Infinity ? right : Math.max(from, right);
  }
  return runs;
}

/** Stretch of x over which an edge runs between two levels: none or one. */
function shadow([x1, y1, x2, y2]: Edge, low: number, high: number): readonly (readonly [number, number])[] {
  if (Math.max(y1, y2) <= low || Math.min(y1, y2) >= high) return [];
  const at = (y: number): number => (y1 === y2 ? x1 : x1 + ((y - y1) / (y2 - y1)) * (x2 - x1));
  const ends = [
    y1 < low ? at(low) : y1 > high ? at(high) : x1,
    y2 < low ? at(low) : y2 > high ? at(high) : x2,
  ];
  return [[Math.min(...ends), Math.max(...ends)]];
}

/** Whether a point lies inside: a line from it to the right crosses an odd number of edges. */
function isInside(edges: readonly Edge[], x: number, y: number): boolean {
  let inside = false;
  for (const [x1, y1, x2, y2] of edges) {
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  }
  return inside;
}
