import { YARD, type Season } from "../../season/season.js";
import type { PathTables } from "../path-tables.js";

/** A group's cheapest way through yard and fields at given prices of being in a field on a day. */
export interface Route {
  readonly value: number;
  /** By day: field, YARD, or -2 where the group is away. */
  readonly place: Int16Array;
}

const NOWHERE = -2;

/** Prices for one group: by field x days + day, what presence costs; and what rows add to yard days, starts and hauls. */
export interface RoutePrices {
  readonly presence: Float64Array;
  readonly yardStand: Float64Array;
  readonly yardStart: Float64Array;
  /** By field x days + day. */
  readonly haul: Float64Array;
}

/** What a group's ways are limited to, worked out once. */
export interface RouteGround {
  readonly group: number;
  /** By day x (fields + 1) + field + 1, the yard first: 1 where it may stand, and where it may begin to. */
  readonly stand: Uint8Array;
  readonly start: Uint8Array;
}

export function routeGround(season: Season, tables: PathTables, group: number): RouteGround {
  const fields = season.scenario.fields.length;
  const stand = new Uint8Array(season.days * (fields + 1));
  const start = new Uint8Array(season.days * (fields + 1));
  const open = season.cells.map((cell) => cell.open);
  for (let t = 0; t < season.days; t++) {
    if (!season.groups[group].present[t]) continue;
    for (let place = YARD; place < season.cells.length; place++) {
      const at = t * tables.width + place + 1;
      if (tables.standOver[group][at] > 0 || (place >= 0 && !(open[place][t] && season.groups[group].mayEnter[place]))) continue;
      const state = t * (fields + 1) + (place < 0 ? 0 : season.cells[place].field + 1);
      stand[state] = 1;
      if (tables.startOver[group][at] <= 0) start[state] = 1;
    }
  }
  return { group, stand, start };
}

/** All that one group's ways are reckoned from. */
interface Ways {
  readonly days: number;
  /** Places: the yard, then the fields. */
  readonly width: number;
  readonly present: Uint8Array;
  readonly arrives: Uint8Array;
  readonly stand: Uint8Array;
  readonly start: Uint8Array;
  /** Own money of yard days and yard starts, by day x stride; of hauls, by field. */
  readonly yardStandMoney: Float64Array;
  readonly yardStartMoney: Float64Array;
  readonly stride: number;
  readonly haulMoney: Float64Array;
  readonly prices: RoutePrices;
  /** By day x places + place, filled from the last day back: what the days from there on come to, and the next day's place. */
  readonly value: Float64Array;
  readonly next: Int16Array;
}

/** Exact shortest way, by dynamic programme over days backward. */
export function cheapestRoute(season: Season, tables: PathTables, ground: RouteGround, prices: RoutePrices): Route {
  const { days } = season;
  const { group, stand, start } = ground;
  const { present, arrives } = season.groups[group];
  const width = season.scenario.fields.length + 1;
  const ways: Ways = {
    days, width, present, arrives, stand, start, yardStandMoney: tables.standMoney[group], yardStartMoney: tables.startMoney[group], stride: tables.width,
    haulMoney: tables.haulMoney[group], prices, value: new Float64Array((days + 1) * width), next: new Int16Array(days * width).fill(-1),
  };
  fillValues(ways);
  return { value: freshValue(ways, 0), place: walkOn(ways) };
}

/** Price of beginning to stand in the yard (0) or in a field on a day. */
function enter({ days, width, start, yardStartMoney, stride, haulMoney, prices }: Ways, t: number, k: number): number {
  if (!start[t * width + k]) return Infinity;
  return k === 0 ? yardStartMoney[t * stride] + prices.yardStart[t] : haulMoney[k - 1] + prices.haul[(k - 1) * days + t];
}

/** Values of all places on all days, the last day first. */
function fillValues(ways: Ways): void {
  const { days, width, present, arrives, value } = ways;
  const entering = new Float64Array(width);
  for (let t = days - 1; t >= 0; t--) {
    if (!present[t]) continue;
    if (t + 1 < days && present[t + 1] && !arrives[t + 1]) {
      for (let k = 0; k < width; k++) entering[k] = enter(ways, t + 1, k) + value[(t + 1) * width + k];
      fillDay(ways, t, entering, 0);
    } else fillDay(ways, t, null, t + 1 < days ? freshValue(ways, t + 1) : 0);
  }
}

/** Values of one day: from `entering` where the group goes on from it, else with what comes after it whatever its place. */
function fillDay({ days, width, stand, yardStandMoney, stride, prices, value, next }: Ways, t: number, entering: Float64Array | null, fresh: number): void {
  for (let k = 0; k < width; k++) {
    const state = t * width + k;
    if (!stand[state]) {
      value[state] = Infinity;
      continue;
    }
    const day = k === 0 ? yardStandMoney[t * stride] + prices.yardStand[t] : prices.presence[(k - 1) * days + t];
    let best = entering ? value[(t + 1) * width + k] : fresh;
    let to = k;
    if (entering) for (let other = 0; other < width; other++) {
      if (other !== k && entering[other] < best) {
        best = entering[other];
        to = other;
      }
    }
    value[state] = day + best;
    next[state] = to;
  }
}

/** Value of the first presence on or after a day, its start paid. */
function freshValue(ways: Ways, from: number): number {
  const { days, width, present, value } = ways;
  let t = from;
  while (t < days && !present[t]) t++;
  if (t >= days) return 0;
  let best = Infinity;
  for (let k = 0; k < width; k++) best = Math.min(best, enter(ways, t, k) + value[t * width + k]);
  return best;
}

/** The way itself: the best place on each first day of presence, and from there on as the values say. */
function walkOn(ways: Ways): Int16Array {
  const { days, width, present, arrives, next } = ways;
  const place = new Int16Array(days).fill(NOWHERE);
  let k = -1;
  for (let t = 0; t < days; t++) {
    if (!present[t]) {
      k = -1;
      continue;
    }
    if (k < 0 || arrives[t]) k = bestStart(ways, t, k);
    place[t] = k - 1;
    k = next[t * width + k];
  }
  return place;
}

/** Cheapest place to be first on a day; `otherwise` where none may be begun. */
function bestStart(ways: Ways, t: number, otherwise: number): number {
  const { width, value } = ways;
  let best = Infinity;
  let k = otherwise;
  for (let other = 0; other < width; other++) {
    const own = enter(ways, t, other) + value[t * width + other];
    if (own < best) {
      best = own;
      k = other;
    }
  }
  return k;
}
