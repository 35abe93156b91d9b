import type { Season } from "../../season/season.js";
import { figures, isOff } from "../half.js";
import type { Levels } from "./levels.js";
import { stayWalk } from "./levels.js";
import type { Cuts } from "./mowing.js";

/** Slack of logits. */
const HAIR = 1e-9;

/**
 * What cover is at least on ground that nobody but grazers used: by day x levels + level, in logit less the growth so far.
 * A level says what cover is at most; how far under it the exact cover can lie grows with each grazing, and is followed
 * here from stay to stay. Null where long grass is no matter anywhere.
 */
export function leastLogits(season: Season, cell: number, grid: Levels, cuts: Cuts): Float64Array | null {
  if (isOff(season, "upper-cover")) return null;
  const { days } = season;
  const { count } = grid;
  const own = season.cells[cell];
  const table = new Float64Array(days * count);
  const arriving = Array.from({ length: days + 1 }, () => new Float64Array(count).fill(Infinity));
  // A cover that is known exactly stands on the level at or above it: it is above the next level at least.
  const lowest = Float64Array.from({ length: count }, (_, j) => grid.logit(grid.cover(j + 1, 0)) - own.rates[0] - HAIR);
  const land = (day: number, level: number, cover: number): void => {
    const logit = grid.logit(cover) - own.rates[day];
    if (logit < arriving[day][level]) arriving[day][level] = logit;
  };
  firstLandings(season, cell, grid, land);
  const stubble = figures(season, "hay-stock", "stubble")(cell, -1);
  for (let t = 0; t < days; t++) {
    if (own.ownerCuts.some((cut) => cut.day + 1 === t)) mow(season, cell, grid, cuts, lowest, t);
    for (let j = 0; j < count; j++) lowest[j] = Math.min(lowest[j], arriving[t][j]);
    table.set(lowest, t * count);
    landings(season, cell, grid, lowest, t, land);
    // A cut of the planner's leaves the stubble, or less where less stood.
    if (cuts.mower[t] === Infinity || (cuts.tall[t] === 0 && cuts.untouchedKg[t] < 0)) continue;
    land(t + 1, cuts.stubble[t], Math.min(stubble, grid.untouched[t + 1], ...coversOf(grid, lowest, t + 1, cuts.tall[t])));
  }
  return table;
}

function coversOf(grid: Levels, lowest: Float64Array, morning: number, tall: number): number[] {
  return Array.from({ length: tall }, (_, j) => grid.coverAt(lowest[j], morning));
}

/** Stays that begin on day t, from the least cover of every level. */
function landings(season: Season, cell: number, grid: Levels, lowest: Float64Array, t: number, land: (day: number, level: number, cover: number) => void): void {
  const { count, most, reach } = grid;
  const walk = stayWalk(season, cell, true);
  for (let j = 0; j < reach[t]; j++) {
    const cover = grid.coverAt(lowest[j], t);
    grid.after.forEach((after, g) => {
      const base = (t * count + j) * most;
      if (after[base] < 0) return;
      walk(g, Math.max(cover, grid.entry(g)), t, most, (n, end) => {
        const level = after[base + n - 1];
        if (level >= 0) land(t + n, level, end);
      });
    });
  }
}

/** Stays from untouched ground start from its exact cover. */
function firstLandings(season: Season, cell: number, grid: Levels, land: (day: number, level: number, cover: number) => void): void {
  const walk = stayWalk(season, cell, true);
  grid.afterFirst.forEach((first, g) => {
    for (let t = 0; t < season.days; t++) {
      if (first.level[t * grid.most] < 0) continue;
      walk(g, grid.untouched[t], t, grid.most, (n, end) => {
        const level = first.level[t * grid.most + n - 1];
        if (level >= 0) land(t + n, level, end);
      });
    }
  });
}

/** A cut leaves the stubble on open ground, and where none can be shut it takes all higher levels down to the stubble's. */
function mow(season: Season, cell: number, grid: Levels, cuts: Cuts, lowest: Float64Array, t: number): void {
  const stubble = grid.logit(figures(season, "hay-stock", "stubble")(cell, -1)) - season.cells[cell].rates[t];
  for (let j = 0; j < lowest.length; j++) lowest[j] = Math.min(lowest[j], stubble);
  const level = cuts.owners.find((cut) => cut.evening + 1 === t)?.level ?? 0;
  for (let j = 0; j < level; j++) lowest[level] = Math.min(lowest[level], lowest[j]);
}
