import type { CellTerms } from "./cell-terms.js";

/** Nobody came in the days before. */
export const NOBODY = -1;

/**
 * Cheapest use of the days after a grazing by birds and pigs alone. By days since: to have had somebody in and be free
 * that morning, and by mover to have begun before that morning and be there on it; and how each came about.
 */
export interface Between {
  readonly worked: Float64Array;
  /** The mover that left that morning, or NOBODY where it was free the day before too. */
  readonly workedBy: Int16Array;
  readonly inside: readonly Float64Array[];
  /** Days since on which the one inside began. */
  readonly begun: readonly Int16Array[];
}

/** Days from a morning t on, up to `span` of them. `onto` is what it costs to go onto ground not worked before. */
export function betweenGrazings(terms: CellTerms, t: number, span: number, onto: (group: number, since: number) => number): Between {
  const { movers } = terms;
  const worked = new Float64Array(span + 1).fill(Infinity);
  const workedBy = new Int16Array(span + 1).fill(NOBODY);
  const inside = movers.map(() => new Float64Array(span + 1).fill(Infinity));
  const begun = movers.map(() => new Int16Array(span + 1));
  for (let k = 0; k < span; k++) {
    if (worked[k] < worked[k + 1]) {
      worked[k + 1] = worked[k];
      workedBy[k + 1] = NOBODY;
    }
    for (let m = 0; m < movers.length; m++) {
      const g = movers[m];
      const before = Math.min(onto(g, k), worked[k]);
      const begin = before + terms.start(g, t + k, k);
      if (begin < inside[m][k]) {
        inside[m][k] = begin;
        begun[m][k] = k;
      }
      if (inside[m][k] === Infinity) continue;
      const paid = inside[m][k] + terms.day(g, t + k);
      if (terms.mayStay(g, t + k + 1) && paid < inside[m][k + 1]) {
        inside[m][k + 1] = paid;
        begun[m][k + 1] = begun[m][k];
      }
      if (terms.mayLeave(g, t + k + 1) && paid < worked[k + 1]) {
        worked[k + 1] = paid;
        workedBy[k + 1] = m;
      }
    }
  }
  return { worked, workedBy, inside, begun };
}
