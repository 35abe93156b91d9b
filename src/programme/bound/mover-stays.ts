import type { Season } from "../../season/season.js";
import type { CellGround } from "./cell-ground.js";
import { UNWORKED, WORKED, type Layer } from "./layers.js";
import { Slide } from "./slide.js";

/** Room to work in, shared by all cells of a bound: three windows for each group. */
export type Slides = (group: number, which: number) => Slide;

export function slidesFor(season: Season, levels: number): Slides {
  const made = new Map<number, Slide>();
  return (group, which) => {
    const key = group * 3 + which;
    const known = made.get(key) ?? new Slide(levels, season.days + 2);
    made.set(key, known);
    return known;
  };
}

/** Windows of a mover: stays onto ground not worked, onto worked ground, and stays that go on when a rest is over. */
const FRESH = 0;
const AFTER_OTHERS = 1;
const GOING_ON = 2;

/** Stays of birds and pigs on ready ground, day by day backward. Birds stay no longer than the grass is short enough. */
export class MoverStays {
  /** Inside for the day, whatever the ground: by mover, for stays that nothing ends. */
  readonly inside: readonly Float64Array[];
  /** The last morning of the stay looked for last. */
  end = -1;
  private readonly insideEnd: readonly Int16Array[];
  /** Money of all days before one, by mover. */
  private readonly before: readonly Float64Array[];

  constructor(private readonly season: Season, private readonly ground: CellGround, private readonly layers: readonly [Layer, Layer], private readonly slides: Slides) {
    const size = (season.days + 1) * ground.levels.count;
    this.inside = ground.terms.movers.map(() => new Float64Array(size));
    this.insideEnd = ground.terms.movers.map(() => new Int16Array(size));
    this.before = ground.terms.movers.map(() => new Float64Array(season.days + 1));
  }

  limited(m: number): boolean {
    return this.ground.grass.birds !== null && this.season.groups[this.ground.terms.movers[m]].bird;
  }

  begin(): void {
    const { season, ground, slides, before } = this;
    const { movers } = ground.terms;
    const { count } = ground.levels;
    movers.forEach((g, m) => {
      this.inside[m].fill(Infinity, season.days * count);
      for (let t = 0; t < season.days; t++) {
        const money = ground.terms.day(g, t);
        before[m][t + 1] = before[m][t] + (money < Infinity ? money : 0);
      }
      if (this.limited(m)) for (const which of [FRESH, AFTER_OTHERS, GOING_ON]) slides(g, which).clear();
    });
  }

  /** Fills what day t is worth. Values of later mornings are known. */
  day(t: number): void {
    this.ground.terms.movers.forEach((g, m) => {
      this.standOn(g, m, t);
      if (this.limited(m)) {
        this.offerReady(g, m, t);
        this.offerGoingOn(g, m, t);
        this.beginLimited(g, m, t);
      } else this.beginAny(g, m, t);
    });
  }

  /** Least value of staying on past the end of a rest that began on morning t, from that end on. */
  goingOn(m: number, t: number, level: number): number {
    const { season, ground, slides, before } = this;
    const { levels, terms, grass } = ground;
    const slide = slides(terms.movers[m], GOING_ON);
    const value = slide.least(level, grass.birds?.until[t * levels.count + level] ?? season.days);
    this.end = slide.at;
    return value - before[m][Math.min(season.days, t + terms.recovered)];
  }

  /** The last morning of an unlimited stay that is under way on a day. */
  endOf(m: number, t: number, level: number): number {
    return this.insideEnd[m][t * this.ground.levels.count + level];
  }

  private standOn(g: number, m: number, t: number): void {
    const { ground, layers } = this;
    const { terms, levels } = ground;
    const { count, reach } = levels;
    const [table, ends, ready] = [this.inside[m], this.insideEnd[m], layers[WORKED].ready];
    const day = terms.day(g, t);
    const stays = terms.mayStay(g, t + 1);
    const leaves = terms.mayLeave(g, t + 1);
    const base = t * count;
    for (let j = 0; j < reach[t]; j++) {
      const stay = stays ? table[base + count + j] : Infinity;
      const leave = leaves ? ready[base + count + j] : Infinity;
      table[base + j] = day + (leave <= stay ? leave : stay);
      ends[base + j] = leave <= stay ? t + 1 : ends[base + count + j];
    }
  }

  private beginAny(g: number, m: number, t: number): void {
    const { ground, layers, inside, insideEnd } = this;
    const { count, reach } = ground.levels;
    const start = ground.terms.start(g, t, null);
    if (start === Infinity) return;
    for (const layer of layers) {
      for (let i = t * count; i < t * count + reach[t]; i++) take(layer, i, start + inside[m][i], m, insideEnd[m][i]);
    }
  }

  /** Stays that could end on the morning after day t, for those that begin that day or before. */
  private offerReady(g: number, m: number, t: number): void {
    const { ground, slides, layers, before } = this;
    const { levels, terms, grass } = ground;
    const { count, reach } = levels;
    const [fresh, after] = [slides(g, FRESH), slides(g, AFTER_OTHERS)];
    if (terms.day(g, t) === Infinity || !terms.mayStay(g, t + 1)) {
      fresh.clear();
      after.clear();
    }
    if (!terms.mayLeave(g, t + 1) || terms.day(g, t) === Infinity) return;
    const base = (t + 1) * count;
    const { ready } = layers[WORKED];
    const lots = grass.birds?.lots;
    for (let j = 0; j < reach[t]; j++) {
      const value = before[m][t + 1] + ready[base + j];
      after.offer(j, t + 1, value);
      fresh.offer(j, t + 1, value + (lots?.[base + j] ?? 0));
    }
  }

  /** The same for stays under way when the rest after a grazing before morning t is over. */
  private offerGoingOn(g: number, m: number, t: number): void {
    const { season, ground, slides, layers, before } = this;
    const { levels, terms } = ground;
    const day = t + terms.recovered;
    if (day >= season.days) return;
    const slide = slides(g, GOING_ON);
    if (terms.day(g, day) === Infinity || !terms.mayStay(g, day + 1)) slide.clear();
    if (!terms.mayLeave(g, day + 1) || terms.day(g, day) === Infinity) return;
    const base = (day + 1) * levels.count;
    for (let j = 0; j < levels.reach[day]; j++) slide.offer(j, day + 1, before[m][day + 1] + layers[WORKED].ready[base + j]);
  }

  private beginLimited(g: number, m: number, t: number): void {
    const { ground, slides, layers, before } = this;
    const { levels, terms, grass } = ground;
    const start = terms.start(g, t, null);
    const { birds } = grass;
    if (start === Infinity || !birds || terms.day(g, t) === Infinity) return;
    const [fresh, after] = [slides(g, FRESH), slides(g, AFTER_OTHERS)];
    const base = t * levels.count;
    const paid = start - before[m][t];
    for (let j = 0; j < levels.reach[t]; j++) {
      const worked = paid + after.least(j, birds.untilWorked[t]);
      if (worked < Infinity) take(layers[WORKED], base + j, worked, m, after.at);
      const until = birds.until[base + j];
      if (until <= t) continue;
      const own = paid - birds.lots[base + j] + fresh.least(j, until);
      if (own < Infinity) take(layers[UNWORKED], base + j, own, m, fresh.at);
    }
  }
}

function take({ ready, readyBy, readyEnd }: Layer, i: number, value: number, by: number, end: number): void {
  if (value >= ready[i]) return;
  ready[i] = value;
  readyBy[i] = by;
  readyEnd[i] = end;
}
