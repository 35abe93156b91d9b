import type { Season } from "../../season/season.js";
import { betweenGrazings, roomBetween, type Between } from "./between.js";
import type { CellGround } from "./cell-ground.js";
import type { CellPrices, CellTerms } from "./cell-terms.js";
import { AGAIN, AGAIN_WORKED, CUT, GRAZE, INSIDE, MOWN, MOWN_WORKED, READY, READY_WORKED, UNWORKED, WAIT, WORKED, type Layer } from "./layers.js";
import type { Levels } from "./levels.js";
import type { LongGrass } from "./long-grass.js";
import type { Cuts } from "./mowing.js";
import { MoverStays, type Slides } from "./mover-stays.js";
import { untouchedValue } from "./untouched-cell.js";

/**
 * The cheapest season of one cell at given prices, over a state that forgets only what makes a season dearer: strips
 * taken from the open ground, rounding of cover (always up), and charges that are never negative. So its value is
 * never above that of any exact season, whatever the prices.
 */
export class CellBound {
  readonly layers: readonly [Layer, Layer];
  readonly stays: MoverStays;
  /** The cell that nobody has grazed yet, by layer. */
  readonly first: readonly [Float64Array, Float64Array];
  readonly firstBy: readonly [Int16Array, Int16Array];
  readonly firstStay: Int32Array;
  readonly firstInside: readonly (readonly [Float64Array, Float64Array])[];
  readonly firstLeaves: readonly (readonly [Uint8Array, Uint8Array])[];
  readonly levels: Levels;
  readonly terms: CellTerms;
  readonly cuts: Cuts;
  readonly grass: LongGrass;
  readonly closing: (cover: number) => number;
  private readonly room: Between;

  constructor(readonly season: Season, readonly cell: number, ground: CellGround, slides: Slides) {
    this.levels = ground.levels;
    this.terms = ground.terms;
    this.cuts = ground.cuts;
    this.grass = ground.grass;
    this.closing = ground.closing;
    this.room = roomBetween(ground.terms.movers.length, Math.min(season.days, ground.terms.recovered));
    const days = season.days + 1;
    const size = days * ground.levels.count;
    const layer = (): Layer => ({
      ready: new Float64Array(size), readyBy: new Int16Array(size), grazed: new Float64Array(size), grazedBy: new Int32Array(size),
      entered: new Float64Array(size), enteredBy: new Int32Array(size), readyEnd: new Int16Array(size), grazedEnd: new Int16Array(size),
    });
    this.layers = [layer(), layer()];
    this.stays = new MoverStays(season, ground, this.layers, slides);
    this.first = [new Float64Array(days), new Float64Array(days)];
    this.firstBy = [new Int16Array(days), new Int16Array(days)];
    this.firstStay = new Int32Array(days * 2);
    this.firstInside = ground.terms.movers.map(() => [new Float64Array(days), new Float64Array(days)]);
    this.firstLeaves = ground.terms.movers.map(() => [new Uint8Array(days), new Uint8Array(days)]);
  }

  /** Least money of the cell's season at these prices. */
  solve(prices: CellPrices): number {
    this.terms.price(prices);
    this.backward();
    return untouchedValue(this);
  }

  /** Days that birds and pigs could fill after a grazing that ended before morning t. */
  between(t: number, end: number, layer: number): Between {
    return betweenGrazings(this.season, this.terms, this.grass.birds, this.cuts.nextOwners[t], this.room, t, end - t, layer);
  }

  private backward(): void {
    const { season, levels, layers, stays, grass } = this;
    const { count } = levels;
    const D = season.days;
    layers.forEach((layer, own) => {
      layer.entered.fill(Infinity, D * count);
      for (let j = 0; j < count; j++) layer.ready[D * count + j] = layer.grazed[D * count + j] = own === UNWORKED ? this.closing(levels.cover(j, D)) : 0;
    });
    stays.begin();
    for (let t = D - 1; t >= 0; t--) {
      layers.forEach((layer, own) => {
        this.enter(layer, t);
        this.wait(layer, t);
        if (own === UNWORKED || this.cuts.onWorked) this.mow(layer, t);
      });
      stays.day(t);
      if (grass.walk) for (let i = t * count; i < t * count + levels.reach[t]; i++) layers[UNWORKED].ready[i] += grass.walk[i];
      this.afterGrazing(UNWORKED, t);
      this.afterGrazing(WORKED, t);
    }
  }

  private wait({ ready, readyBy, entered }: Layer, t: number): void {
    const { levels, cuts, terms } = this;
    const { count, reach } = levels;
    const base = t * count;
    const own = cuts.owners.find((cut) => cut.evening === t);
    for (let j = 0; j < reach[t]; j++) {
      const wait = own ? ready[base + count + Math.max(j, own.level)] - own.kg[j] * terms.hay() : ready[base + count + j];
      const graze = entered[base + j];
      ready[base + j] = graze < wait ? graze : wait;
      readyBy[base + j] = graze < wait ? GRAZE : WAIT;
    }
  }

