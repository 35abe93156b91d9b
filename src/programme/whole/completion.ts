import { grownCover } from "../../science/growth.js";
import type { CellBound } from "../bound/cell-bound.js";
import { UNWORKED, WORKED } from "../bound/layers.js";
import type { CellState } from "../cell-state.js";

/** Slack of covers, kg DM/ha: a level may be a hair too high, never too low. */
const HAIR = 1e-6;

/** Where a cell stands on a morning, as far as the bound's tables tell seasons apart. */
export interface Standing {
  /** Level that no ground of the cell is above. */
  readonly level: number;
  /** Morning after the season's latest grazing; null before the first. */
  readonly grazed: number | null;
  /** Birds or pigs were there this season. */
  readonly worked: boolean;
  /** The planner has cut it this season. */
  readonly mown: boolean;
}

/** What is left of a cell's season cannot cost less than this, by the bound's tables at the prices judged last. */
export class Completion {
  /** By morning of the latest grazing, morning and layer: values by level. */
  private readonly rested = new Map<number, Float64Array>();

  constructor(readonly bound: CellBound) {}

  standing(s: CellState, { worked, mown }: Pick<Standing, "worked" | "mown">): Standing {
    return { level: this.levelOf(s), grazed: s.grazedThisSeason && s.lastGrazed !== null ? s.lastGrazed + 1 : null, worked, mown };
  }

  /** Level of a state: of its open ground, or of the mean of all its ground where that is longer. */
  private levelOf(s: CellState): number {
    const { levels, season } = this.bound;
    const { rates, areaHa } = season.cells[s.cell];
    let mass = s.cover * s.open;
    for (const lot of s.lots) mass += grownCover(lot.cover, Math.max(0, rates[s.day] - rates[lot.from]), season.ceiling) * lot.area;
    const cover = s.lots.length === 0 ? s.cover : Math.max(s.open > 0 ? s.cover : 0, mass / areaHa);
    return this.clamp(levels.levelOf(cover + HAIR, s.day), s.day);
  }

  clamp(level: number, day: number): number {
    return Math.min(level, this.bound.levels.reach[day] - 1);
  }

  /** Least cost of the season from a morning on. */
  after(day: number, { level, grazed, worked, mown }: Standing): number {
    const { bound } = this;
    const { count } = bound.levels;
    const own = worked ? WORKED : UNWORKED;
    const i = day * count + level;
    // The walk of a morning that is lived is charged already.
    const walked = own === UNWORKED ? (bound.grass.walk?.[i] ?? 0) : 0;
    if (grazed === null) return mown ? bound.layers[own].ready[i] - walked : bound.first[own][day] - (own === UNWORKED ? (bound.grass.walkUntouched[day] ?? 0) : 0);
    const end = Math.min(bound.season.days, grazed + bound.terms.recovered);
    if (day === grazed) return bound.layers[own].grazed[i];
    if (day >= end) return bound.layers[own].ready[i] - walked;
    return this.resting(grazed, day, own)[level];
  }

  /** Least cost of grazing a group from a day for some days and all after it; Infinity where it cannot be. */
  grazing(g: number, first: number, days: number, from: number, { level, grazed, worked, mown }: Standing): number {
    const { bound } = this;
    const { levels, terms, season } = bound;
    const { count, most } = levels;
    if (days > most) return Infinity;
    const own = worked ? WORKED : UNWORKED;
    if (grazed === null && !mown) {
      const pass = levels.afterFirst.get(g);
      const next = pass ? pass.level[first * most + days - 1] : -1;
      if (!pass || next < 0) return Infinity;
      const past = season.cells[bound.cell].lastGrazed;
      if (past !== null && first - past - 1 < terms.floor) return Infinity;
      const rest = past === null ? 0 : terms.restMoney(past + 1, first);
      return terms.stay(g, first, days) + pass.money[first] + rest + bound.layers[own].grazed[(first + days) * count + next];
    }
    if (grazed !== null && first - grazed < terms.floor) return Infinity;
    const { low, kg } = bound.ownersCuts(from, first, level);
    const next = levels.after.get(g)?.[(first * count + low) * most + days - 1] ?? -1;
    if (next < 0) return Infinity;
    const rest = grazed === null ? 0 : terms.ownRestMoney(grazed, first);
    return terms.stay(g, first, days) + rest - kg * terms.hay() + bound.layers[own].grazed[(first + days) * count + next];
  }

