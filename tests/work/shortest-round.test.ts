import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { longRound } from "../../src/work/long-round.js";
import { lengthOf, type Metres, type Stop } from "../../src/work/round.js";
import { shortestRound } from "../../src/work/shortest-round.js";

const POINT = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }));

/** Ground with the start at its first point; stops that may only wait for earlier ones, as work does. */
const GROUND = (most: number) =>
  fc.array(POINT, { minLength: 2, maxLength: 9 }).chain((points) => {
    const place = fc.nat({ max: points.length - 1 });
    const stop = fc.record({ comes: place, leaves: place, waits: fc.array(fc.nat({ max: most - 1 }), { maxLength: 2 }) });
    return fc.record({ points: fc.constant(points), drawn: fc.array(stop, { maxLength: most }), turn: fc.boolean() });
  }).map(({ points, drawn, turn }) => {
    const metres: Metres = (a, b) => Math.hypot(points[a]![0] - points[b]![0], points[a]![1] - points[b]![1]);
    const last = drawn.length - 1;
    const stops: Stop[] = drawn.map(({ comes, leaves, waits }, i) => ({ comes, leaves, after: waits.filter((one) => one < i) }));
    const turned = [...stops].reverse().map(({ comes, leaves, after }) => ({ comes, leaves, after: after.map((one) => last - one) }));
    return { metres, stops: turn ? turned : stops };
  });

/** Every order there is, one after the other. */
function ordersOf(left: readonly number[]): readonly (readonly number[])[] {
  return left.length === 0 ? [[]] : left.flatMap((one) => ordersOf(left.filter((other) => other !== one)).map((rest) => [one, ...rest]));
}

function keeps(stops: readonly Stop[], order: readonly number[]): boolean {
  return order.length === stops.length && new Set(order).size === stops.length && stops.every(({ after }, i) => after.every((one) => order.indexOf(one) < order.indexOf(i)));
}

describe("the shortest round", () => {
  test.prop([GROUND(7)], { numRuns: 300 })("is as long as the shortest of all orders, tried one by one, and keeps what comes first", ({ stops, metres }) => {
    const least = Math.min(...ordersOf(stops.map((_, i) => i)).filter((order) => keeps(stops, order)).map((order) => lengthOf(stops, order, metres, 0)));
    const round = shortestRound(stops, metres, 0);
    expect(keeps(stops, round.order)).toBe(true);
    expect(round.shortest).toBe(true);
    expect(round.metres).toBeCloseTo(least, 6);
  });

  test("keeps the order of the list where rounds are equally long", () => {
    const stops = [0, 1, 2].map(() => ({ comes: 1, leaves: 1, after: [] }));
    expect(shortestRound(stops, (a, b) => (a === b ? 0 : 50), 0)).toEqual({ order: [0, 1, 2], metres: 100, shortest: true });
  });

  test("goes on from where a stop is left, not from where it was come to", () => {
    const along: Metres = (a, b) => Math.abs(a - b) * 100;
    const stops = [{ comes: 5, leaves: 1, after: [] }, { comes: 5, leaves: 5, after: [] }];
    expect(shortestRound(stops, along, 0)).toEqual({ order: [1, 0], metres: 1000, shortest: true });
  });

  test("is refused where two stops wait for each other", () => {
    const ring = (n: number): Stop[] => Array.from({ length: n }, (_, i) => ({ comes: 1, leaves: 1, after: i === 0 ? [1] : i === 1 ? [0] : [] }));
    expect(() => shortestRound(ring(2), () => 1, 0)).toThrow("wait for each other");
    expect(() => shortestRound(ring(20), () => 1, 0)).toThrow("wait for each other");
  });

  test.prop([GROUND(12)], { numRuns: 60 })("is never longer than a long round over the same stops, which keeps what comes first", ({ stops, metres }) => {
    const order = longRound(stops, metres, 0);
    expect(keeps(stops, order)).toBe(true);
    expect(shortestRound(stops, metres, 0).metres).toBeLessThanOrEqual(lengthOf(stops, order, metres, 0) + 1e-6);
  });

  test("over many stops says that shorter ones are possible, and mends what nearest first does badly", () => {
    const along: Metres = (a, b) => Math.abs(a - b);
    const stops = [...Array.from({ length: 20 }, (_, i) => ({ comes: 2 * i + 1, leaves: 2 * i + 1, after: i === 0 ? [19] : [] }))];
    const round = shortestRound(stops, along, 0);
    expect(round.shortest).toBe(false);
    expect(keeps(stops, round.order)).toBe(true);
    expect(round.metres).toBe(78);
  });
});
