import { YARD, type Season } from "../../season/season.js";
import type { CellSimulator } from "../cell-simulator.js";
import { askedIn, chargedIn, farmFigure, farmWide, figures } from "../half.js";
import type { PathTables } from "../path-tables.js";
import { CellBound } from "./cell-bound.js";
import { cellTerms } from "./cell-terms.js";
import { traceSeason } from "./cell-trace.js";
import { groundTerms, type GroundTerms } from "./ground-terms.js";
import { cellLevels } from "./levels.js";
import { cheapestRoute, routeGround, type RouteGround } from "./route.js";
import { longGrass } from "./long-grass.js";
import { cellCuts, ownersMowing } from "./mowing.js";
import { slidesFor } from "./mover-stays.js";
import { stayPrices } from "./stay-prices.js";
import { GrazerVisits } from "./visits.js";

/** All prices of the bound, as one flat list each. */
export interface Prices {
  /** Group x fields x days: price of standing in a field on a day. */
  readonly presence: Float64Array;
  /** The same of a grazing group's beginning a stay there. */
  readonly starts: Float64Array;
  /** Rows x days, never negative. */
  readonly rows: Float64Array;
  /** By cell: slope a kg N; price of a fresh hectare for pigs and for birds, never negative. */
  readonly nitrogen: Float64Array;
  readonly pigStrips: Float64Array;
  readonly birdStrips: Float64Array;
  /** One: price of a kilogram of hay in store for the winter, between nothing and what it is bought for. */
  readonly hay: Float64Array;
  /** By field: share of the charges for rests cut short that groups' ways bear instead of cells, 0 to 1. */
  readonly rest: Float64Array;
}

export interface Judged {
  readonly value: number;
  /** Ascent direction, in the shape of the prices. */
  readonly slope: Prices;
}

/**
 * A lower bound on the cost of every valid plan, at any prices: each cell lives its own cheapest season, each group
 * walks its own cheapest way, and prices make them agree. True at every step, whether or not they do agree.
 */
export class SeasonBound {
  readonly cells: readonly CellBound[];
  readonly ground: readonly GroundTerms[];
  private readonly routes: readonly RouteGround[];
  /** By group; null for birds and pigs. */
  private readonly visits: readonly (GrazerVisits | null)[];
  readonly fields: number;
  /** Money no plan avoids and no cell knows: the mower's coming for the owner's own cuts. */
  readonly always: number;
  /** Hay that the winter needs beyond what is in store, kg, and the most that a kilogram can cost. */
  readonly hayLacking: number;
  private readonly hayMost: number;

  constructor(readonly season: Season, simulator: CellSimulator, readonly tables: PathTables, step: number) {
    this.fields = season.scenario.fields.length;
    const grounds = season.cells.map((_, c) => {
      const most = longestStay(season, c);
      const levels = cellLevels(season, c, step, most);
      const cuts = cellCuts(season, c, levels);
      const terms = cellTerms(season, c, levels, stayPrices(simulator, tables, c, most));
      return { levels, cuts, terms, grass: longGrass(season, c, levels, cuts), closing: closingMoney(season, c) };
    });
    const slides = slidesFor(season, Math.max(...grounds.map(({ levels }) => levels.count)));
    this.cells = grounds.map((ground, c) => new CellBound(season, c, ground, slides));
    this.ground = season.cells.map((_, c) => groundTerms(season, c));
    this.routes = season.groups.map((_, g) => routeGround(season, tables, g));
    this.visits = season.groups.map((group, g) => (group.grazer ? new GrazerVisits(season, tables, this.routes[g]) : null));
    this.always = ownersMowing(season);
    this.hayLacking = season.scenario.hay.winterNeedKg - season.scenario.hay.inStoreKg;
    this.hayMost = farmWide(season, "hay-stock") ? season.scenario.prices.hayPerKg * (farmFigure(season, "hay-stock", "short-share") / 100) : 0;
  }

  /** No prices at all: nothing is worth anything anywhere. */
  zero(): Prices {
    const { season } = this;
    const cells = season.cells.length;
    return {
      presence: new Float64Array(season.groups.length * this.fields * season.days),
      starts: new Float64Array(season.groups.length * this.fields * season.days),
      rows: new Float64Array(this.tables.rows.length * season.days),
      nitrogen: new Float64Array(cells), pigStrips: new Float64Array(cells), birdStrips: new Float64Array(cells), hay: new Float64Array(1), rest: new Float64Array(this.fields),
    };
  }

