import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { intersection } from "polyclip-ts";
import type { Boundary, Corner } from "../../src/science/boundary.js";
import { shortOf } from "../../src/science/cut.js";
import { sharedM2 } from "../../src/science/overlap.js";
import { areaM2Of, crossingOf, groundOnLeft, isInside, toRingM, turnedAreaM2, wayRoundM } from "../../src/science/rings.js";
import { equalStrips, sidesOf } from "../../src/science/strips.js";
import { off } from "./published.js";

const box = (west: number, south: number, east: number, north: number): readonly Corner[] => [[west, south], [east, south], [east, north], [west, north]];
const ELL: Boundary = { rings: [[[0, 0], [120, 0], [120, 50], [40, 50], [40, 130], [0, 130]]] };
const POND: Boundary = { rings: [box(0, 0, 100, 60), [[40, 20], [50, 40], [60, 20]]] };

/** Ground in the shape of a star about a point, and a smaller one of the same rays for its pond. */
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const star = (least: number): fc.Arbitrary<Boundary> =>
  fc.tuple(fc.array(between(least, 1), { minLength: 3, maxLength: 14 }), fc.boolean(), between(20, 400), between(-300, 300))
    .map(([rays, pond, radius, away]) => {
      const ring = (share: number): readonly Corner[] => rays.map((ray, i) => {
        const angle = (2 * Math.PI * (i + 0.3 * ray)) / rays.length;
        return [away + share * radius * ray * Math.cos(angle), share * radius * ray * Math.sin(angle) - away / 2];
      });
      return { rings: pond ? [ring(1), ring(0.4)] : [ring(1)] };
    });

const facings = between(0, 360);
const RUNS = { seed: 7946, numRuns: 200 };

/** Area both hold, by a general library for clipping polygons. */
function sharedByLibrary(one: Boundary, other: Boundary): number {
  const closed = ({ rings }: Boundary): [number, number][][] => rings.map((ring) => [...ring, ring[0]!].map(([x, y]): [number, number] => [x, y]));
  return intersection(closed(one), closed(other)).reduce((sum, rings) => sum + areaM2Of({ rings: rings.map((ring) => ring.slice(0, -1)) }), 0);
}

describe("rings", () => {
  it("hold ground on their left, holes counted out", () => {
    expect(turnedAreaM2(box(0, 0, 10, 5))).toBe(50);
    expect(turnedAreaM2([...box(0, 0, 10, 5)].reverse())).toBe(-50);
    expect(areaM2Of(POND)).toBe(6000 - 200);
    expect(wayRoundM(POND)).toBe(320);
    const turned = groundOnLeft({ rings: [[...POND.rings[0]!].reverse(), [...POND.rings[1]!].reverse()] });
    expect(turned.rings.map((ring) => Math.sign(turnedAreaM2(ring)))).toEqual([1, -1]);
  });

  it("tell inside from outside, and how far", () => {
    expect([[50, 10], [130, 10], [60, 60], [20, 120]].map(([x, y]) => isInside(ELL.rings[0]!, [x!, y!]))).toEqual([true, false, false, true]);
    expect(toRingM(ELL.rings[0]!, [60, 60])).toBe(10);
    expect(toRingM(ELL.rings[0]!, [150, -40])).toBe(50);
  });

  it("cross where two sides do, of one ring or two", () => {
    expect(crossingOf([[[0, 0], [10, 10], [10, 0], [0, 10]]])).toEqual([[0, 0], [0, 2]]);
    expect(crossingOf([box(0, 0, 10, 10), box(5, 5, 15, 8)])).toEqual([[0, 1], [1, 0]]);
    expect(crossingOf(POND.rings)).toBeNull();
  });
});

