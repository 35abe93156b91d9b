import type { Season } from "../../season/season.js";
import { grownCover } from "../../science/growth.js";
import { askedIn, figures, isOff } from "../half.js";
import { stayWalk, type Levels } from "./levels.js";

/**
 * Where birds may go onto ground that nobody worked before, by what its cover is at least. A level says what cover is at
 * most; how far under it the exact cover can lie grows with each grazing, and is followed here from stay to stay.
 */
export interface ShortGrass {
  /** By day x levels + level: 1 where the cover may be short enough. */
  readonly ready: Uint8Array;
  /** By day: 1 where the untouched cell is short enough. */
  readonly untouched: Uint8Array;
  /** Whether ground grazed down to its residual on the morning t may still be short so many days later. */
  grazed(t: number, since: number): boolean;
}

const HAIR = 1e-6;

/** Null where no bird is kept off long grass. */
export function shortGrass(season: Season, cell: number, grid: Levels): ShortGrass | null {
  const birds = season.groups.map((_, g) => g).filter((g) => season.groups[g].bird && season.groups[g].mayEnter[cell]);
  if (isOff(season, "upper-cover") || birds.length === 0) return null;
  const figure = figures(season, "upper-cover", "birds-barrier");
  const barrier = Math.max(...birds.map((g) => (askedIn(season, "upper-cover", cell, g) ? figure(cell, g) : Infinity))) + HAIR;
  const own = season.cells[cell];
  const least = leastResidual(season, cell);
  const shortFor = Int16Array.from({ length: season.days }, (_, t) => {
    let since = 0;
    while (t + since < season.days && grownCover(least, own.rates[t + since + 1] - own.rates[t], season.ceiling) <= barrier) since++;
    return since;
  });
  return {
    ready: readyDays(season, cell, grid, barrier),
    untouched: Uint8Array.from({ length: season.days }, (_, t) => (grid.untouched[t] <= barrier ? 1 : 0)),
    grazed(t, since) {
      if (since <= shortFor[t]) return true;
      return own.ownerCuts.some((cut) => cut.day >= t && cut.day < t + since);
    },
  };
}

/** Cover that grazing always leaves; next to nothing where no residual is asked. */
function leastResidual(season: Season, cell: number): number {
  return Math.min(...season.groups.map((_, g) => (askedIn(season, "residual-cover", cell, g) ? figures(season, "residual-cover", "grazers")(cell, g) : 1))) - HAIR;
}

/** Follows the least cover of every level forward over all stays that lead to it. */
function readyDays(season: Season, cell: number, grid: Levels, barrier: number): Uint8Array {
  const { days } = season;
  const { count, most } = grid;
  const own = season.cells[cell];
  const may = new Uint8Array(days * count);
  const arriving = Array.from({ length: days + 1 }, () => new Float64Array(count).fill(Infinity));
  const lowest = new Float64Array(count).fill(Infinity);
  const walk = stayWalk(season, cell, true);
  const land = (day: number, level: number, cover: number): void => {
    const logit = grid.logit(cover) - own.rates[day];
    if (logit < arriving[day][level]) arriving[day][level] = logit;
  };
  grid.after.forEach((_, g) => firstLandings(season, grid, g, walk, most, land));
  for (let t = 0; t < days; t++) {
    if (own.ownerCuts.some((cut) => cut.day + 1 === t)) mow(season, cell, grid, lowest, t);
    for (let j = 0; j < count; j++) {
      lowest[j] = Math.min(lowest[j], arriving[t][j]);
      if (lowest[j] === Infinity) continue;
      const cover = grid.coverAt(lowest[j], t);
      if (cover <= barrier) may[t * count + j] = 1;
      grid.after.forEach((after, g) => {
        if (after[(t * count + j) * most] < 0) return;
        walk(g, Math.max(cover, grid.entry(g)), t, most, (n, end) => {
          const level = after[(t * count + j) * most + n - 1];
          if (level >= 0) land(t + n, level, end);
        });
      });
    }
  }
  return may;
}

/** Stays from untouched ground start from its exact cover. */
function firstLandings(season: Season, grid: Levels, g: number, walk: ReturnType<typeof stayWalk>, most: number, land: (day: number, level: number, cover: number) => void): void {
  const first = grid.afterFirst.get(g);
  if (!first) return;
  for (let t = 0; t < season.days; t++) {
    if (first.level[t * most] < 0) continue;
    walk(g, grid.untouched[t], t, most, (n, end) => {
      const level = first.level[t * most + n - 1];
      if (level >= 0) land(t + n, level, end);
    });
  }
}

/** A cut leaves the stubble on open ground, and where none can be shut it takes all higher levels down to the stubble's. */
function mow(season: Season, cell: number, grid: Levels, lowest: Float64Array, t: number): void {
  const stubble = grid.logit(figures(season, "hay-stock", "stubble")(cell, -1)) - season.cells[cell].rates[t];
  for (let j = 0; j < lowest.length; j++) if (lowest[j] < Infinity) lowest[j] = Math.min(lowest[j], stubble);
  const level = grid.mown.find((mown) => mown.morning === t)?.level ?? 0;
  for (let j = 0; j < level; j++) lowest[level] = Math.min(lowest[level], lowest[j]);
}
