import type { Season } from "../../season/season.js";
import { askedIn, figures } from "../half.js";

/** True when no ground of birds or pigs can be shut on a cut's evening, and so be left long by it. */
export function cutsAll(season: Season, cell: number, day: number): boolean {
  const [birds, back, reseeded] = [figures(season, "worked-ground", "birds"), figures(season, "after-pigs", "back"), figures(season, "after-pigs", "reseeded")];
  return season.groups.every((group, g) => {
    if (group.grazer || !group.mayEnter[cell]) return true;
    const shut = group.pig ? Math.max(back(cell, g), reseeded(cell, g)) : birds(cell, g);
    for (let t = Math.max(0, Math.ceil(day - shut)); t <= day; t++) if (season.cells[cell].open[t] && group.out[t]) return false;
    return true;
  });
}

/** Least cover that the planner may cut; Infinity where it may not cut at all. */
export function leastToCut(season: Season, cell: number): number {
  if (!askedIn(season, "hay-stock", cell, -1)) return 0;
  return season.cells[cell].mow ? figures(season, "hay-stock", "cut-from")(cell, -1) : Infinity;
}