describe("cuts", () => {
  it("go round a pond, and through it", () => {
    expect(shortOf(POND, { across: [1, 0], at: 30 }).pieces).toHaveLength(1);
    const half = shortOf(POND, { across: [1, 0], at: 50 });
    expect(half.pieces.map(areaM2Of)).toEqual([2900]);
    expect(half.alongM).toBe(40);
    const low = shortOf(POND, { across: [0, 1], at: 50 });
    expect(low.pieces.map(({ rings }) => rings.length)).toEqual([2]);
  });

  it("leave two pieces where the ground does", () => {
    const cut = shortOf({ rings: [[[0, 0], [30, 0], [30, 20], [20, 20], [20, 5], [10, 5], [10, 20], [0, 20]]] }, { across: [0, -1], at: -10 });
    expect(cut.pieces.map(areaM2Of)).toEqual([100, 100]);
    expect(cut.alongM).toBe(20);
  });

  it("pass through corners, and touch tips and notches", () => {
    const notched: Boundary = { rings: [[[0, 0], [20, 0], [20, 20], [10, 10], [0, 20]]] };
    expect(shortOf(notched, { across: [0, 1], at: 10 }).pieces.map(areaM2Of)).toEqual([200]);
    expect(shortOf(notched, { across: [0, 1], at: 20 }).pieces.map(areaM2Of)).toEqual([300]);
    expect(shortOf(notched, { across: [0, -1], at: -10 }).pieces.map(areaM2Of)).toEqual([50, 50]);
  });
});

describe("sides", () => {
  it("face outward, whichever way the ring runs", () => {
    const facing = (ring: readonly Corner[]): number[] => sidesOf({ rings: [ring] }).map((side) => Math.round(side.facing)).sort((a, b) => a - b);
    expect(facing(box(0, 0, 100, 40))).toEqual([0, 90, 180, 270]);
    expect(facing([...box(0, 0, 100, 40)].reverse())).toEqual([0, 90, 180, 270]);
    expect(sidesOf(ELL).map((side) => side.lengthM).sort((a, b) => b - a)).toEqual([130, 120, 80, 80, 50, 40]);
  });

  it("are straight where a walked line only wavers", () => {
    const north = Array.from({ length: 20 }, (_, i): Corner => [100 - 5 * i, 40 + (i % 2)]);
    const sides = sidesOf({ rings: [[[0, 0], [50, -1], [100, 0], ...north, [0, 40]]] });
    expect(sides).toHaveLength(4);
    expect(Math.max(...sides.map((side) => side.lengthM))).toBeCloseTo(100, 0);
  });
});

