import type { Season } from "../../season/season.js";
import type { CellTerms } from "./cell-terms.js";
import { UNWORKED, WORKED } from "./layers.js";
import type { LongGrass } from "./long-grass.js";

/** Nobody came in the days before. */
export const NOBODY = -1;

/**
 * Cheapest use of the days after a grazing by birds and pigs alone. By days since: to have had somebody in and be free
 * that morning; and by mover to have begun before that morning and be there on it, on ground that nobody else had worked
 * or after others; and how each came about.
 */
export interface Between {
  readonly worked: Float64Array;
  /** Mover x 2 + what ground it came onto, of the one that left that morning; NOBODY where it was free the day before too. */
  readonly workedBy: Int16Array;
  readonly onFresh: readonly Float64Array[];
  readonly onWorked: readonly Float64Array[];
  /** Days since on which the one inside began. */
  readonly begunFresh: readonly Int16Array[];
  readonly begunWorked: readonly Int16Array[];
}

/** Room for days between grazings, used again for each: what is in it holds until the next are asked for. */
export function roomBetween(movers: number, span: number): Between {
  const days = (): Float64Array[] => Array.from({ length: movers }, () => new Float64Array(span + 1));
  const begun = (): Int16Array[] => Array.from({ length: movers }, () => new Int16Array(span + 1));
  return { worked: new Float64Array(span + 1), workedBy: new Int16Array(span + 1), onFresh: days(), onWorked: days(), begunFresh: begun(), begunWorked: begun() };
}

/**
 * Days from a morning t on, up to `span` of them, on ground of a layer. Birds begin on ground that nobody worked while the
 * grass grown from the residual is short enough, and stay a week longer at most; after the owner's next cut as they like.
 */
export function betweenGrazings(season: Season, terms: CellTerms, birds: LongGrass["birds"], nextCut: number, room: Between, t: number, span: number, layer: number): Between {
  const { movers } = terms;
  const { worked, workedBy } = room;
  const [inside, from] = [[room.onFresh, room.onWorked], [room.begunFresh, room.begunWorked]] as const;
  for (const table of [worked, ...room.onFresh, ...room.onWorked]) table.fill(Infinity);
  workedBy.fill(NOBODY);
  const short = birds ? birds.shortUntil[t] - t : span;
  const leave = birds ? short + birds.week : span;
  const mown = nextCut - t;
  const dayOf = (m: number, k: number, own: number, begin: number): void => {
    const table = inside[own][m];
    if (begin < table[k]) {
      table[k] = begin;
      from[own][m][k] = k;
    }
    const g = movers[m];
    if (table[k] === Infinity || (own === UNWORKED && season.groups[g].bird && k + 1 > leave && k + 1 <= mown)) return;
    const paid = table[k] + terms.day(g, t + k);
    if (terms.mayStay(g, t + k + 1) && paid < table[k + 1]) {
      table[k + 1] = paid;
      from[own][m][k + 1] = from[own][m][k];
    }
    if (terms.mayLeave(g, t + k + 1) && paid < worked[k + 1]) {
      worked[k + 1] = paid;
      workedBy[k + 1] = 2 * m + own;
    }
  };
  for (let k = 0; k < span; k++) {
    if (worked[k] < worked[k + 1]) {
      worked[k + 1] = worked[k];
      workedBy[k + 1] = NOBODY;
    }
    for (let m = 0; m < movers.length; m++) {
      const start = terms.start(movers[m], t + k, k);
      dayOf(m, k, UNWORKED, layer === UNWORKED && (!season.groups[movers[m]].bird || k <= short || k > mown) ? start : Infinity);
      dayOf(m, k, WORKED, (layer === WORKED ? Math.min(0, worked[k]) : worked[k]) + start);
    }
  }
  return room;
}
