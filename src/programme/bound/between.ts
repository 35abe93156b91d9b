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

/** Days since a grazing until which birds may begin, and may still be there; by the grass that grows from the residual. */
function birdDays(season: Season, birds: LongGrass["birds"], cuts: Season["cells"][number]["ownerCuts"], t: number): { begin: (k: number) => boolean; stay: (k: number) => boolean } {
  if (!birds) return { begin: () => true, stay: () => true };
  const short = birds.shortUntil[t];
  const mown = cuts.find((cut) => cut.day >= t)?.day ?? season.days;
  return { begin: (k) => t + k <= short || t + k > mown, stay: (k) => t + k <= short + birds.week || t + k > mown };
}

/** Tables of the movers inside, and of when they began, each for ground not worked and worked. */
function roomFor(movers: number, span: number): [[Float64Array[], Float64Array[]], [Int16Array[], Int16Array[]]] {
  const days = (): Float64Array[] => Array.from({ length: movers }, () => new Float64Array(span + 1).fill(Infinity));
  const begun = (): Int16Array[] => Array.from({ length: movers }, () => new Int16Array(span + 1));
  return [[days(), days()], [begun(), begun()]];
}

/** Days from a morning t on, up to `span` of them, on ground of a layer. */
export function betweenGrazings(
  season: Season, terms: CellTerms, birds: LongGrass["birds"], cuts: Season["cells"][number]["ownerCuts"], t: number, span: number, layer: number,
): Between {
  const { movers } = terms;
  const worked = new Float64Array(span + 1).fill(Infinity);
  const workedBy = new Int16Array(span + 1).fill(NOBODY);
  const [inside, from] = roomFor(movers.length, span);
  const allowed = birdDays(season, birds, cuts, t);
  const dayOf = (m: number, k: number, own: number, begin: number): void => {
    const table = inside[own][m];
    if (begin < table[k]) {
      table[k] = begin;
      from[own][m][k] = k;
    }
    const g = movers[m];
    if (table[k] === Infinity || (own === UNWORKED && season.groups[g].bird && !allowed.stay(k + 1))) return;
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
      dayOf(m, k, UNWORKED, layer === UNWORKED && (!season.groups[movers[m]].bird || allowed.begin(k)) ? start : Infinity);
      dayOf(m, k, WORKED, (layer === WORKED ? Math.min(0, worked[k]) : worked[k]) + start);
    }
  }
  return { worked, workedBy, onFresh: inside[UNWORKED], onWorked: inside[WORKED], begunFresh: from[UNWORKED], begunWorked: from[WORKED] };
}
