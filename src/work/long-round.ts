import { lengthOf, SAME_M, type Metres, type Stop } from "./round.js";

/** Stretches of up to so many stops are put elsewhere. */
const STRETCH = 4;

/**
 * A short round over more stops than can be weighed in every order: always on to the nearest stop that may come next; then
 * stretches are put where they shorten the round, either way round, until none does.
 *
 * @throws where stops wait for each other in a ring
 */
export function longRound(stops: readonly Stop[], metres: Metres, start: number): readonly number[] {
  let order = nearestFirst(stops, metres, start);
  let length = lengthOf(stops, order, metres, start);
  for (;;) {
    const better = changesOf(order).find((changed) => keeps(stops, changed) && lengthOf(stops, changed, metres, start) < length - SAME_M);
    if (!better) return order;
    order = better;
    length = lengthOf(stops, order, metres, start);
  }
}

function nearestFirst(stops: readonly Stop[], metres: Metres, start: number): readonly number[] {
  const order: number[] = [];
  let at = start;
  while (order.length < stops.length) {
    const free = stops.flatMap(({ after }, i) => (!order.includes(i) && after.every((one) => order.includes(one)) ? [i] : []));
    if (free.length === 0) throw new Error("stops of a round wait for each other");
    const nearest = free.reduce((best, i) => (metres(at, stops[i]!.comes) < metres(at, stops[best]!.comes) - SAME_M ? i : best));
    order.push(nearest);
    at = stops[nearest]!.leaves;
  }
  return order;
}

/** The order with one stretch taken out and put in elsewhere, as it was or turned round. */
function changesOf(order: readonly number[]): readonly (readonly number[])[] {
  return order.flatMap((_, first) =>
    Array.from({ length: Math.min(STRETCH, order.length - first) }, (__, i) => i + 1).flatMap((long) => {
      const stretch = order.slice(first, first + long);
      const others = [...order.slice(0, first), ...order.slice(first + long)];
      return Array.from({ length: others.length + 1 }, (__, at) => [stretch, [...stretch].reverse()].map((put) => [...others.slice(0, at), ...put, ...others.slice(at)])).flat();
    }));
}

function keeps(stops: readonly Stop[], order: readonly number[]): boolean {
  const at = new Map(order.map((stop, i) => [stop, i]));
  return stops.every(({ after }, i) => after.every((one) => at.get(one)! < at.get(i)!));
}
