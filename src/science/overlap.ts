import type { Boundary, Corner } from "./boundary.js";

type Edge = readonly [low: Corner, high: Corner];

/**
 * Area that two pieces of ground share, m2, holes counted out.
 *
 * Source: between two neighbouring levels at which a corner lies or two sides cross, no sides cross, so that ground both hold is
 * made of trapezia, and each is its width half way up times its height.
 */
export function sharedM2(one: Boundary, other: Boundary): number {
  const [low, high] = [Math.max(south(one), south(other)), Math.min(north(one), north(other))];
  if (low >= high || Math.max(west(one), west(other)) >= Math.min(east(one), east(other))) return 0;
  const [mine, theirs] = [edgesWithin(one, low, high), edgesWithin(other, low, high)];
  const corners = [...one.rings.flat(), ...other.rings.flat()].map(([, y]) => y);
  const levels = [...new Set([...corners, ...crossings(mine, theirs), low, high])].filter((y) => y >= low && y <= high).sort((a, b) => a - b);
  return levels.slice(1).reduce((sum, top, i) => {
    const middle = (levels[i]! + top) / 2;
    return sum + (top - levels[i]!) * sharedWidth(passes(mine, middle), passes(theirs, middle));
  }, 0);
}

const south = ({ rings }: Boundary): number => Math.min(...rings[0]!.map(([, y]) => y));
const north = ({ rings }: Boundary): number => Math.max(...rings[0]!.map(([, y]) => y));
const west = ({ rings }: Boundary): number => Math.min(...rings[0]!.map(([x]) => x));
const east = ({ rings }: Boundary): number => Math.max(...rings[0]!.map(([x]) => x));

/** Sides that are not level, upward, where they pass between two levels. */
function edgesWithin({ rings }: Boundary, low: number, high: number): readonly Edge[] {
  return rings.flatMap((ring) => ring.map((a, i): Edge => {
    const b = ring[(i + 1) % ring.length]!;
    return a[1] < b[1] ? [a, b] : [b, a];
  })).filter(([a, b]) => a[1] < b[1] && b[1] > low && a[1] < high).sort((p, q) => p[0][1] - q[0][1]);
}

/** Levels at which a side of one crosses a side of the other. */
function crossings(mine: readonly Edge[], theirs: readonly Edge[]): readonly number[] {
  const levels: number[] = [];
  for (const edge of mine) {
    for (const other of theirs) {
      if (other[0][1] >= edge[1][1]) break;
      const [low, high] = [Math.max(edge[0][1], other[0][1]), Math.min(edge[1][1], other[1][1])];
      if (low >= high) continue;
      const [below, above] = [eastAt(edge, low) - eastAt(other, low), eastAt(edge, high) - eastAt(other, high)];
      if (below * above < 0) levels.push(low + ((high - low) * below) / (below - above));
    }
  }
  return levels;
}

function eastAt([a, b]: Edge, y: number): number {
  return a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]);
}

/** Where a level passes the sides, from west to east: ground lies from the first to the second, the third to the fourth, and so on. */
function passes(edges: readonly Edge[], y: number): readonly number[] {
  const found: number[] = [];
  for (const edge of edges) {
    if (edge[0][1] > y) break;
    if (edge[1][1] > y) found.push(eastAt(edge, y));
  }
  return found.sort((a, b) => a - b);
}

function sharedWidth(mine: readonly number[], theirs: readonly number[]): number {
  let width = 0;
  for (let i = 0; i + 1 < mine.length; i += 2) {
    for (let j = 0; j + 1 < theirs.length; j += 2) width += Math.max(0, Math.min(mine[i + 1]!, theirs[j + 1]!) - Math.max(mine[i]!, theirs[j]!));
  }
  return width;
}
