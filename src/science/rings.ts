import type { Boundary, Corner } from "./boundary.js";

/** Area inside a ring, m2, above 0 where it runs against the clock. Source: the surveyor's (shoelace) formula. */
export function turnedAreaM2(ring: readonly Corner[]): number {
  const [x0, y0] = ring[0] ?? [0, 0];
  let twice = 0;
  ring.forEach(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    twice += (x - x0) * (nextY - y0) - (nextX - x0) * (y - y0);
  });
  return twice / 2;
}

/** Area inside the outer ring without its holes, m2. */
export function areaM2Of({ rings }: Boundary): number {
  return rings.reduce((sum, ring, i) => sum + (i === 0 ? 1 : -1) * Math.abs(turnedAreaM2(ring)), 0);
}

/** Way round the outer ring, m. */
export function wayRoundM({ rings }: Boundary): number {
  const ring = rings[0] ?? [];
  return ring.reduce((sum, corner, i) => sum + between(corner, ring[(i + 1) % ring.length]!), 0);
}

/** From one point to another, m. */
export function between(a: Corner, b: Corner): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** The same ground with its outer ring against the clock and its holes with it, so that ground is always on the left. */
export function groundOnLeft({ rings, ...rest }: Boundary): Boundary {
  return { ...rest, rings: rings.map((ring, i) => (turnedAreaM2(ring) > 0 === (i === 0) ? ring : [...ring].reverse())) };
}

/** Whether a point lies inside a ring; on the ring itself either may be said. Source: crossings of a ray, even or odd. */
export function isInside(ring: readonly Corner[], [x, y]: Corner): boolean {
  let inside = false;
  ring.forEach(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  });
  return inside;
}

/** From a point to the nearest of a ring, m. */
export function toRingM(ring: readonly Corner[], point: Corner): number {
  return Math.min(...ring.map((corner, i) => toSideM(corner, ring[(i + 1) % ring.length]!, point)));
}

/** From a point to the nearest of a straight side, m. */
export function toSideM(from: Corner, to: Corner, [x, y]: Corner): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length2 = dx * dx + dy * dy;
  const share = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - from[0]) * dx + (y - from[1]) * dy) / length2));
  return Math.hypot(x - from[0] - share * dx, y - from[1] - share * dy);
}

interface Edge {
  readonly a: Corner;
  readonly b: Corner;
  readonly ring: number;
  readonly at: number;
  readonly west: number;
  readonly east: number;
}

/** Where two sides cross, of one ring or of two: ring and corner from 0 at which each side begins. Null where none does. */
export function crossingOf(rings: readonly (readonly Corner[])[]): readonly [readonly [ring: number, corner: number], readonly [ring: number, corner: number]] | null {
  const edges = rings.flatMap((ring, r) => ring.map((a, at): Edge => {
    const b = ring[(at + 1) % ring.length]!;
    return { a, b, ring: r, at, west: Math.min(a[0], b[0]), east: Math.max(a[0], b[0]) };
  })).sort((one, other) => one.west - other.west);
  for (let i = 0; i < edges.length; i++) {
    const one = edges[i]!;
    for (let j = i + 1; j < edges.length && edges[j]!.west <= one.east; j++) {
      const other = edges[j]!;
      if (!crosses(one.a, one.b, other.a, other.b)) continue;
      const pair = [[one.ring, one.at], [other.ring, other.at]] as const;
      return one.ring < other.ring || (one.ring === other.ring && one.at < other.at) ? pair : [pair[1], pair[0]];
    }
  }
  return null;
}

/** Whether two sides cross between their ends; sides that share a corner do not. */
export function crosses(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  return sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0;
}

function sideOf(a: Corner, b: Corner, p: Corner): number {
  return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
}
