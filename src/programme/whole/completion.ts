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
  /** Birds, pigs or a mower of the planner's were there this season: long grass no longer keeps birds off. */
  readonly worked: boolean;
}

/** What is left of a cell's season cannot cost less than this, by the bound's tables at the prices judged last. */
export class Completion {
  /** By morning of the latest grazing x days + morning: values by level. */
  private readonly rested = new Map<number, Float64Array>();

  constructor(readonly bound: CellBound) {}

  standing(s: CellState, worked: boolean): Standing {
    return { level: this.levelOf(s), grazed: s.grazedThisSeason && s.lastGrazed !== null ? s.lastGrazed + 1 : null, worked };
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
  after(day: number, { level, grazed, worked }: Standing): number {
    const { bound } = this;
    const { count } = bound.levels;
    const own = worked ? WORKED : UNWORKED;
    if (grazed === null) return bound.first[own][day];
    const end = Math.min(bound.season.days, grazed + bound.terms.recovered);
    if (day === grazed) return bound.layers[own].grazed[day * count + level];
    if (day >= end) return bound.layers[own].ready[day * count + level];
    return this.resting(grazed, day)[level];
  }

  /** Least cost of grazing a group from a day for some days and all after it; Infinity where it cannot be. */
  grazing(g: number, first: number, days: number, from: number, { level, grazed, worked }: Standing): number {
    const { bound } = this;
    const { levels, terms, season } = bound;
    const { count, most } = levels;
    if (days > most) return Infinity;
    const own = worked ? WORKED : UNWORKED;
    if (grazed === null) {
      const pass = levels.afterFirst.get(g);
      const next = pass ? pass.level[first * most + days - 1] : -1;
      if (!pass || next < 0) return Infinity;
      const past = season.cells[bound.cell].lastGrazed;
      if (past !== null && first - past - 1 < terms.floor) return Infinity;
      const rest = past === null ? 0 : terms.restMoney(past + 1, first);
      return terms.stay(g, first, days) + pass.money[first] + rest + bound.layers[own].grazed[(first + days) * count + next];
    }
    if (first - grazed < terms.floor) return Infinity;
    const low = Math.max(level, bound.mownBetween(from, first));
    const next = levels.after.get(g)?.[(first * count + low) * most + days - 1] ?? -1;
    if (next < 0) return Infinity;
    return terms.stay(g, first, days) + terms.restMoney(grazed, first) + bound.layers[own].grazed[(first + days) * count + next];
  }

  /** Values by level on a morning after a grazing and before its rest is over, on worked ground. */
  private resting(grazed: number, day: number): Float64Array {
    const { bound } = this;
    const { season, levels, terms, layers, inside } = bound;
    const key = grazed * (season.days + 1) + day;
    const known = this.rested.get(key);
    if (known) return known;
    const { count } = levels;
    const end = Math.min(season.days, grazed + terms.recovered);
    const { free, with: held } = this.moversFrom(grazed, day, end);
    const values = new Float64Array(count).fill(Infinity);
    const join = (table: Float64Array, on: number, money: number): void => {
      if (money === Infinity) return;
      const low = bound.mownBetween(day, on);
      for (let j = 0; j < levels.reach[day]; j++) values[j] = Math.min(values[j], money + table[on * count + Math.max(j, low)]);
    };
    for (let on = Math.max(day, grazed + terms.floor); on < end; on++) join(layers[WORKED].entered, on, free[on - day] + terms.restMoney(grazed, on));
    join(layers[WORKED].ready, end, free[end - day]);
    if (end < season.days) held.forEach((own, m) => join(inside[m], end, own[end - day]));
    this.rested.set(key, values);
    return values;
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
