import type { Boundary, Corner } from "./boundary.js";
import { groundOnLeft, isInside, turnedAreaM2 } from "./rings.js";

/** A straight line across ground: all points p with p . across = at. */
export interface Line {
  /** Length 1. */
  readonly across: Corner;
  readonly at: number;
}

/** Ground on one side of a line. */
export interface CutOff {
  /** Each in one piece, ground on the left of its rings. */
  readonly pieces: readonly Boundary[];
  /** Length of the line within the ground, m. */
  readonly alongM: number;
}

/** Part of a ring on the kept side, from the line back to the line. */
interface Chain {
  readonly corners: readonly Corner[];
}

/**
 * The part of ground that lies short of a line (p . across < at), holes and all. A corner on the line counts as beyond it, so
 * that every way over the line is a side that truly passes it.
 *
 * Source: along the line ground begins where a ring comes back and ends where the next one leaves; in order along it the
 * first of each belong together, then the second, and so on.
 */
export function shortOf(ground: Boundary, line: Line): CutOff {
  const whole: (readonly Corner[])[] = [];
  const chains: Chain[] = [];
  for (const ring of groundOnLeft(ground).rings) {
    const short = ring.map((corner) => distance(corner, line) < 0);
    if (short.every(Boolean)) whole.push(ring);
    else chains.push(...chainsOf(ring, short, line));
  }
  const along = (p: Corner): number => p[1] * line.across[0] - p[0] * line.across[1];
  const byStart = chains.map((_, i) => i).sort((i, j) => along(chains[i]!.corners[0]!) - along(chains[j]!.corners[0]!));
  const byEnd = chains.map((_, i) => i).sort((i, j) => along(chains[i]!.corners.at(-1)!) - along(chains[j]!.corners.at(-1)!));
  const next = new Map(byEnd.map((chain, rank) => [chain, byStart[rank]!]));
  const alongM = byEnd.reduce((sum, chain, rank) => sum + Math.abs(along(chains[chain]!.corners.at(-1)!) - along(chains[byStart[rank]!]!.corners[0]!)), 0);
  return { pieces: withHoles([...joined(chains, next), ...whole]), alongM };
}

function distance(p: Corner, { across, at }: Line): number {
  return p[0] * across[0] + p[1] * across[1] - at;
}

function chainsOf(ring: readonly Corner[], short: readonly boolean[], line: Line): readonly Chain[] {
  const n = ring.length;
  const starts = ring.map((_, i) => i).filter((i) => short[i] && !short[(i + n - 1) % n]);
  return starts.map((start) => {
    const corners: Corner[] = [passing(ring[(start + n - 1) % n]!, ring[start]!, line)];
    let i = start;
    for (; short[i % n]; i++) corners.push(ring[i % n]!);
    return { corners: [...corners, passing(ring[(i - 1) % n]!, ring[i % n]!, line)] };
  });
}

/** Where the side from a to b passes the line. */
function passing(a: Corner, b: Corner, line: Line): Corner {
  const [da, db] = [distance(a, line), distance(b, line)];
  const share = da / (da - db);
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
}

/** Chains end to start, each the next one's, into rings. */
function joined(chains: readonly Chain[], next: ReadonlyMap<number, number>): (readonly Corner[])[] {
  const left = new Set(chains.keys());
  const rings: (readonly Corner[])[] = [];
  for (const first of chains.keys()) {
    const corners: Corner[] = [];
    for (let i = first; left.delete(i); i = next.get(i)!) corners.push(...chains[i]!.corners);
    const ring = withoutRepeats(corners);
    if (ring.length >= 3 && turnedAreaM2(ring) > 0) rings.push(ring);
  }
  return rings;
}

function withoutRepeats(corners: readonly Corner[]): readonly Corner[] {
  return corners.filter(([x, y], i) => {
    const [beforeX, beforeY] = corners[(i + corners.length - 1) % corners.length]!;
    return x !== beforeX || y !== beforeY;
  });
}

/** Rings that run against the clock hold ground; the others are holes in the one they lie in. */
function withHoles(rings: readonly (readonly Corner[])[]): readonly Boundary[] {
  const holes = rings.filter((ring) => turnedAreaM2(ring) < 0);
  return rings.filter((ring) => turnedAreaM2(ring) > 0).map((outer) => ({ rings: [outer, ...holes.filter((hole) => isInside(outer, hole[0]!))] }));
}