  /** Values by level on a morning after a grazing and before its rest is over, on ground of a layer. */
  private resting(grazed: number, day: number, own: number): Float64Array {
    const { bound } = this;
    const { season, levels, terms, layers, stays } = bound;
    const key = (grazed * (season.days + 1) + day) * 2 + own;
    const known = this.rested.get(key);
    if (known) return known;
    const { count } = levels;
    const end = Math.min(season.days, grazed + terms.recovered);
    const { free, with: held } = this.moversFrom(grazed, day, end);
    const values = new Float64Array(count).fill(Infinity);
    const join = (table: Float64Array, on: number, money: number): void => {
      if (money === Infinity) return;
      for (let j = 0; j < levels.reach[day]; j++) {
        const { low, kg } = bound.ownersCuts(day, on, j);
        values[j] = Math.min(values[j], money + table[on * count + low] - kg * terms.hay());
      }
    };
    for (let on = Math.max(day, grazed + terms.floor); on < end; on++) {
      const rest = terms.ownRestMoney(grazed, on);
      if (own === UNWORKED) join(layers[UNWORKED].entered, on, rest);
      join(layers[WORKED].entered, on, free[on - day] + rest);
    }
    if (own === UNWORKED) join(layers[UNWORKED].ready, end, 0);
    join(layers[WORKED].ready, end, free[end - day]);
    if (end < season.days) held.forEach((table, m) => join(stays.inside[m], end, table[end - day]));
    for (let evening = day; evening < end; evening++) this.mow(values, day, evening, own, free[evening - day]);
    this.rested.set(key, values);
    return values;
  }

  /** A cut of the planner's on an evening before the rest is over; what is left of the rest is forgotten. */
  private mow(values: Float64Array, day: number, evening: number, own: number, workedMoney: number): void {
    const { cuts, levels, layers, terms } = this.bound;
    if (cuts.mower[evening] === Infinity) return;
    const after = (evening + 1) * levels.count + cuts.stubble[evening];
    const money = Math.min(own === UNWORKED ? layers[UNWORKED].ready[after] : Infinity, cuts.onWorked ? workedMoney + layers[WORKED].ready[after] : Infinity);
    for (let j = 0; j < Math.min(levels.reach[day], cuts.tall[evening]); j++) {
      values[j] = Math.min(values[j], money + cuts.mower[evening] - cuts.kg[evening * levels.count + j] * terms.hay());
    }
  }

  /** Cheapest use by birds and pigs from a free morning on worked ground: to be free on a morning, or under way on it. */
  private moversFrom(grazed: number, day: number, end: number): { free: Float64Array; with: Float64Array[] } {
    const { terms } = this.bound;
    const span = end - day;
    const free = new Float64Array(span + 1).fill(Infinity);
    const held = terms.movers.map(() => new Float64Array(span + 1).fill(Infinity));
    free[0] = 0;
    for (let k = 0; k < span; k++) {
      free[k + 1] = Math.min(free[k + 1], free[k]);
      terms.movers.forEach((g, m) => {
        const inside = Math.min(held[m][k], free[k] + terms.start(g, day + k, day + k - grazed));
        if (inside === Infinity) return;
        const paid = inside + terms.day(g, day + k);
        if (terms.mayStay(g, day + k + 1)) held[m][k + 1] = Math.min(held[m][k + 1], paid);
        if (terms.mayLeave(g, day + k + 1)) free[k + 1] = Math.min(free[k + 1], paid);
      });
    }
    return { free, with: held };
  }
}
