import type { Season } from "../../season/season.js";
import type { CellPrices, CellTerms } from "./cell-terms.js";
import type { Levels } from "./levels.js";

/** What a cheapest season does next, kept with its value. */
export const WAIT = -1;
export const GRAZE = -2;

/** Cheapest use of the days between two grazings, or before ready ground, by birds and pigs alone. */
export interface Between {
  /** By day since: to be free that morning; by mover: to have begun before that morning and be there on it. */
  readonly free: Float64Array;
  readonly inside: readonly Float64Array[];
  /** How each came about: WAIT, or the mover that left; for inside the day since on which it began. */
  readonly freeBy: Int16Array;
  readonly begun: readonly Int16Array[];
}

/**
 * The cheapest season of one cell at given prices, over a state that forgets only what makes a season dearer: strips
 * taken from the open ground, rounding of cover (always up), and charges that are never negative. So its value is
 * never above that of any exact season, whatever the prices.
 *
 * Values are by morning and level: `ready` ground rested long enough, `grazed` ground whose grazing has just ended,
 * `entered` a grazing stay beginning, `inside` birds or pigs there for the day; `first` is the untouched cell.
 */
export class CellBound {
  readonly ready: Float64Array;
  readonly readyBy: Int16Array;
  readonly grazed: Float64Array;
  /** Day x 64 + mover + 2: grazing on that day (1), ready ground (0), or mover inside. */
  readonly grazedBy: Int32Array;
  readonly entered: Float64Array;
  /** Group x 1024 + days. */
  readonly enteredBy: Int32Array;
  readonly inside: readonly Float64Array[];
  readonly insideLeaves: readonly Uint8Array[];
  readonly first: Float64Array;
  readonly firstBy: Int16Array;
  readonly firstStay: Int32Array;
  readonly firstInside: readonly Float64Array[];

  constructor(readonly season: Season, readonly cell: number, readonly levels: Levels, readonly terms: CellTerms) {
    const days = season.days + 1;
    const size = days * levels.count;
    const { movers } = terms;
    this.ready = new Float64Array(size);
    this.readyBy = new Int16Array(size);
    this.grazed = new Float64Array(size);
    this.grazedBy = new Int32Array(size);
    this.entered = new Float64Array(size);
    this.enteredBy = new Int32Array(size);
    this.inside = movers.map(() => new Float64Array(size));
    this.insideLeaves = movers.map(() => new Uint8Array(size));
    this.first = new Float64Array(days);
    this.firstBy = new Int16Array(days);
    this.firstStay = new Int32Array(days);
    this.firstInside = movers.map(() => new Float64Array(days));
  }

  /** Least money of the cell's season at these prices. */
  solve(prices: CellPrices): number {
    this.terms.price(prices);
    this.backward();
    return this.untouched();
  }

  private backward(): void {
    const { season, ready, readyBy, grazed, entered, inside, levels, terms } = this;
    const { count } = levels;
    const D = season.days;
    ready.fill(0, D * count);
    grazed.fill(0, D * count);
    entered.fill(Infinity, D * count);
    for (const table of inside) table.fill(Infinity, D * count);
    for (let t = D - 1; t >= 0; t--) {
      this.enter(t);
      const base = t * count;
      const low = this.mownBetween(t, t + 1);
      const reach = levels.reach[t];
      for (let j = 0; j < reach; j++) {
        const wait = ready[base + count + (j < low ? low : j)];
        const graze = entered[base + j];
        ready[base + j] = graze < wait ? graze : wait;
        readyBy[base + j] = graze < wait ? GRAZE : WAIT;
      }
      terms.movers.forEach((g, m) => this.moverDay(g, m, t));
      this.afterGrazing(t);
    }
  }

  private moverDay(g: number, m: number, t: number): void {
    const { ready, readyBy, terms } = this;
    const { count } = this.levels;
    const base = t * count;
    const table = this.inside[m];
    const leaving = this.insideLeaves[m];
    const day = terms.day(g, t);
    const stays = terms.mayStay(g, t + 1);
    const leaves = terms.mayLeave(g, t + 1);
    const start = terms.start(g, t, null);
    const reach = this.levels.reach[t];
    for (let j = 0; j < reach; j++) {
      const stay = stays ? table[base + count + j] : Infinity;
      const leave = leaves ? ready[base + count + j] : Infinity;
      leaving[base + j] = leave <= stay ? 1 : 0;
      table[base + j] = day + (leave <= stay ? leave : stay);
      if (start + table[base + j] < ready[base + j]) {
        ready[base + j] = start + table[base + j];
        readyBy[base + j] = m;
      }
    }
  }