  judge(p: Prices): Judged {
    const slope = this.zero();
    let value = this.always + p.hay[0] * this.hayLacking;
    slope.hay[0] = this.hayLacking;
    this.tables.rows.forEach(({ row }, r) => {
      for (let t = 0; t < this.season.days; t++) {
        value -= p.rows[r * this.season.days + t] * row.limit[t];
        slope.rows[r * this.season.days + t] -= row.limit[t];
      }
    });
    this.season.groups.forEach((_, g) => (value += this.judgeRoute(g, p, slope)));
    this.cells.forEach((_, c) => (value += this.judgeCell(c, p, slope)));
    return { value, slope };
  }

  /** What rows add to a group's day, start or haul in a place, at their prices. */
  private rowMoney(p: Prices, t: number, amount: (r: number) => number): number {
    let money = 0;
    for (let r = 0; r < this.tables.rows.length; r++) {
      const price = p.rows[r * this.season.days + t];
      if (price > 0) money += price * amount(r);
    }
    return money;
  }

  private judgeRoute(g: number, p: Prices, slope: Prices): number {
    const { season, tables, fields } = this;
    const D = season.days;
    const size = fields * D;
    const { rows, width } = tables;
    const days = Array.from({ length: D }, (_, t) => t);
    const haul = new Float64Array(size);
    for (let f = 0; f < fields; f++) for (const t of days) haul[f * D + t] = this.rowMoney(p, t, (r) => rows[r].haul?.[g][f] ?? 0);
    const prices = {
      presence: p.presence.subarray(g * size, (g + 1) * size),
      yardStand: Float64Array.from(days, (t) => p.hay[0] * season.groups[g].hayKg[t] + this.rowMoney(p, t, (r) => rows[r].stand?.[g][t * width] ?? 0)),
      yardStart: Float64Array.from(days, (t) => this.rowMoney(p, t, (r) => rows[r].start?.[g][t * width] ?? 0)),
      haul,
    };
    const visits = this.visits[g]?.cheapest({ ...prices, starts: p.starts.subarray(g * size, (g + 1) * size), rest: p.rest });
    const route = visits ?? cheapestRoute(season, tables, this.routes[g], prices);
    this.slopeOfRoute(g, slope, route.place);
    visits?.begins.forEach((begins, t) => (begins && visits.place[t] >= 0 ? (slope.starts[g * size + visits.place[t] * D + t] += 1) : 0));
    visits?.short.forEach((money, f) => (slope.rest[f] += money));
    return route.value;
  }

  private slopeOfRoute(g: number, slope: Prices, way: Int16Array): void {
    const { season, tables, fields } = this;
    const D = season.days;
    const { rows, width } = tables;
    for (let t = 0; t < D; t++) {
      const place = way[t];
      if (place < YARD) continue;
      if (place >= 0) slope.presence[(g * fields + place) * D + t] += 1;
      else slope.hay[0] += season.groups[g].hayKg[t];
      const enters = t === 0 || season.groups[g].arrives[t] || way[t - 1] !== place;
      rows.forEach((row, r) => {
        let used = place === YARD ? (row.stand?.[g][t * width] ?? 0) : 0;
        if (enters) used += place === YARD ? (row.start?.[g][t * width] ?? 0) : (row.haul?.[g][place] ?? 0);
        slope.rows[r * D + t] += used;
      });
    }
  }

  private judgeCell(c: number, p: Prices, slope: Prices): number {
    const { season, tables, fields, ground } = this;
    const D = season.days;
    const { rows, width } = tables;
    const field = season.cells[c].field;
    const terms = ground[c];
    const reward = season.groups.map((_, g) => {
      const sums = new Float64Array(D + 1);
      const base = (g * fields + field) * D;
      for (let t = 0; t < D; t++) sums[t + 1] = sums[t] + p.presence[base + t] - this.rowMoney(p, t, (r) => rows[r].stand?.[g][t * width + c + 1] ?? 0);
      return sums;
    });
    const rowStart = season.groups.map((group, g) => Float64Array.from({ length: D }, (_d, t) => (
      this.rowMoney(p, t, (r) => rows[r].start?.[g][t * width + c + 1] ?? 0) - (group.grazer ? p.starts[(g * fields + field) * D + t] : 0)
    )));
    const strips = season.groups.map((group, g) => (group.pig ? p.pigStrips[c] : group.bird ? p.birdStrips[c] : 0) - terms.worth[g]);
    const line = terms.nitrogen(p.nitrogen[c]);
    let value = this.cells[c].solve({ reward, rowStart, nitrogen: p.nitrogen[c], strips, hay: p.hay[0], rest: 1 - p.rest[field] }) + line.constant + terms.undone;
    if (p.pigStrips[c] > 0) value -= p.pigStrips[c] * terms.freshForPigs;
    if (p.birdStrips[c] > 0) value -= p.birdStrips[c] * terms.freshForBirds;
    this.slopeOfCell(c, slope, line.touch);
    return value;
  }

