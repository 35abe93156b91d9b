/** Ground of many forms for tests, turned any way: L-shapes, stars, pieces with a hole. */
import fc from "fast-check";
import type { Boundary, Corner } from "../../src/science/boundary.js";

const length = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function turned(ring: readonly Corner[], angle: number, east: number): readonly Corner[] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return ring.map(([x, y]) => [east + x * c - y * s, x * s + y * c]);
}

export function rectangle(width: number, length: number, x = 0, y = 0): readonly Corner[] {
  return [[x, y], [x + width, y], [x + width, y + length], [x, y + length]];
}

/** A rectangle with a corner cut out. */
export function lShape(width: number, length: number, cutWidth: number, cutLength: number): readonly Corner[] {
  return [[0, 0], [width, 0], [width, length - cutLength], [width - cutWidth, length - cutLength], [width - cutWidth, length], [0, length]];
}

/** Corners round a point at distances of their own: never crosses itself. */
function star(radii: readonly number[]): readonly Corner[] {
  return radii.map((r, i) => {
    const angle = (2 * Math.PI * i) / radii.length;
    return [r * Math.cos(angle), r * Math.sin(angle)];
  });
}

const way = fc.tuple(length(0, 7), length(-50, 5000));
const ells = fc.tuple(length(12, 40), length(12, 40), length(0.1, 0.9), length(0.1, 0.9)).map(([w, l, a, b]) => [lShape(w, l, w * a, l * b)]);
const stars = fc.array(length(5, 22), { minLength: 5, maxLength: 11 }).map((radii) => [star(radii)]);
const holed = fc.tuple(length(16, 36), length(16, 36), length(0.1, 0.5), length(0.1, 0.4), fc.array(length(0.3, 1), { minLength: 3, maxLength: 7 })).map(([w, l, x, y, radii]) => {
  const hole = star(radii.map((r) => r * 0.19 * Math.min(w, l))).map(([hx, hy]): Corner => [hx + w * (0.25 + x), hy + l * (0.25 + y)]);
  return [rectangle(w, l), hole];
});

/** Any of them, laid anyhow. */
export const grounds: fc.Arbitrary<Boundary> = fc.tuple(fc.oneof(ells, stars, holed), way)
  .map(([rings, [angle, east]]) => ({ rings: rings.map((ring) => turned(ring, angle, east)) }));
