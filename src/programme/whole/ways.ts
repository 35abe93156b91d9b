import { YARD } from "../../season/season.js";
import type { SeasonBound } from "../bound/bound.js";
import { askedIn, figures } from "../half.js";
import { rowMoney, type PriceGround, type WholePrices } from "./whole-prices.js";

/** A group's cheapest way, by day: cell, YARD, or -2 where it is away. */
export interface Way {
  readonly value: number;
  readonly place: Int16Array;
}

/**
 * One group's cheapest way through yard and cells, exact but for its memory: it knows which cells it left since a
 * morning, and goes back to none of them before the shortest rest after that morning; then it forgets them.
 */
export class WayFinder {
  /** Shortest rest, days; and by cell the bit in the memory, 0 where none is asked. */
  private readonly rest: number;
  private readonly bit: readonly number[];
  private readonly sets: number;
  private readonly ages: number;
  /** By place (yard first), memory and age: values of the day, and by day where each came from. */
  private readonly size: number;
  private readonly came: Int32Array[];

  constructor(private readonly bound: SeasonBound, private readonly g: number) {
    const { season } = bound;
    const floor = figures(season, "rest-period", "floor");
    const own = season.groups[g];
    const asked = season.cells.map((_, c) => own.grazer && own.mayEnter[c] === 1 && askedIn(season, "rest-period", c, g));
    const floors = season.cells.map((_, c) => Math.ceil(floor(c, g)));
    this.rest = Math.min(...floors.filter((_, c) => asked[c]), season.days);
    let bits = 0;
    this.bit = asked.map((yes) => (yes && this.rest > 1 && bits < MOST_BITS ? 1 << bits++ : 0));
    this.sets = 1 << bits;
    this.ages = bits > 0 ? this.rest : 1;
    this.size = (season.cells.length + 1) * this.sets * this.ages;
    this.came = Array.from({ length: season.days }, () => new Int32Array(this.size));
  }

  cheapest(p: WholePrices, ground: PriceGround): Way {
    const { season } = this.bound;
    const { present, arrives } = season.groups[this.g];
    const paid = this.paid(p, ground);
    let values = new Float64Array(this.size).fill(Infinity);
    let next = new Float64Array(this.size);
    let least = 0;
    const place = new Int16Array(season.days).fill(-2);
    const ends: { day: number; state: number }[] = [];
    for (let t = 0; t < season.days; t++) {
      if (!present[t]) continue;
      next.fill(Infinity);
      const fresh = t === 0 || arrives[t] === 1 || !present[t - 1];
      if (fresh) this.begin(next, least, t, paid);
      else this.step(values, next, t, paid);
      [values, next] = [next, values];
      if (t + 1 < season.days && present[t + 1] && !arrives[t + 1]) continue;
      let best = 0;
      for (let s = 1; s < this.size; s++) if (values[s] < values[best]) best = s;
      least = values[best];
      ends.push({ day: t, state: best });
    }
    for (const { day, state } of ends) this.walkBack(day, state, place);
    return { value: least, place };
  }

  private state(place: number, set: number, age: number): number {
    return (place * this.sets + set) * this.ages + age;
  }

  private begin(values: Float64Array, least: number, t: number, { stand, start, haul }: Paid): void {
    for (let q = 0; q < stand.length; q++) {
      const s = this.state(q, 0, 0);
      values[s] = least + start[q][t] + (q > 0 ? haul[q - 1][t] : 0) + stand[q][t];
      this.came[t][s] = -1;
    }
  }

  /** From the places of the day before to those of day t. */
  private step(values: Float64Array, next: Float64Array, t: number, { stand, start, haul }: Paid): void {
    const { cells } = this.bound.season;
    const came = this.came[t];
    const put = (s: number, value: number, from: number): void => {
      if (value < next[s]) {
        next[s] = value;
        came[s] = from;
      }
    };
    for (let q = 0; q < stand.length; q++) {
      const own = q > 0 ? this.bit[q - 1] : 0;
      for (let set = 0; set < this.sets; set++) for (let age = 0; age < this.ages; age++) {
        const from = this.state(q, set, age);
        const value = values[from];
        if (value === Infinity) continue;
        // The morning of day t: what was left so long ago is forgotten.
        const old = set === 0 || age + 1 >= this.ages;
        const [kept, since] = old ? [0, 0] : [set, age + 1];
        put(this.state(q, kept, since), value + stand[q][t], from);
        const [left, leftSince] = own ? (kept ? [kept | own, since] : [own, 0]) : [kept, since];
        for (let to = 0; to < stand.length; to++) {
          if (to === q || (to > 0 && (this.bit[to - 1] & left) !== 0)) continue;
          const hauls = to > 0 && !(q > 0 && cells[q - 1].field === cells[to - 1].field);
          put(this.state(to, left, leftSince), value + start[to][t] + (hauls ? haul[to - 1][t] : 0) + stand[to][t], from);
        }
      }
    }
  }

  private walkBack(day: number, end: number, place: Int16Array): void {
    for (let [t, s] = [day, end]; s >= 0; t--) {
      place[t] = Math.floor(s / (this.sets * this.ages)) + YARD;
      s = this.came[t][s];
    }
  }

  /** Money of days and starts by place, the yard first, and of hauls by cell; Infinity where forbidden. */
  private paid(p: WholePrices, ground: PriceGround): Paid {
    const { bound, g } = this;
    const { season, tables } = bound;
    const { width } = tables;
    const row = (t: number, kind: "stand" | "start"): number => rowMoney(bound, p.rows, t, (own) => own[kind]?.[g][t * width] ?? 0);
    const days = (of: (t: number) => number): Float64Array => Float64Array.from({ length: season.days }, (_, t) => of(t));
    const ok = (over: readonly Float64Array[], place: number, t: number): boolean => over[g][t * width + place + 1] <= 0;
    const cells = season.cells.map((_, c) => c);
    const may = (c: number, t: number): boolean => ground.mayStand(g, c, t) && season.groups[g].mayEnter[c] === 1 && season.cells[c].open[t] === 1 && ok(tables.standOver, c, t);
    return {
      stand: [
        days((t) => (ground.mayStand(g, YARD, t) && ok(tables.standOver, YARD, t) ? tables.standMoney[g][t * width] + p.hay[0] * season.groups[g].hayKg[t] + row(t, "stand") : Infinity)),
        ...cells.map((c) => days((t) => (may(c, t) ? p.presence[ground.at(g, c, t)] : Infinity))),
      ],
      start: [
        days((t) => (ok(tables.startOver, YARD, t) ? tables.startMoney[g][t * width] + row(t, "start") : Infinity)),
        ...cells.map((c) => days((t) => (ok(tables.startOver, c, t) ? p.starts[ground.at(g, c, t)] : Infinity))),
      ],
      haul: cells.map((c) => days((t) => tables.haulMoney[g][season.cells[c].field] + rowMoney(bound, p.rows, t, (own) => own.haul?.[g][season.cells[c].field] ?? 0))),
    };
  }
}

/** Cells that a memory holds at most. */
const MOST_BITS = 6;

interface Paid {
  readonly stand: readonly Float64Array[];
  readonly start: readonly Float64Array[];
  readonly haul: readonly Float64Array[];
}
