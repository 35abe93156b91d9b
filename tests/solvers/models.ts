import type { Model, ModelRow } from "../../src/programme/solver.js";

/** A model typed as people print it: least cost, rows as [name, least, entries, most], columns from 0 up unless limited. */
export interface Printed {
  readonly cost: readonly number[];
  readonly rows: readonly (readonly [name: string, least: number, entries: readonly number[], most: number])[];
  readonly upper?: readonly number[];
  readonly lower?: readonly number[];
  /** All columns whole, or which. */
  readonly whole?: boolean | readonly boolean[];
}

export function modelOf({ cost, rows, upper, lower, whole = false }: Printed): Model {
  const columns = cost.length;
  const rowOf = ([name, least, entries, most]: Printed["rows"][number]): ModelRow => {
    const used = entries.map((_, i) => i).filter((i) => entries[i] !== 0);
    return { name, least, most, columns: used, values: used.map((i) => entries[i]) };
  };
  return {
    columns, cost: Float64Array.from(cost), rows: rows.map(rowOf),
    lower: Float64Array.from(lower ?? cost.map(() => 0)), upper: Float64Array.from(upper ?? cost.map(() => Infinity)),
    whole: Uint8Array.from(cost, (_, i) => ((typeof whole === "boolean" ? whole : whole[i]) ? 1 : 0)),
  };
}

/** Problems whose answers are printed in textbooks, or worked by hand here; figures from memory, answers checked by hand beside. */
export const TEXTBOOK: readonly (Printed & { readonly name: string; readonly value: number; readonly columns: readonly number[] })[] = [
  {
    // Hillier and Lieberman, the glass works: most of 3x + 5y under x <= 4, 2y <= 12, 3x + 2y <= 18. At (2, 6) both last rows are full.
    name: "the glass works", cost: [-3, -5], value: -36, columns: [2, 6],
    rows: [["first works", -Infinity, [1, 0], 4], ["second works", -Infinity, [0, 2], 12], ["third works", -Infinity, [3, 2], 18]],
  },
  {
    // Dantzig's small transport problem: 350 and 600 cases from two plants to markets of 325, 300 and 275; 153.675 thousand dollars.
    // Cheapest by hand: 50 + 300 and 275 + 275 at 0.225, 0.153, 0.225 and 0.126.
    name: "two plants, three markets", cost: [0.225, 0.153, 0.162, 0.225, 0.162, 0.126], value: 153.675, columns: [50, 300, 0, 275, 0, 275],
    rows: [
      ["first plant", -Infinity, [1, 1, 1, 0, 0, 0], 350], ["second plant", -Infinity, [0, 0, 0, 1, 1, 1], 600],
      ["first market", 325, [1, 0, 0, 1, 0, 0], Infinity], ["second market", 300, [0, 1, 0, 0, 1, 0], Infinity], ["third market", 275, [0, 0, 1, 0, 0, 1], Infinity],
    ],
    upper: [50, Infinity, Infinity, Infinity, Infinity, Infinity],
  },
  {
    // Wolsey's kind of rounding trap: most of 5x + 8y under x + y <= 6, 5x + 9y <= 45. Relaxed (2.25, 3.75) and 41.25; whole (0, 5) and 40, not the rounded (2, 3) with 34.
    name: "whole is not rounded", cost: [-5, -8], whole: true, value: -40, columns: [0, 5],
    rows: [["together", -Infinity, [1, 1], 6], ["land", -Infinity, [5, 9], 45]],
  },
  {
    // Beale's example, on which the plain simplex method turns in a circle: -1/20 at (1/25, 0, 1, 0).
    name: "a degenerate corner that cycles", cost: [-0.75, 150, -0.02, 6], value: -0.05, columns: [0.04, 0, 1, 0],
    rows: [["first", -Infinity, [0.25, -60, -0.04, 9], 0], ["second", -Infinity, [0.5, -90, -0.02, 3], 0], ["third", -Infinity, [0, 0, 1, 0], 1]],
  },
  {
    // a knapsack worked by hand: 7 of room, worths 10, 13, 7, weights 3, 4, 2: both first, 23
    name: "a knapsack", cost: [-10, -13, -7], upper: [1, 1, 1], whole: true, value: -23, columns: [1, 1, 0], rows: [["room", -Infinity, [3, 4, 2], 7]],
  },
  {
    // three days, each in one place; ground A cannot be stood on two days in a row: yard at 5, A at 1: 1 + 5 + 1
    name: "three days in one cell or the yard", cost: [1, 1, 1, 5, 5, 5], whole: true, upper: [1, 1, 1, 1, 1, 1], value: 7, columns: [1, 0, 1, 0, 1, 0],
    rows: [
      ["day 1", 1, [1, 0, 0, 1, 0, 0], 1], ["day 2", 1, [0, 1, 0, 0, 1, 0], 1], ["day 3", 1, [0, 0, 1, 0, 0, 1], 1],
      ["rest 1", -Infinity, [1, 1, 0, 0, 0, 0], 1], ["rest 2", -Infinity, [0, 1, 1, 0, 0, 0], 1],
    ],
  },
];
