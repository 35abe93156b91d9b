import type { Season } from "../../season/season.js";
import { betweenGrazings, type Between } from "./between.js";
import type { CellPrices, CellTerms } from "./cell-terms.js";
import { AGAIN, AGAIN_WORKED, GRAZE, INSIDE, READY, READY_WORKED, UNWORKED, WAIT, WORKED, type Layer } from "./layers.js";
import type { Levels } from "./levels.js";
import type { ShortGrass } from "./short-grass.js";
import { untouchedValue } from "./untouched-cell.js";

/**
 * The cheapest season of one cell at given prices, over a state that forgets only what makes a season dearer: strips
 * taken from the open ground, rounding of cover (always up), and charges that are never negative. So its value is
 * never above that of any exact season, whatever the prices. `mowing` is the least that a cut costs which makes long
 * grass short for birds.
 */
export class CellBound {
  readonly layers: readonly [Layer, Layer];
  /** Birds or pigs in the cell for the day, by mover; they have worked it. */
  readonly inside: readonly Float64Array[];
  readonly insideLeaves: readonly Uint8Array[];
  /** The cell that nobody has grazed yet, by layer. */
  readonly first: readonly [Float64Array, Float64Array];
  readonly firstBy: readonly [Int16Array, Int16Array];
  readonly firstStay: Int32Array;
  readonly firstInside: readonly Float64Array[];
  readonly firstLeaves: readonly Uint8Array[];
  constructor(readonly season: Season, readonly cell: number, readonly levels: Levels, readonly terms: CellTerms, readonly short: ShortGrass | null, readonly mowing: number) {
    const days = season.days + 1;
    const size = days * levels.count;
    const layer = (): Layer => ({
      ready: new Float64Array(size), readyBy: new Int16Array(size), grazed: new Float64Array(size), grazedBy: new Int32Array(size),
      entered: new Float64Array(size), enteredBy: new Int32Array(size),
    });
    this.layers = [layer(), layer()];
    this.inside = terms.movers.map(() => new Float64Array(size));
    this.insideLeaves = terms.movers.map(() => new Uint8Array(size));
    this.first = [new Float64Array(days), new Float64Array(days)];
    this.firstBy = [new Int16Array(days), new Int16Array(days)];
    this.firstStay = new Int32Array(days * 2);
    this.firstInside = terms.movers.map(() => new Float64Array(days));
    this.firstLeaves = terms.movers.map(() => new Uint8Array(days));
  }

  /** Least money of the cell's season at these prices. */
  solve(prices: CellPrices): number {
    this.terms.price(prices);
    this.backward();
    return untouchedValue(this);
  }

  /** Days that birds and pigs could fill after a grazing that ended before morning t. */
  between(t: number, end: number, layer: number): Between {
    return betweenGrazings(this.terms, t, end - t, (g, since) => this.onto(layer, g, t, since));
  }

  /** Money of going onto ground of a layer so many days after a grazing: long grass must be mown for birds first. */
  onto(layer: number, g: number, t: number, since: number): number {
    return layer === WORKED || !this.short || !this.season.groups[g].bird || this.short.grazed(t, since) ? 0 : this.mowing;
  }

  private backward(): void {
    const { season, inside, levels, terms, layers } = this;
    const { count } = levels;
    const D = season.days;
    for (const layer of layers) {
      layer.ready.fill(0, D * count);
      layer.grazed.fill(0, D * count);
      layer.entered.fill(Infinity, D * count);
    }
    for (const table of inside) table.fill(Infinity, D * count);
    for (let t = D - 1; t >= 0; t--) {
      for (const layer of layers) {
        this.enter(layer, t);
        this.wait(layer, t);
      }
      terms.movers.forEach((g, m) => this.moverDay(g, m, t));
      this.afterGrazing(UNWORKED, t);
      this.afterGrazing(WORKED, t);
    }
  }

  private wait({ ready, readyBy, entered }: Layer, t: number): void {
    const { count, reach } = this.levels;
    const base = t * count;
    const low = this.mownBetween(t, t + 1);
    for (let j = 0; j < reach[t]; j++) {
      const wait = ready[base + count + (j < low ? low : j)];
      const graze = entered[base + j];
      ready[base + j] = graze < wait ? graze : wait;
      readyBy[base + j] = graze < wait ? GRAZE : WAIT;
    }
  }

  private moverDay(g: number, m: number, t: number): void {
    const { terms, short, season } = this;
    const [unworked, worked] = this.layers;
    const { count } = this.levels;
    const base = t * count;
    const table = this.inside[m];
    const leaving = this.insideLeaves[m];
    const day = terms.day(g, t);
    const stays = terms.mayStay(g, t + 1);
    const leaves = terms.mayLeave(g, t + 1);
    const start = terms.start(g, t, null);
    const asked = short !== null && season.groups[g].bird;
    const reach = this.levels.reach[t];
    for (let j = 0; j < reach; j++) {
      const stay = stays ? table[base + count + j] : Infinity;
      const leave = leaves ? worked.ready[base + count + j] : Infinity;
      leaving[base + j] = leave <= stay ? 1 : 0;
      const value = day + (leave <= stay ? leave : stay);
      table[base + j] = value;
      if (start + value < worked.ready[base + j]) {
        worked.ready[base + j] = start + value;
        worked.readyBy[base + j] = m;
      }
      const onto = start + value + (asked && short.ready[base + j] === 0 ? this.mowing : 0);
      if (onto < unworked.ready[base + j]) {
        unworked.ready[base + j] = onto;
        unworked.readyBy[base + j] = m;
      }
    }
  }

  /** Cheapest grazing stay that begins on day t, by level. */
  private enter({ entered, enteredBy, grazed }: Layer, t: number): void {
    const { levels, terms } = this;
    const { count, most } = levels;
    const base = t * count;
    entered.fill(Infinity, base, base + count);
    for (const [g, after] of levels.after) {
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
  private afterGrazing(own: number, t: number): void {
    const { season, levels, terms, layers } = this;
    const { count } = levels;
    const end = Math.min(season.days, t + terms.recovered);
    const { worked, inside } = this.between(t, end, own);
    const layer = layers[own];
    layer.grazed.fill(Infinity, t * count, (t + 1) * count);
    for (let day = t + terms.floor; day < end; day++) {
      const rest = terms.restMoney(t, day);
      // On worked ground both ways lead to the same values: the cheaper one is enough.
      if (own === UNWORKED || worked[day - t] >= 0) this.join(layer, t, layer.entered, day, rest, AGAIN);
      if (own === UNWORKED || worked[day - t] < 0) this.join(layer, t, layers[WORKED].entered, day, worked[day - t] + rest, AGAIN_WORKED);
    }
    this.join(layer, t, layer.ready, end, 0, READY);
    this.join(layer, t, layers[WORKED].ready, end, worked[end - t], READY_WORKED);
    if (end < season.days) terms.movers.forEach((_, m) => this.join(layer, t, this.inside[m], end, inside[m][end - t], INSIDE + m));
  }

  private join({ grazed, grazedBy }: Layer, t: number, table: Float64Array, day: number, money: number, by: number): void {
    if (money === Infinity) return;
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

  /** Highest level left by a cut whose morning after lies in (from, to]; 0 without one. */
  mownBetween(from: number, to: number): number {
    let level = 0;
    for (const mown of this.levels.mown) if (mown.morning > from && mown.morning <= to) level = Math.max(level, mown.level);
    return level;
  }
}
