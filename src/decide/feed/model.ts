import { farmFigure, farmWide } from "../../programme/half.js";
import type { Model } from "../../programme/solver.js";
import type { Season } from "../../season/season.js";
import { columnsOf, layoutOf, type Columns, type Layout } from "./layout.js";
import { givenRows, momentRows, needRows, storeRow, supplyRows, walkRows } from "./rows.js";

/** A season's budget as a linear programme: areas in ha, feed in t of dry matter, hay in t as stored, money. */
export interface Programme extends Layout {
  readonly model: Model;
  readonly at: Columns;
  readonly rowOf: Rows;
}

/** Where rows stand in the model. */
export interface Rows {
  /** Row of a moment is its place in the list. */
  need(group: number, week: number): number;
  readonly store: number;
  /** Of hay given, by month in order. */
  readonly given: number;
}

/** Seconds after which a solve is given up, on the slowest machine: none of a usual farm takes more than one or two. */
export const GUARD_SECONDS = 600;

/** Money so small that it only settles ties: grass rather than hay, and hay no sooner than it must be. */
const RATHER = 0.01;

/**
 * The budget that costs least: hay, days in the yard, mowing, and what the rules charge for the use of grass. Hectares go
 * from use to use by exact regrowth; a group's week is fed with what they give, or with hay.
 */
export function programmeOf(season: Season): Programme {
  const layout = layoutOf(season);
  const at = columnsOf(layout);
  const [moments, supply, needs] = [momentRows(layout), supplyRows(layout, at), needRows(layout, at)];
  const rows = [...moments, ...supply, ...needs, storeRow(layout, at), ...givenRows(layout, at), ...walkRows(layout, at)];
  const [first, W] = [moments.length + supply.length, layout.weeks.length];
  const upper = new Float64Array(at.count).fill(Infinity);
  layout.needs.forEach((byWeek, g) => byWeek.forEach(({ outDays }, w) => {
    if (outDays === 0) upper[at.hay(g, w)] = upper[at.given(g, w)] = 0;
  }));
  const store = first + needs.length;
  return {
    ...layout, at,
    model: { columns: at.count, cost: costsOf(layout, at), lower: new Float64Array(at.count), upper, whole: new Uint8Array(at.count), rows },
    rowOf: { need: (g, w) => first + g * W + w, store, given: store + 1 },
  };
}

function costsOf({ season, ways, needs, weeks, walks }: Layout, at: Columns): Float64Array {
  const cost = new Float64Array(at.count);
  ways.ways.forEach((way, i) => (cost[i] = way.money));
  needs.forEach((byWeek, g) => byWeek.forEach(({ dayMoney }, w) => {
    cost[at.hay(g, w)] = dayMoney.hay + dayMoney.yard + RATHER * (2 - w / weeks.length);
    cost[at.given(g, w)] = dayMoney.yard + RATHER;
  }));
  cost[at.short] = shortPrice(season);
  walks.forEach((_, i) => (cost[at.walk(i)] = farmFigure(season, "grass-in-hand", "price")));
  return cost;
}

/** Money for a tonne that the winter's hay is short of. */
function shortPrice(season: Season): number {
  if (!farmWide(season, "hay-stock")) return 0;
  return season.scenario.prices.hayPerKg * 10 * farmFigure(season, "hay-stock", "short-share");
}
