import type { SeasonBound } from "../bound/bound.js";
import { traceSeason } from "../bound/cell-trace.js";
import { YARD } from "../../season/season.js";
import { WayFinder, type Way } from "./ways.js";
import { cellConstant, rowMoney, type PriceGround, type WholePrices } from "./whole-prices.js";

/** A group's place on one day. */
export interface Told {
  readonly group: number;
  readonly day: number;
  readonly place: number;
}

/** Money of a day on which nobody may stand: more than any plan is worth. */
const NEVER_WORTH = 1e7;

/**
 * The bound of a small farm: as the season's, but cells and groups agree cell by cell, on who stands there and who comes
 * in, and a group's way does not come back to a cell before its shortest rest is over. True at any prices.
 */
export class WholeBound implements PriceGround {
  private readonly ways: readonly WayFinder[];
  /** By group, cell and day, and by group and day for the yard: 1 where the group may not stand in this part of all plans. */
  private shut = new Uint8Array(0);

  constructor(readonly bound: SeasonBound) {
    this.ways = bound.season.groups.map((_, g) => new WayFinder(bound, g));
    this.narrow([]);
  }

  /** From now on the bound is one of those plans alone in which groups stand where they are told to. */
  narrow(told: readonly Told[]): void {
    const { groups, cells, days } = this.bound.season;
    this.shut = new Uint8Array(groups.length * (cells.length + 1) * days);
    for (const { group, day, place } of told) {
      for (let p = YARD; p < cells.length; p++) if (p !== place) this.shut[this.standing(group, p, day)] = 1;
    }
  }

  mayStand(group: number, place: number, day: number): boolean {
    return this.shut[this.standing(group, place, day)] === 0;
  }

  private standing(group: number, place: number, day: number): number {
    return (group * (this.bound.season.cells.length + 1) + place + 1) * this.bound.season.days + day;
  }

  /** Place of a group, cell and day in the lists of prices. */
  readonly at = (g: number, cell: number, t: number): number => (g * this.bound.season.cells.length + cell) * this.bound.season.days + t;

  zero(): WholePrices {
    const { season, tables } = this.bound;
    const cells = season.cells.length;
    const size = season.groups.length * cells * season.days;
    return {
      presence: new Float64Array(size), starts: new Float64Array(size), rows: new Float64Array(tables.rows.length * season.days),
      nitrogen: new Float64Array(cells), pigStrips: new Float64Array(cells), birdStrips: new Float64Array(cells), hay: new Float64Array(1),
    };
  }

  judge(p: WholePrices): { readonly value: number; readonly slope: WholePrices; readonly ways: readonly Int16Array[] } {
    const { season, tables, cells } = this.bound;
    const slope = this.zero();
    let value = this.bound.always + p.hay[0] * this.bound.hayLacking;
    slope.hay[0] = this.bound.hayLacking;
    tables.rows.forEach(({ row }, r) => {
      for (let t = 0; t < season.days; t++) {
        value -= p.rows[r * season.days + t] * row.limit[t];
        slope.rows[r * season.days + t] -= row.limit[t];
      }
    });
    const ways = season.groups.map((_, g) => this.judgeWay(g, p, slope));
    for (const way of ways) value += way.value;
    cells.forEach((_, c) => (value += this.judgeCell(c, p, slope)));
    return { value, slope, ways: ways.map((way) => way.place) };
  }

  /** What a cell is paid for a group's day in it. */
  paidFor(p: WholePrices, g: number, cell: number, t: number): number {
    return this.mayStand(g, cell, t) ? p.presence[this.at(g, cell, t)] : -NEVER_WORTH;
  }

  private judgeWay(g: number, p: WholePrices, slope: WholePrices): Way {
    const { season, tables } = this.bound;
    const { value, place } = this.ways[g].cheapest(p, this);
    for (let t = 0; t < season.days; t++) {
      const own = place[t];
      if (own < YARD) continue;
      const before = t > 0 && !season.groups[g].arrives[t] ? place[t - 1] : -2;
      const enters = own !== before;
      const field = own >= 0 ? season.cells[own].field : -1;
      const hauls = own >= 0 && enters && !(before >= 0 && season.cells[before].field === field);
      if (own >= 0) slope.presence[this.at(g, own, t)] += 1;
      else slope.hay[0] += season.groups[g].hayKg[t];
      if (own >= 0 && enters) slope.starts[this.at(g, own, t)] += 1;
      tables.rows.forEach((row, r) => {
        let used = own === YARD ? (row.stand?.[g][t * tables.width] ?? 0) : 0;
        if (own === YARD && enters) used += row.start?.[g][t * tables.width] ?? 0;
        if (hauls) used += row.haul?.[g][field] ?? 0;
        slope.rows[r * season.days + t] += used;
      });
    }
    return { value, place };
  }

  private judgeCell(c: number, p: WholePrices, slope: WholePrices): number {
    const { season, tables, cells, ground } = this.bound;
    const D = season.days;
    const place = (t: number): number => t * tables.width + c + 1;
    const reward = season.groups.map((_, g) => {
      const sums = new Float64Array(D + 1);
      for (let t = 0; t < D; t++) sums[t + 1] = sums[t] + this.paidFor(p, g, c, t) - rowMoney(this.bound, p.rows, t, (row) => row.stand?.[g][place(t)] ?? 0);
      return sums;
    });
    const startMoney = (g: number, t: number): number => rowMoney(this.bound, p.rows, t, (row) => row.start?.[g][place(t)] ?? 0) - p.starts[this.at(g, c, t)];
    const rowStart = season.groups.map((_, g) => Float64Array.from({ length: D }, (_d, t) => startMoney(g, t)));
    const strips = season.groups.map((group, g) => (group.pig ? p.pigStrips[c] : group.bird ? p.birdStrips[c] : 0) - ground[c].worth[g]);
    const value = cells[c].solve({ reward, rowStart, nitrogen: p.nitrogen[c], strips, hay: p.hay[0], rest: 1 }) + cellConstant(this.bound, c, p);
    slope.nitrogen[c] -= ground[c].nitrogen(p.nitrogen[c]).touch;
    slope.pigStrips[c] -= ground[c].freshForPigs;
    slope.birdStrips[c] -= ground[c].freshForBirds;
    const { stays, hayKg } = traceSeason(cells[c]);
    slope.hay[0] -= hayKg;
    for (const { group: g, first, last } of stays) {
      const strip = season.scenario.groups[g].strip;
      if (strip) (season.groups[g].pig ? slope.pigStrips : slope.birdStrips)[c] += ((last - first + 1) / strip.days) * strip.areaHa;
      slope.starts[this.at(g, c, first)] -= 1;
      for (let t = first; t <= last; t++) {
        slope.presence[this.at(g, c, t)] -= 1;
        slope.nitrogen[c] += season.groups[g].nitrogen[t];
        tables.rows.forEach((row, r) => (slope.rows[r * D + t] += (row.stand?.[g][place(t)] ?? 0) + (t === first ? (row.start?.[g][place(t)] ?? 0) : 0)));
      }
    }
    return value;
  }
}
