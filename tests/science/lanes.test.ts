import { describe, expect, it } from "vitest";
import fc from "fast-check";
import * as polyclip from "polyclip-ts";
import { outlineOfCorners, type Boundary, type Corner } from "../../src/science/boundary.js";
import { groundOf, layLanes, placesOf, type LanePlan } from "../../src/science/lanes.js";
import { grounds, lShape, rectangle } from "./ground-shapes.js";

/** Positions are cut a hair smaller before they are judged, so that sides that touch do not depend on the last digit. */
const HAIR_M = 1e-6;
/** Area that rounding may lose, m2. */
const HAIR_M2 = 1e-8;

type Polygon = [number, number][][];

function cornersOf(plan: LanePlan): readonly (readonly Corner[])[] {
  const { alongM, acrossM } = plan;
  return placesOf(plan).map(([x, y]) => onGround(plan, x, y, alongM, acrossM));
}

function onGround(plan: LanePlan, x: number, y: number, alongM: number, acrossM: number): readonly Corner[] {
  return rectangle(alongM - 2 * HAIR_M, acrossM - 2 * HAIR_M, x + HAIR_M, y + HAIR_M).map(([px, py]) => groundOf(plan, px, py));
}

function polygon(rings: readonly (readonly Corner[])[]): Polygon {
  return rings.map((ring) => ring.map(([x, y]): [number, number] => [x, y]));
}

/** Area of ground, holes taken out, m2. */
function areaOf(rings: readonly (readonly Corner[])[]): number {
  const area = (ring: readonly Corner[]): number => {
    const outline = outlineOfCorners(ring);
    return outline.ok ? outline.areaM2 : 0;
  };
  return rings.reduce((sum, ring, i) => (i === 0 ? area(ring) : sum - area(ring)), 0);
}

function sharedM2(a: Polygon, b: Polygon): number {
  return polyclip.intersection(a, b).reduce((sum, part) => sum + areaOf(part), 0);
}

function middle(ring: readonly Corner[]): Corner {
  return [ring.reduce((sum, [x]) => sum + x, 0) / ring.length, ring.reduce((sum, [, y]) => sum + y, 0) / ring.length];
}

/** Positions of which a part lies outside, and pairs that share ground, judged by polyclip-ts. */
function faultsOf(boundary: Boundary, plan: LanePlan): readonly string[] {
  const ground = polygon(boundary.rings);
  const places = cornersOf(plan);
  const diagonal = Math.hypot(plan.alongM, plan.acrossM);
  return places.flatMap((place, i) => {
    const outside = areaOf([place]) - sharedM2(polygon([place]), ground);
    const [x, y] = middle(place);
    const over = places.flatMap((other, j) => {
      const [ox, oy] = middle(other);
      return j > i && Math.hypot(ox - x, oy - y) < diagonal && sharedM2(polygon([place]), polygon([other])) > HAIR_M2 ? [`${i} lies over ${j}`] : [];
    });
    return [...(outside > HAIR_M2 ? [`${i} is ${outside} m2 outside`] : []), ...over];
  });
}

const sides = fc.tuple(fc.double({ min: 2, max: 6, noNaN: true }), fc.double({ min: 2, max: 6, noNaN: true }));

describe("outside truth: positions in ground of any form, cut with polyclip-ts", () => {
  it("none lies over another, none crosses the boundary or a hole, and there is never more than the area holds", () => {
    fc.assert(fc.property(grounds, sides, (boundary, size) => {
      const plan = layLanes(boundary, size);
      expect(plan.positions).toBe(placesOf(plan).length);
      expect(plan.positions * size[0] * size[1]).toBeLessThanOrEqual(areaOf(boundary.rings) + 1e-4);
      expect(faultsOf(boundary, plan)).toEqual([]);
    }), { numRuns: 120, seed: 11, endOnFailure: true });
  });

  it("no single place for one more stays free at the end of a lane", () => {
    fc.assert(fc.property(grounds, sides, (boundary, size) => {
      const plan = layLanes(boundary, size);
      const ground = polygon(boundary.rings);
      const taken = new Set(placesOf(plan).map(([x, y]) => `${x.toFixed(4)} ${y.toFixed(4)}`));
      for (const { x, y, count } of plan.lanes) {
        const next = x + count * plan.alongM;
        const ahead = onGround(plan, next, y, plan.alongM, plan.acrossM);
        const free = sharedM2(polygon([ahead]), ground) > areaOf([ahead]) - HAIR_M2;
        expect(free && !taken.has(`${next.toFixed(4)} ${y.toFixed(4)}`)).toBe(false);
      }
    }), { numRuns: 60, seed: 12, endOnFailure: true });
  });
});

