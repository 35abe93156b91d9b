import { sumsBefore } from "../bound/cell-terms.js";
import type { RowTables } from "../path-tables.js";
import { cellConstant, rowMoney, type PriceGround, type WholePrices } from "./whole-prices.js";

/** What stays and cuts in one cell come to at prices of the whole bound, besides the money that the cell's own season tells. */
export interface CellPrices {
  /** Days of a group's stay and its start, steps of its pen counted, less what presence and starts are paid. */
  stay(group: number, first: number, last: number): number;
  /** The straight lines that stand for nitrogen, strips and wants while the season is not over. */
  lines(group: number, first: number, last: number): number;
  /** Constant of those lines. */
  readonly constant: number;
  /** What a cut of the planner's costs at least on an evening, beyond what the bound counts anyhow; Infinity where none may be. */
  mowing(day: number): number;
  /** Worth of a kilogram of hay. */
  readonly hay: number;
  /** Least of all seasons of the cell, by the bound. */
  readonly least: number;
}

/** Prices of one cell. The bound must have been judged at these prices last: its tables are read. */
export function cellPrices(ground: PriceGround, cell: number, p: WholePrices): CellPrices {
  const { bound } = ground;
  const { season, tables } = bound;
  const { days, groups } = season;
  const { worth } = bound.ground[cell];
  const place = (t: number): number => t * tables.width + cell + 1;
  const perDay = (of: (g: number, t: number) => number): Float64Array[] => groups.map((_, g) => Float64Array.from({ length: days }, (_d, t) => of(g, t)));
  const rows = (t: number, amount: (row: RowTables) => number): number => rowMoney(bound, p.rows, t, amount);
  const stand = perDay((g, t) => tables.standMoney[g][place(t)] - ground.paidFor(p, g, cell, t) + rows(t, (row) => row.stand?.[g][place(t)] ?? 0)).map(sumsBefore);
  const start = perDay((g, t) => tables.startMoney[g][place(t)] - p.starts[ground.at(g, cell, t)] + rows(t, (row) => row.start?.[g][place(t)] ?? 0));
  const step = perDay((g, t) => rows(t, (row) => row.step?.[g][t] ?? 0));
  const nitrogen = groups.map((group) => sumsBefore(group.nitrogen));
  const strips = groups.map((group, g) => (group.pig ? p.pigStrips[cell] : group.bird ? p.birdStrips[cell] : 0) - worth[g]);
  const constant = cellConstant(bound, cell, p);
  return {
    stay(g, first, last) {
      let money = start[g][first] + stand[g][last + 1] - stand[g][first];
      const strip = season.scenario.groups[g].strip;
      if (strip) for (let t = first + strip.days; t <= last; t += strip.days) money += step[g][t];
      return money;
    },
    lines(g, first, last) {
      const money = (nitrogen[g][last + 1] - nitrogen[g][first]) * p.nitrogen[cell];
      const strip = season.scenario.groups[g].strip;
      if (!strip) return money;
      // Strips begun are days / strip.days rounded up; where they are worth something, the first counts whole.
      const whole = strips[g] < 0 && !groups[g].pig ? 1 - 1 / strip.days : 0;
      return money + strips[g] * strip.areaHa * ((last - first + 1) / strip.days + whole);
    },
    constant,
    mowing: (day) => bound.cells[cell].cuts.mower[day],
    hay: p.hay[0],
    least: bound.cells[cell].first[0][0] + constant,
  };
}
