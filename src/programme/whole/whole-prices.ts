import type { SeasonBound } from "../bound/bound.js";
import type { RowTables } from "../path-tables.js";

/** Prices by cell, not by field: of a group's standing in a cell on a day, and of its coming into it. The rest as the season's bound has them. */
export interface WholePrices {
  readonly presence: Float64Array;
  readonly starts: Float64Array;
  readonly rows: Float64Array;
  readonly nitrogen: Float64Array;
  readonly pigStrips: Float64Array;
  readonly birdStrips: Float64Array;
  readonly hay: Float64Array;
}

/** Where prices lie in their lists, and what they come to in the part of all plans that is looked at. */
export interface PriceGround {
  readonly bound: SeasonBound;
  /** Place of a group, cell and day in the lists of presence and starts. */
  at(group: number, cell: number, day: number): number;
  mayStand(group: number, place: number, day: number): boolean;
  /** What a cell is paid for a group's day in it. */
  paidFor(p: WholePrices, group: number, cell: number, day: number): number;
}

/** What rows charge at their prices on a day. */
export function rowMoney({ tables, season }: SeasonBound, prices: Float64Array, t: number, amount: (row: RowTables) => number): number {
  let money = 0;
  for (let r = 0; r < tables.rows.length; r++) {
    const price = prices[r * season.days + t];
    if (price > 0) money += price * amount(tables.rows[r]);
  }
  return money;
}

/** What a cell's season costs whatever is done in it, at its prices of nitrogen and strips. */
export function cellConstant({ ground }: SeasonBound, cell: number, p: WholePrices): number {
  const { nitrogen, undone, freshForPigs, freshForBirds } = ground[cell];
  const fresh = (p.pigStrips[cell] > 0 ? p.pigStrips[cell] * freshForPigs : 0) + (p.birdStrips[cell] > 0 ? p.birdStrips[cell] * freshForBirds : 0);
  return nitrogen(p.nitrogen[cell]).constant + undone - fresh;
}