  /** Cheapest grazing stay that begins on day t, by level. */
  private enter(t: number): void {
    const { levels, entered, enteredBy, grazed, terms } = this;
    const { count, most } = levels;
    const base = t * count;
    entered.fill(Infinity, base, base + count);
    for (const g of terms.grazers) {
      const after = levels.after.get(g);
      if (!after) continue;
      for (let n = 1; n <= most && t + n <= this.season.days; n++) {
        const money = terms.mayLeave(g, t + n) ? terms.stay(g, t, n) : Infinity;
        if (money === Infinity) continue;
        const end = (t + n) * count;
        const code = g * 1024 + n;
        const reach = levels.reach[t];
        for (let j = 0; j < reach; j++) {
          const next = after[(base + j) * most + n - 1];
          if (next < 0) break;
          const value = money + grazed[end + next];
          if (value < entered[base + j]) {
            entered[base + j] = value;
            enteredBy[base + j] = code;
          }
        }
      }
    }
  }

  /** Value of the morning t on which grazing has just ended: what fills the rest, then grazing or ready ground. */
  private afterGrazing(t: number): void {
    const { season, levels, grazed, terms } = this;
    const { count } = levels;
    const base = t * count;
    const end = Math.min(season.days, t + terms.recovered);
    const between = this.between(t, end);
    grazed.fill(Infinity, base, base + count);
    for (let day = t + terms.floor; day < end; day++) this.join(t, this.entered, day, between.free[day - t] + terms.restMoney(t, day), 1);
    this.join(t, this.ready, end, between.free[end - t], 0);
    if (end < season.days) terms.movers.forEach((_, m) => this.join(t, this.inside[m], end, between.inside[m][end - t], m + 2));
  }

  private join(t: number, table: Float64Array, day: number, money: number, by: number): void {
    if (money === Infinity) return;
    const { grazed, grazedBy } = this;
    const { count } = this.levels;
    const base = t * count;
    const from = day * count;
    const low = this.mownBetween(t, day);
    const code = day * 64 + by;
    const reach = this.levels.reach[t];
    for (let j = 0; j < reach; j++) {
      const value = money + table[from + (j < low ? low : j)];
      if (value < grazed[base + j]) {
        grazed[base + j] = value;
        grazedBy[base + j] = code;
      }
    }
  }

  between(t: number, end: number): Between {
    const { terms } = this;
    const span = end - t;
    const free = new Float64Array(span + 1).fill(Infinity);
    const freeBy = new Int16Array(span + 1).fill(WAIT);
    const inside = terms.movers.map(() => new Float64Array(span + 1).fill(Infinity));
    const begun = terms.movers.map(() => new Int16Array(span + 1));
    free[0] = 0;
    for (let k = 0; k < span; k++) {
      if (free[k] < free[k + 1]) {
        free[k + 1] = free[k];
        freeBy[k + 1] = WAIT;
      }
      for (let m = 0; m < terms.movers.length; m++) {
        const g = terms.movers[m];
        const begin = free[k] + terms.start(g, t + k, k);
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
        if (terms.mayLeave(g, t + k + 1) && paid < free[k + 1]) {
          free[k + 1] = paid;
          freeBy[k + 1] = m;
        }
      }
    }
    return { free, inside, freeBy, begun };
  }

  /** Highest level left by a cut whose morning after lies in (from, to]; 0 without one. */
  mownBetween(from: number, to: number): number {
    let level = 0;
    for (const mown of this.levels.mown) if (mown.morning > from && mown.morning <= to) level = Math.max(level, mown.level);
    return level;
  }

  /** Value of the untouched cell on the season's first morning. */
  private untouched(): number {
    const { season, first, firstBy, firstInside, terms } = this;
    first[season.days] = 0;
    for (const table of firstInside) table[season.days] = Infinity;
    for (let t = season.days - 1; t >= 0; t--) {
      const graze = this.firstGrazing(t);
      first[t] = Math.min(first[t + 1], graze);
      firstBy[t] = graze < first[t + 1] ? GRAZE : WAIT;
      terms.movers.forEach((g, m) => {
        const table = firstInside[m];
        table[t] = terms.day(g, t) + Math.min(terms.mayStay(g, t + 1) ? table[t + 1] : Infinity, terms.mayLeave(g, t + 1) ? first[t + 1] : Infinity);
        const value = terms.start(g, t, null) + table[t];
        if (value < first[t]) {
          first[t] = value;
          firstBy[t] = m;
        }
      });
    }
    return first[0];
  }

  private firstGrazing(t: number): number {
    const { season, levels, terms } = this;
    const { most, count } = levels;
    const past = season.cells[this.cell].lastGrazed;
    if (past !== null && t - past - 1 < terms.floor) return Infinity;
    const restMoney = past === null ? 0 : terms.restMoney(past + 1, t);
    let best = Infinity;
    for (const g of terms.grazers) {
      const table = levels.afterFirst.get(g);
      for (let n = 1; table && n <= most && t + n <= season.days; n++) {
        const level = table.level[t * most + n - 1];
        if (level < 0) break;
        if (!terms.mayLeave(g, t + n)) continue;
        const value = terms.stay(g, t, n) + table.money[t] + restMoney + this.grazed[(t + n) * count + level];
        if (value < best) {
          best = value;
          this.firstStay[t] = g * 1024 + n;
        }
      }
    }
    return best;
  }
}