describe("closed forms", () => {
  it("a rectangle holds whole pens times whole lanes, the better way round", () => {
    const whole = (ground: number, pen: number): number => Math.floor(ground / pen + 1e-9);
    const centimetres = (least: number, most: number) => fc.integer({ min: least * 100, max: most * 100 }).map((cm) => cm / 100);
    fc.assert(fc.property(centimetres(5, 60), centimetres(5, 60), centimetres(1, 6), centimetres(1, 6), (width, length, a, b) => {
      const most = Math.max(whole(width, a) * whole(length, b), whole(width, b) * whole(length, a));
      expect(layLanes({ rings: [rectangle(width, length)] }, [a, b]).positions).toBe(most);
    }), { numRuns: 300, seed: 14 });
    // 20 x 9 m, pens of 3 x 4 m: 5 x 3 with the long side ahead, 6 x 2 with the short side ahead.
    const plan = layLanes({ rings: [rectangle(20, 9)] }, [3, 4]);
    expect([plan.positions, plan.lanes.length, plan.alongM]).toEqual([15, 3, 4]);
  });

  it("0.28 ha of 40 x 70 m holds 25 lanes of 7 pens of 10 x 1.6 m without a rest", () => {
    const plan = layLanes({ rings: [rectangle(40, 70)] }, [10, 1.6]);
    expect(plan.positions).toBe(175);
  });

  it("an L is its two arms: 30 x 30 m less 15 x 15 m holds 27 squares of 5 m", () => {
    const plan = layLanes({ rings: [lShape(30, 30, 15, 15)] }, [5, 5]);
    expect([plan.positions, plan.positions * 25]).toEqual([27, areaOf([lShape(30, 30, 15, 15)])]);
  });

  it("a hole of 6 x 6 m in the middle of 18 x 18 m leaves 32 squares of 3 m", () => {
    const plan = layLanes({ rings: [rectangle(18, 18), rectangle(6, 6, 6, 6)] }, [3, 3]);
    expect(plan.positions).toBe(32);
  });

  it("lanes need not be in step: 3 m beside 2 m of a stair holds one lane flush with each tread", () => {
    // lower part 10 x 3.5 m, upper part 30 x 3 m: lanes from below alone would leave the upper one half out
    const stair: readonly Corner[] = [[0, 0], [10, 0], [10, 3.5], [30, 3.5], [30, 6.5], [0, 6.5]];
    const plan = layLanes({ rings: [stair] }, [3, 5]);
    expect([plan.positions, plan.lanes.map(({ count }) => count)]).toEqual([8, [2, 6]]);
  });

  it("finds nothing where nothing fits", () => {
    expect(layLanes({ rings: [rectangle(3, 3)] }, [2, 4])).toMatchObject({ positions: 0, lanes: [] });
  });
});

describe("the walk", () => {
  it("goes to and fro: every lane of a rectangle begins beside the end of the one before", () => {
    const plan = layLanes({ rings: [rectangle(20, 12)] }, [4, 3]);
    expect(plan.lanes.map(({ forward, by }) => [forward, by])).toEqual([[true, "start"], [false, "shift"], [true, "shift"], [false, "shift"]]);
    const places = placesOf(plan);
    for (let i = 1; i < places.length; i++) {
      const [[x, y], [nextX, nextY]] = [places[i - 1]!, places[i]!];
      expect([Math.abs(nextX - x), Math.abs(nextY - y)]).toEqual(y === nextY ? [4, 0] : [0, 3]);
    }
  });

  it("walks one side of a pond to its end before the other: brought round once, and again where the sides meet", () => {
    const plan = layLanes({ rings: [rectangle(18, 18), rectangle(6, 6, 6, 6)] }, [3, 3]);
    expect(plan.lanes.filter(({ by }) => by === "brought").length).toBe(1);
    expect(plan.lanes.length).toBe(8);
  });

  it("keeps every position once, whatever the order", () => {
    fc.assert(fc.property(grounds, sides, (boundary, size) => {
      const places = placesOf(layLanes(boundary, size)).map(([x, y]) => `${x} ${y}`);
      expect(new Set(places).size).toBe(places.length);
    }), { numRuns: 100, seed: 13 });
  });

  it("is the same again, and the same for ground written from another corner", () => {
    const ring = lShape(31, 47, 12, 20);
    const other = [...ring.slice(3), ...ring.slice(0, 3)];
    const counts = [ring, ring, other].map((one) => layLanes({ rings: [one] }, [2.4, 3]).positions);
    expect(new Set(counts).size).toBe(1);
  });
});