  private slopeOfCell(c: number, slope: Prices, touch: number): void {
    const { season, tables, fields, ground } = this;
    const D = season.days;
    const { rows, width } = tables;
    slope.nitrogen[c] -= touch;
    slope.pigStrips[c] -= ground[c].freshForPigs;
    slope.birdStrips[c] -= ground[c].freshForBirds;
    const { stays, hayKg, restMoney } = traceSeason(this.cells[c]);
    slope.hay[0] -= hayKg;
    slope.rest[season.cells[c].field] -= restMoney;
    for (const { group: g, first, last } of stays) {
      const base = (g * fields + season.cells[c].field) * D;
      if (season.groups[g].grazer) slope.starts[base + first] -= 1;
      const strip = season.scenario.groups[g].strip;
      if (strip) (season.groups[g].pig ? slope.pigStrips : slope.birdStrips)[c] += ((last - first + 1) / strip.days) * strip.areaHa;
      for (let t = first; t <= last; t++) {
        slope.presence[base + t] -= 1;
        slope.nitrogen[c] += season.groups[g].nitrogen[t];
        rows.forEach((row, r) => (slope.rows[r * D + t] += (row.stand?.[g][t * width + c + 1] ?? 0) + (t === first ? (row.start?.[g][t * width + c + 1] ?? 0) : 0)));
      }
    }
  }

  /** Keeps prices where they are true: rows and strips never negative, N inside its curve's slopes. */
  clip(p: Prices): void {
    for (let i = 0; i < p.rows.length; i++) if (p.rows[i] < 0) p.rows[i] = 0;
    for (let f = 0; f < p.rest.length; f++) p.rest[f] = Math.min(1, Math.max(0, p.rest[f]));
    p.hay[0] = Math.min(this.hayMost, Math.max(0, p.hay[0]));
    this.ground.forEach((terms, c) => {
      p.nitrogen[c] = Math.min(terms.nitrogenMost, Math.max(terms.nitrogenLeast, p.nitrogen[c]));
      p.pigStrips[c] = Number.isFinite(terms.freshForPigs) ? Math.max(0, p.pigStrips[c]) : 0;
      p.birdStrips[c] = Number.isFinite(terms.freshForBirds) ? Math.max(0, p.birdStrips[c]) : 0;
    });
  }
}

/** What a closing cover is charged, on ground that nobody worked. */
function closingMoney(season: Season, cell: number): (cover: number) => number {
  const { inHand, areaHa } = season.cells[cell];
  if (!inHand[season.days - 1] || !chargedIn(season, "closing-cover", cell, -1)) return () => 0;
  const [wish, price] = ["wish", "price"].map((key) => figures(season, "closing-cover", key)(cell, -1));
  return (cover) => (Math.max(0, wish - cover - HAIR) / 1000) * areaHa * price;
}

/** Slack for comparing with the exact replay, kg DM/ha. */
const HAIR = 1e-6;

/** The longest grazing stay that any rule could allow in a cell: the limit, or while nothing grows as long as grass lasts. */
function longestStay(season: Season, cell: number): number {
  const own = season.cells[cell];
  const [nil, limit] = ["nil-growth", "limit"].map((key) => figures(season, "stay-limit", key));
  let most = 1;
  season.groups.forEach((group, g) => {
    if (!group.grazer || !group.mayEnter[cell]) return;
    most = Math.max(most, limit(cell, g));
    if (!askedIn(season, "stay-limit", cell, g) || own.growth.some((growth) => growth <= nil(cell, g))) most = Math.max(most, grassDays(season, cell, g));
  });
  return Math.min(most, season.days, 1000);
}

/** Days for which a cell full to the ceiling feeds a group, growth included, at the least it ever takes. */
function grassDays(season: Season, cell: number, g: number): number {
  const own = season.cells[cell];
  let least = Infinity;
  season.groups[g].taken.forEach((kg, t) => (season.groups[g].present[t] ? (least = Math.min(least, kg)) : 0));
  const growth = Math.max(...own.growth);
  const gain = least / own.areaHa - growth;
  return gain <= 0 ? season.days : Math.ceil(season.ceiling / gain);
}
