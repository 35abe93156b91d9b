/** Something to do on a round: where one comes to, where one leaves from, as numbers of places, and the stops that come before it, as positions in the list. */
export interface Stop {
  readonly comes: number;
  readonly leaves: number;
  readonly after: readonly number[];
}

export interface Round {
  /** Positions of the stops in the order in which they are walked. */
  readonly order: readonly number[];
  /** From the start over all stops and back, m. */
  readonly metres: number;
  /** True where no order is shorter; a long round is only mended until no change shortens it. */
  readonly shortest: boolean;
}

/** Metres on foot from place to place. */
export type Metres = (from: number, to: number) => number;

/** Rounds that differ by less are equally long, m. */
export const SAME_M = 1e-6;

/** Length of a round in an order, m. */
export function lengthOf(stops: readonly Stop[], order: readonly number[], metres: Metres, start: number): number {
  let at = start;
  let sum = 0;
  for (const i of order) {
    const { comes, leaves } = stops[i]!;
    sum += metres(at, comes) + metres(comes, leaves);
    at = leaves;
  }
  return sum + metres(at, start);
}