  /** A cut of the planner's on the evening of day t. */
  private mow({ ready, readyBy }: Layer, t: number): void {
    const { cuts, terms } = this;
    const { count, reach } = this.levels;
    if (cuts.tall[t] === 0 || cuts.mower[t] === Infinity) return;
    const after = ready[(t + 1) * count + cuts.stubble[t]] + cuts.mower[t];
    for (let i = t * count; i < t * count + Math.min(reach[t], cuts.tall[t]); i++) {
      const value = after - cuts.kg[i] * terms.hay();
      if (value >= ready[i]) continue;
      ready[i] = value;
      readyBy[i] = CUT;
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
    const { season, levels, terms, layers, stays } = this;
    const { count } = levels;
    const end = Math.min(season.days, t + terms.recovered);
    const between = this.between(t, end, own);
    const { worked } = between;
    const layer = layers[own];
    layer.grazed.fill(Infinity, t * count, (t + 1) * count);
    for (let day = t + terms.floor; day < end; day++) {
      const rest = terms.ownRestMoney(t, day);
      // On worked ground both ways lead to the same values: the cheaper one is enough.
      if (own === UNWORKED || worked[day - t] >= 0) this.join(layer, t, layer.entered, day, rest, AGAIN);
      if (own === UNWORKED || worked[day - t] < 0) this.join(layer, t, layers[WORKED].entered, day, worked[day - t] + rest, AGAIN_WORKED);
    }
    this.join(layer, t, layer.ready, end, 0, READY);
    this.join(layer, t, layers[WORKED].ready, end, worked[end - t], READY_WORKED);
    this.mowResting(own, t, end, worked);
    if (end < season.days) terms.movers.forEach((_, m) => {
      if (between.onFresh[m][end - t] < Infinity) this.stayOn(layer, t, end, m, between.onFresh[m][end - t]);
      this.join(layer, t, stays.inside[m], end, between.onWorked[m][end - t], INSIDE + 2 * m + 1);
    });
  }

  /** Those who came onto ground that nobody had worked and are still in when the rest is over: until the grass is too long. */
  private stayOn(layer: Layer, t: number, end: number, m: number, money: number): void {
    const { levels, stays, cuts } = this;
    const { count } = levels;
    const by = INSIDE + 2 * m;
    if (!stays.limited(m) || cuts.nextOwners[t] < end) {
      this.join(layer, t, stays.inside[m], end, money, by);
      return;
    }
    const base = t * count;
    for (let j = 0; j < levels.reach[t]; j++) {
      const value = money + stays.goingOn(m, t, j);
      if (value >= layer.grazed[base + j]) continue;
      layer.grazed[base + j] = value;
      layer.grazedBy[base + j] = end * 64 + by;
      layer.grazedEnd[base + j] = stays.end;
    }
  }

  /** A cut of the planner's before the rest is over: on the cheapest evening, with the hay of the last. What is left of the rest is forgotten. */
  private mowResting(own: number, t: number, end: number, worked: Float64Array): void {
    const { cuts, levels, layers, terms } = this;
    const { count } = levels;
    const last = cuts.lastEvening[end];
    if (last < t) return;
    let money = Infinity;
    let code = 0;
    for (let evening = t; evening <= last; evening++) {
      const after = (evening + 1) * count + cuts.stubble[evening];
      const fresh = own === UNWORKED || cuts.onWorked ? layers[own].ready[after] : Infinity;
      const then = cuts.onWorked ? worked[evening - t] + layers[WORKED].ready[after] : Infinity;
      const value = Math.min(fresh, then) + cuts.mower[evening];
      if (value >= money) continue;
      money = value;
      code = evening * 64 + (fresh <= then ? MOWN : MOWN_WORKED);
    }
    const { grazed, grazedBy } = layers[own];
    const [base, hay, tall] = [t * count, terms.hay(), Math.min(cuts.tall[last], levels.reach[t])];
    for (let j = 0; j < tall; j++) {
      const value = money - cuts.kg[last * count + j] * hay;
      if (value >= grazed[base + j]) continue;
      grazed[base + j] = value;
      grazedBy[base + j] = code;
    }
  }

  private join({ grazed, grazedBy }: Layer, t: number, table: Float64Array, day: number, money: number, by: number): void {
    if (money === Infinity) return;
    const { count, reach } = this.levels;
    const base = t * count;
    const from = day * count;
    const code = day * 64 + by;
    const mown = this.cuts.nextOwners[t] < day;
    const most = reach[t];
    for (let j = 0; j < most; j++) {
      const value = mown ? money + this.mownOn(t, day, j, table) : money + table[from + j];
      if (value < grazed[base + j]) {
        grazed[base + j] = value;
        grazedBy[base + j] = code;
      }
    }
  }

  /** Value of a table on a morning to which the owner's cuts lead from another: their hay, and the level they leave. */
  private mownOn(t: number, day: number, level: number, table: Float64Array): number {
    const { low, kg } = this.ownersCuts(t, day, level);
    return table[day * this.levels.count + low] - kg * this.terms.hay();
  }

  /** The owner's cuts on evenings from morning t to a later one: the level they leave, and the hay they make, kg. */
  ownersCuts(t: number, day: number, level: number): { low: number; kg: number } {
    let low = level;
    let kg = 0;
    for (const cut of this.cuts.owners) {
      if (cut.evening < t || cut.evening >= day) continue;
      kg += cut.kg[low];
      low = Math.max(low, cut.level);
    }
    return { low, kg };
  }
}
