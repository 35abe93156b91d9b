import type { Season } from "../../season/season.js";
import type { CellState } from "../cell-state.js";
import type { CellContext } from "./context.js";

/** Sums of a group's nitrogen before a day, by calendar year of the season. */
export function nitrogenSums(season: Season): Float64Array[][] {
  return season.groups.map((group) =>
    [0, 1, 2].map((year) => {
      const sums = new Float64Array(season.days + 1);
      for (let t = 0; t < season.days; t++) sums[t + 1] = sums[t] + (season.year[t] === year ? group.nitrogen[t] : 0);
      return sums;
    }),
  );
}

/** What a group drops on a cell in a stay. */
export function dropNitrogen({ season, nitrogen, lastYear, windows }: CellContext, s: CellState, g: number, first: number, last: number): void {
  const sums = nitrogen[g];
  for (let y = 0; y <= lastYear; y++) {
    const kg = sums[y][last + 1] - sums[y][first];
    s.nitrogen += kg;
    s.nitrogenByYear[y] += kg;
  }
  if (!windows) return;
  for (let t = first; t <= last; t++) s.deposits.push(t, season.groups[g].nitrogen[t] / season.cells[s.cell].areaHa);
}
