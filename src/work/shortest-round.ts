import { longRound } from "./long-round.js";
import { lengthOf, SAME_M, type Metres, type Round, type Stop } from "./round.js";

/** Up to so many stops all orders are weighed. */
const EXACT = 14;

/**
 * The shortest round from the start over all stops and back. Of rounds equally long, the one that keeps most of the list's own order from its beginning.
 *
 * Source: dynamic programming over sets of stops (Held and Karp, J. SIAM 10, 1962, 196 to 210), with stops that must come before others.
 * @throws where stops wait for each other in a ring
 */
export function shortestRound(stops: readonly Stop[], metres: Metres, start: number): Round {
  const before = stops.map(({ after }) => after.reduce((set, i) => set | (1 << i), 0));
  const order = stops.length <= EXACT ? exactOrder(stops, before, metres, start) : longRound(stops, metres, start);
  return { order, metres: lengthOf(stops, order, metres, start), shortest: stops.length <= EXACT };
}

function exactOrder(stops: readonly Stop[], before: readonly number[], metres: Metres, start: number): readonly number[] {
  const n = stops.length;
  const all = (1 << n) - 1;
  const rest = restsOf(stops, before, metres, start);
  const order: number[] = [];
  let [done, at] = [0, start];
  while (done !== all) {
    const ways = stops.map(({ comes }, i) => (mayCome(done, before, i) ? metres(at, comes) + rest[(done | (1 << i)) * n + i]! : Infinity));
    const least = Math.min(...ways);
    if (least === Infinity) throw new Error("stops of a round wait for each other");
    const next = ways.findIndex((way) => way <= least + SAME_M);
    order.push(next);
    done |= 1 << next;
    at = stops[next]!.leaves;
  }
  return order;
}

/** Shortest way from the last stop of each set of stops done, over all others and back to the start; by set and last stop. */
function restsOf(stops: readonly Stop[], before: readonly number[], metres: Metres, start: number): Float64Array {
  const n = stops.length;
  const all = (1 << n) - 1;
  const between = stops.map(({ leaves }) => stops.map(({ comes }) => metres(leaves, comes)));
  const rest = new Float64Array((all + 1) * n).fill(Infinity);
  stops.forEach(({ leaves }, i) => (rest[all * n + i] = metres(leaves, start)));
  for (let done = all - 1; done > 0; done -= 1) {
    for (let last = 0; last < n; last += 1) {
      if ((done & (1 << last)) === 0) continue;
      for (let next = 0; next < n; next += 1) {
        if (!mayCome(done, before, next)) continue;
        const way = between[last]![next]! + rest[(done | (1 << next)) * n + next]!;
        if (way < rest[done * n + last]!) rest[done * n + last] = way;
      }
    }
  }
  return rest;
}

function mayCome(done: number, before: readonly number[], i: number): boolean {
  return (done & (1 << i)) === 0 && (before[i]! & ~done) === 0;
}