describe("strips", () => {
  const areas = (ground: Boundary, facing: number, count: number): number[] =>
    equalStrips(ground, facing, count).map(({ pieces }) => pieces.reduce((sum, piece) => sum + areaM2Of(piece), 0));

  it("of a rectangle are rectangles, the one beside the side first", () => {
    const strips = equalStrips({ rings: [box(0, 0, 120, 60)] }, 0, 3);
    expect(strips.map(({ insideM }) => Math.round(insideM * 1e6) / 1e6)).toEqual([120, 240, 120]);
    strips.forEach(({ pieces }, i) => {
      expect(pieces).toHaveLength(1);
      const norths = pieces[0]!.rings[0]!.map(([, y]) => y);
      expect(Math.max(...norths)).toBeCloseTo(60 - 20 * i, 6);
      expect(Math.min(...norths)).toBeCloseTo(40 - 20 * i, 6);
    });
  });

  it("of a triangle are cut at the closed form's heights", () => {
    // Of a triangle cut level with its base, the top share s has s of the area where its height is the root of s.
    const triangle: Boundary = { rings: [[[0, 0], [90, 0], [30, 60]]] };
    const tops = equalStrips(triangle, 180, 4).map(({ pieces }) => Math.max(...pieces[0]!.rings[0]!.map(([, y]) => y)));
    tops.forEach((top, i) => expect(top).toBeCloseTo(60 * (1 - Math.sqrt(1 - (i + 1) / 4)), 6));
  });

  it("of an L follow its two widths", () => {
    // 120 x 50 below and 40 x 80 above: 9,200 m2. A third is 3,066.67 m2, so 25.56 m up, then 50 m + 133.33 m2 / 40 m.
    const tops = equalStrips(ELL, 180, 3).map(({ pieces }) => Math.max(...pieces[0]!.rings[0]!.map(([, y]) => y)));
    expect(tops[0]).toBeCloseTo(9200 / 3 / 120, 6);
    expect(tops[1]).toBeCloseTo(50 + (2 * 9200 / 3 - 6000) / 40, 6);
    expect(tops[2]).toBe(130);
  });

  it("go round a pond and stay equal", () => {
    for (const part of areas(POND, 90, 4)) expect(off(part, 1450)).toBeLessThan(1e-9);
  });

  it("tell of ground that they cut in two", () => {
    const horseshoe: Boundary = { rings: [[[0, 0], [60, 0], [60, 60], [40, 60], [40, 20], [20, 20], [20, 60], [0, 60]]] };
    expect(equalStrips(horseshoe, 180, 3).map(({ pieces }) => pieces.length)).toEqual([1, 1, 2]);
  });

  it("of any ground are equal, add up, lie inside and share nothing", () => {
    fc.assert(fc.property(star(0.3), facings, fc.integer({ min: 1, max: 7 }), (ground, facing, count) => {
      const whole = areaM2Of(ground);
      const strips = equalStrips(ground, facing, count);
      for (const { pieces } of strips) {
        expect(off(pieces.reduce((sum, piece) => sum + areaM2Of(piece), 0), whole / count)).toBeLessThan(1e-6);
        const inside = pieces.reduce((sum, piece) => sum + sharedM2(piece, ground), 0);
        expect(off(inside, whole / count)).toBeLessThan(1e-6);
      }
      const [first, second] = strips;
      if (second) for (const a of first!.pieces) for (const b of second.pieces) expect(sharedM2(a, b)).toBeLessThan(1e-6 * whole);
    }), RUNS);
  });

  it("and areas do not mind the ring's order or start", () => {
    fc.assert(fc.property(star(0.3), facings, fc.nat({ max: 13 }), (ground, facing, from) => {
      const other: Boundary = { rings: ground.rings.map((ring) => [...ring.slice(from % ring.length), ...ring.slice(0, from % ring.length)].reverse()) };
      expect(off(areaM2Of(other), areaM2Of(ground))).toBeLessThan(1e-12);
      const [one, two] = [equalStrips(ground, facing, 3), equalStrips(other, facing, 3)];
      one.forEach(({ pieces }, i) => expect(two[i]!.pieces.length).toBe(pieces.length));
    }), RUNS);
  });
});

describe("outside truth: ground that two pieces share", () => {
  it("is what a general library for clipping polygons finds", () => {
    fc.assert(fc.property(star(0.3), star(0.3), (one, other) => {
      expect(Math.abs(sharedM2(one, other) - sharedByLibrary(one, other))).toBeLessThan(1e-7 * areaM2Of(one));
    }), RUNS);
  });

  it("cuts as that library does", () => {
    fc.assert(fc.property(star(0.2), facings, (ground, facing) => {
      const angle = (facing * Math.PI) / 180;
      const middle = ground.rings[0]![0]!;
      const line = { across: [Math.sin(angle), Math.cos(angle)] as Corner, at: middle[0] * Math.sin(angle) + middle[1] * Math.cos(angle) - 5 };
      const [u, v]: [Corner, Corner] = [line.across, [-line.across[1], line.across[0]]];
      const at = (a: number, b: number): Corner => [a * u[0] + b * v[0], a * u[1] + b * v[1]];
      const plane: Boundary = { rings: [[at(line.at, -5000), at(line.at, 5000), at(line.at - 5000, 5000), at(line.at - 5000, -5000)]] };
      const mine = shortOf(ground, line).pieces.reduce((sum, piece) => sum + areaM2Of(piece), 0);
      expect(Math.abs(mine - sharedByLibrary(ground, plane))).toBeLessThan(1e-7 * areaM2Of(ground));
    }), RUNS);
  });
});
