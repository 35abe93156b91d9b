import { crossingOf } from "./rings.js";

/** A corner in metres on flat ground: east and north. */
export type Corner = readonly [eastM: number, northM: number];

/** Ground by its corners: the ring round it, then a ring round each hole (a pond, a copse); none repeats its first corner. */
export interface Boundary {
  readonly rings: readonly (readonly Corner[])[];
  /** True where the second figure is known to point north: corners from a map, not paced out on the ground. */
  readonly north?: boolean;
}

/** Area and length round a piece of ground; or why the figures cannot be one. */
export type Outline =
  | { readonly ok: true; readonly areaM2: number; readonly perimeterM: number }
  | { readonly ok: false; readonly why: "too few corners" | "crosses itself" | "no area" | "sides do not meet" };

/**
 * A polygon given by its corners in order, either way round; the last may repeat the first.
 *
 * Source: the surveyor's (shoelace) formula.
 */
export function outlineOfCorners(corners: readonly Corner[]): Outline {
  const ring = openRing(corners);
  if (ring.length < 3) return { ok: false, why: "too few corners" };
  if (crossingOf([ring])) return { ok: false, why: "crosses itself" };
  let twice = 0;
  let perimeterM = 0;
  const [x0, y0] = ring[0]!;
  ring.forEach(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    // Taken from the first corner, so that grid references of millions of metres do not eat the digits.
    twice += (x - x0) * (nextY - y0) - (nextX - x0) * (y - y0);
    perimeterM += Math.hypot(nextX - x, nextY - y);
  });
  if (Math.abs(twice) < 1e-9 * perimeterM * perimeterM) return { ok: false, why: "no area" };
  return { ok: true, areaM2: Math.abs(twice) / 2, perimeterM };
}

/** A triangle of three sides, m. Source: Heron's formula, in Kahan's order, which stays exact for thin ones. */
export function outlineOfTriangle(sides: readonly [number, number, number]): Outline {
  const [c, b, a] = [...sides].sort((p, q) => p - q) as [number, number, number];
  const product = (a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c));
  if (c <= 0 || product <= 0) return { ok: false, why: "sides do not meet" };
  return { ok: true, areaM2: Math.sqrt(product) / 4, perimeterM: a + b + c };
}

/**
 * Four sides in order round the ground and the diagonal from the first corner to the third: two triangles.
 *
 * @param sides first to second corner, second to third, third to fourth, fourth to first, m
 * @param diagonalM first corner to third, m
 */
export function outlineOfFourSides(sides: readonly [number, number, number, number], diagonalM: number): Outline {
  const [ab, bc, cd, da] = sides;
  const [one, other] = [outlineOfTriangle([ab, bc, diagonalM]), outlineOfTriangle([cd, da, diagonalM])];
  if (!one.ok || !other.ok) return { ok: false, why: "sides do not meet" };
  return { ok: true, areaM2: one.areaM2 + other.areaM2, perimeterM: ab + bc + cd + da };
}

function openRing(corners: readonly Corner[]): readonly Corner[] {
  const last = corners.at(-1);
  const first = corners[0];
  return first && last && corners.length > 1 && first[0] === last[0] && first[1] === last[1] ? corners.slice(0, -1) : corners;
}
