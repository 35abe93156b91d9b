import type { Boundary, Corner } from "./boundary.js";
import { shortOf, type CutOff } from "./cut.js";
import { areaM2Of, between, groundOnLeft, toSideM } from "./rings.js";

/** A straight side of ground, bends of the ring within the tolerance left out. */
export interface Side {
  readonly from: Corner;
  readonly to: Corner;
  readonly lengthM: number;
  /** Way that it faces, away from the ground: degrees from north by east. */
  readonly facing: number;
}

/** One of several strips of ground. */
export interface GroundStrip {
  /** More than one where the ground's shape cuts it off. */
  readonly pieces: readonly Boundary[];
  /** Length of its sides inside the ground, m. */
  readonly insideM: number;
}

/** A bend that leaves the straight line by less than this share of the ground's length is no corner. */
const STRAIGHT = 0.02;

/** The sides of the outer ring, in order. Bends are left out as by Douglas and Peucker (1973). */
export function sidesOf(ground: Boundary): readonly Side[] {
  const ring = groundOnLeft(ground).rings[0]!;
  const far = farthest(ring, ring[0]!);
  const begin = farthest(ring, ring[far]!);
  const turned = [...ring.slice(begin), ...ring.slice(0, begin)];
  const middle = farthest(turned, turned[0]!);
  const tolerance = STRAIGHT * between(turned[0]!, turned[middle]!);
  const corners = [...straightened(turned.slice(0, middle + 1), tolerance), ...straightened([...turned.slice(middle), turned[0]!], tolerance)];
  return corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    const facing = (Math.atan2(to[1] - from[1], -(to[0] - from[0])) * 180) / Math.PI;
    return { from, to, lengthM: between(from, to), facing: (facing + 360) % 360 };
  });
}

function farthest(ring: readonly Corner[], from: Corner): number {
  return ring.reduce((best, corner, i) => (between(from, corner) > between(from, ring[best]!) ? i : best), 0);
}

/** Corners of a line without the small bends and without its last. */
function straightened(line: readonly Corner[], tolerance: number): readonly Corner[] {
  const keep = new Set([0]);
  const spans: (readonly [number, number])[] = [[0, line.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [first, last] = span;
    let [bend, most] = [-1, tolerance];
    for (let i = first + 1; i < last; i++) {
      const off = toSideM(line[first]!, line[last]!, line[i]!);
      if (off > most) [bend, most] = [i, off];
    }
    if (bend < 0) continue;
    keep.add(bend);
    spans.push([first, bend], [bend, last]);
  }
  return line.filter((_, i) => keep.has(i));
}

/** Halvings of a line's place: of a kilometre less than a nanometre is left. */
const HALVINGS = 52;

/**
 * Ground in strips of equal area along a side, the one beside it first.
 *
 * @param ground in one piece, holes counted out
 * @param facing way that the side faces, degrees from north by east
 * @param count strips wanted
 * Source: each line's place by bisection on the area short of it.
 */
export function equalStrips(ground: Boundary, facing: number, count: number): readonly GroundStrip[] {
  const angle = (facing * Math.PI) / 180;
  const across: Corner = [-Math.sin(angle), -Math.cos(angle)];
  const whole = areaM2Of(ground);
  const reach = (corner: Corner): number => corner[0] * across[0] + corner[1] * across[1];
  const all = ground.rings[0]!.map(reach);
  const [nearest, last] = [Math.min(...all), Math.max(...all)];
  const places = Array.from({ length: count - 1 }, (_, i) => lineAt(ground, across, nearest, last, (whole * (i + 1)) / count));
  return Array.from({ length: count }, (_, i): GroundStrip => {
    const before = i === count - 1 ? { pieces: [groundOnLeft(ground)], alongM: 0 } : shortOf(ground, { across, at: places[i]! });
    if (i === 0) return { pieces: solid(before.pieces, whole), insideM: before.alongM };
    const cut = before.pieces.map((piece) => shortOf(piece, { across: [-across[0], -across[1]], at: -places[i - 1]! }));
    return { pieces: solid(cut.flatMap((part) => part.pieces), whole), insideM: before.alongM + cut.reduce((sum, part) => sum + part.alongM, 0) };
  });
}

function lineAt(ground: Boundary, across: Corner, nearest: number, last: number, wantedM2: number): number {
  let [low, high] = [nearest, last];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (areaOfCut(shortOf(ground, { across, at: middle })) < wantedM2) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function areaOfCut({ pieces }: CutOff): number {
  return pieces.reduce((sum, piece) => sum + areaM2Of(piece), 0);
}

/** Without slivers that rounding leaves. */
function solid(pieces: readonly Boundary[], wholeM2: number): readonly Boundary[] {
  return pieces.filter((piece) => areaM2Of(piece) > 1e-9 * wholeM2);
}
