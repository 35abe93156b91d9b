import { hayMadeKg } from "../../science/hay.js";
import { YARD, type Season } from "../../season/season.js";
import type { CellSimulator } from "../cell-simulator.js";
import { askedIn, farmFigure, farmWide, figures } from "../half.js";
import type { PathTables } from "../path-tables.js";
import { CellBound } from "./cell-bound.js";
import { cellTerms } from "./cell-terms.js";
import { traceSeason } from "./cell-trace.js";
import { groundTerms, type GroundTerms } from "./ground-terms.js";
import { cellLevels } from "./levels.js";
import { cheapestRoute, routeGround, type RouteGround } from "./route.js";
import { shortGrass } from "./short-grass.js";
import { stayPrices } from "./stay-prices.js";

/** All prices of the bound, as one flat list each. */
export interface Prices {
  /** Group x fields x days: price of standing in a field on a day. */
  readonly presence: Float64Array;
  /** Rows x days, never negative. */
  readonly rows: Float64Array;
  /** By cell: slope a kg N; price of a fresh hectare for pigs and for birds, never negative. */
  readonly nitrogen: Float64Array;
  readonly pigStrips: Float64Array;
  readonly birdStrips: Float64Array;
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
  readonly fields: number;
  /** Money no plan avoids and no cell knows: the mower's coming for the owner's own cuts. */
  readonly always: number;

  constructor(readonly season: Season, simulator: CellSimulator, readonly tables: PathTables, step: number) {
    this.fields = season.scenario.fields.length;
    this.cells = season.cells.map((_, c) => {
      const most = longestStay(season, c);
      const levels = cellLevels(season, c, step, most);
      return new CellBound(season, c, levels, cellTerms(season, c, levels, stayPrices(simulator, tables, c, most)), shortGrass(season, c, levels), mowingMoney(season, c));
    });
    this.ground = season.cells.map((_, c) => groundTerms(season, c));
    this.routes = season.groups.map((_, g) => routeGround(season, tables, g));
    const cutDays = new Set(season.cells.flatMap((cell) => cell.ownerCuts.map((cut) => cut.day)));
    this.always = !farmWide(season, "hay-stock") ? 0 : Math.max(winterHay(season), cutDays.size * farmFigure(season, "hay-stock", "together") * season.scenario.prices.mowingPerHa);
  }

  /** No prices at all: nothing is worth anything anywhere. */
  zero(): Prices {
    const { season } = this;
    const cells = season.cells.length;
    return {
      presence: new Float64Array(season.groups.length * this.fields * season.days),
      rows: new Float64Array(this.tables.rows.length * season.days),
      nitrogen: new Float64Array(cells), pigStrips: new Float64Array(cells), birdStrips: new Float64Array(cells),
    };
  }

  judge(p: Prices): Judged {
    const slope = this.zero();
    let value = this.always;
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
    const route = cheapestRoute(season, tables, this.routes[g], {
      presence: p.presence.subarray(g * size, (g + 1) * size),
      yardStand: Float64Array.from(days, (t) => this.rowMoney(p, t, (r) => rows[r].stand?.[g][t * width] ?? 0)),
      yardStart: Float64Array.from(days, (t) => this.rowMoney(p, t, (r) => rows[r].start?.[g][t * width] ?? 0)),
      haul,
    });
    for (const t of days) {
      const place = route.place[t];
      if (place < YARD) continue;
      if (place >= 0) slope.presence[g * size + place * D + t] += 1;
      const enters = t === 0 || season.groups[g].arrives[t] || route.place[t - 1] !== place;
      rows.forEach((row, r) => {
        let used = place === YARD ? (row.stand?.[g][t * width] ?? 0) : 0;
        if (enters) used += place === YARD ? (row.start?.[g][t * width] ?? 0) : (row.haul?.[g][place] ?? 0);
        slope.rows[r * D + t] += used;
      });
    }
    return route.value;
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
    const rowStart = season.groups.map((_, g) => Float64Array.from({ length: D }, (_d, t) => this.rowMoney(p, t, (r) => rows[r].start?.[g][t * width + c + 1] ?? 0)));
    const strips = season.groups.map((group, g) => (group.pig ? p.pigStrips[c] : group.bird ? p.birdStrips[c] : 0) - terms.worth[g]);
    const line = terms.nitrogen(p.nitrogen[c]);
    let value = this.cells[c].solve({ reward, rowStart, nitrogen: p.nitrogen[c], strips }) + line.constant + terms.undone;
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
    for (const { group: g, first, last } of traceSeason(this.cells[c])) {
      const base = (g * fields + season.cells[c].field) * D;
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
    this.ground.forEach((terms, c) => {
      p.nitrogen[c] = Math.min(terms.nitrogenMost, Math.max(terms.nitrogenLeast, p.nitrogen[c]));
      p.pigStrips[c] = Number.isFinite(terms.freshForPigs) ? Math.max(0, p.pigStrips[c]) : 0;
      p.birdStrips[c] = Number.isFinite(terms.freshForBirds) ? Math.max(0, p.birdStrips[c]) : 0;
    });
  }
}

/**
 * What the winter's hay costs at least: each kilogram that is lacking is bought short, or mown on the most grass that a
 * hectare can hold. 0 where nothing is lacking.
 */
function winterHay(season: Season): number {
  const { hay, prices, cells } = season.scenario;
  const lacking = Math.max(0, hay.winterNeedKg - hay.inStoreKg);
  const [stubble, loss] = ["stubble", "making-loss"].map((key) => figures(season, "hay-stock", key));
  const most = Math.max(...cells.map((_, c) => hayMadeKg(season.ceiling, stubble(c, -1), 1, loss(c, -1) / 100, hay.dryMatter)));
  const short = prices.hayPerKg * (farmFigure(season, "hay-stock", "short-share") / 100);
  return lacking * Math.min(short, most > 0 ? prices.mowingPerHa / most : Infinity);
}

/** What a cut of the planner's costs at least: the mower over the cell, or nothing where hay is no matter; no cut where none may be. */
function mowingMoney(season: Season, cell: number): number {
  if (!season.cells[cell].mow && askedIn(season, "hay-stock", cell, -1)) return Infinity;
  // Where the winter's hay is lacking, mowing is counted there.
  if (!farmWide(season, "hay-stock") || winterHay(season) > 0) return 0;
  // On the evening of an owner's cut the mower is there, paid for so much ground.
  const paid = season.cells.some((own) => own.ownerCuts.length > 0) ? farmFigure(season, "hay-stock", "together") : 0;
  return Math.max(0, season.cells[cell].areaHa - paid) * season.scenario.prices.mowingPerHa;
}

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
