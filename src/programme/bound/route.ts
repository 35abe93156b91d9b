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
  const { open } = { open: season.cells.map((cell) => cell.open) };
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

/** Exact shortest way, by dynamic programme over days backward. */
export function cheapestRoute(season: Season, tables: PathTables, ground: RouteGround, prices: RoutePrices): Route {
  const { days } = season;
  const { group } = ground;
  const fields = season.scenario.fields.length;
  const width = fields + 1;
  const { present, arrives } = season.groups[group];
  const value = new Float64Array((days + 1) * width);
  const next = new Int16Array(days * width).fill(-1);
  const enter = (t: number, k: number): number => {
    if (!ground.start[t * width + k]) return Infinity;
    const at = t * tables.width;
    if (k === 0) return tables.startMoney[group][at] + prices.yardStart[t];
    return tables.haulMoney[group][k - 1] + prices.haul[(k - 1) * days + t];
  };
  const entering = new Float64Array(width);
  let fresh = 0;
  for (let t = days - 1; t >= 0; t--) {
    if (!present[t]) continue;
    const onward = t + 1 < days && present[t + 1] && !arrives[t + 1];
    if (!onward) fresh = t + 1 < days ? freshValue(t + 1) : 0;
    if (onward) for (let k = 0; k < width; k++) entering[k] = enter(t + 1, k) + value[(t + 1) * width + k];
    for (let k = 0; k < width; k++) {
      const state = t * width + k;
      if (!ground.stand[state]) {
        value[state] = Infinity;
        continue;
      }
      const day = k === 0 ? tables.standMoney[group][t * tables.width] + prices.yardStand[t] : prices.presence[(k - 1) * days + t];
      let best = onward ? value[(t + 1) * width + k] : fresh;
      let to = k;
      if (onward) for (let other = 0; other < width; other++) {
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
  function freshValue(from: number): number {
    let t = from;
    while (t < days && !present[t]) t++;
    if (t >= days) return 0;
    let best = Infinity;
    for (let k = 0; k < width; k++) best = Math.min(best, enter(t, k) + value[t * width + k]);
    return best;
  }
  const place = new Int16Array(days).fill(NOWHERE);
  let k = -1;
  for (let t = 0; t < days; t++) {
    if (!present[t]) {
      k = -1;
      continue;
    }
    if (k < 0 || arrives[t]) {
      let best = Infinity;
      for (let other = 0; other < width; other++) {
        const own = enter(t, other) + value[t * width + other];
        if (own < best) {
          best = own;
          k = other;
        }
      }
    }
    place[t] = k - 1;
    k = next[t * width + k];
  }
  return { value: freshValue(0), place };
}
