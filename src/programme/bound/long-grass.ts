import type { Season } from "../../season/season.js";
import { askedIn, chargedIn, figures } from "../half.js";
import { leastLogits } from "./least-cover.js";
import type { Levels } from "./levels.js";
import type { Cuts } from "./mowing.js";

/** What long grass costs a cell that nobody but grazers used, and how long birds may stay on it. Nothing here is too harsh. */
export interface LongGrass {
  /** Charge of the weekly walk by day x levels + level; null where there is none. */
  readonly walk: Float64Array | null;
  /** The same on ground that nobody used at all, by day. */
  readonly walkUntouched: Float64Array;
  /** Where birds are asked how long the grass is; null where no bird is. */
  readonly birds: BirdsGrass | null;
}

interface BirdsGrass {
  /** By day x levels + level: the last morning on which a stay may end that begins that day; the day itself where none may begin. */
  readonly until: Int16Array;
  /** The same of a stay on ground that was worked before, by day. */
  readonly untilWorked: Int16Array;
  /** By morning after a grazing: the last morning on which birds may begin, with grass that grows from the residual. */
  readonly shortUntil: Int16Array;
  /** Days on which a stay may go on after the last day that is short enough to take ground. */
  readonly week: number;
  /** On ground that nobody used, by day: 1 where a stay may begin, and where one may stand. */
  readonly mayBegin: Uint8Array;
  readonly mayStand: Uint8Array;
  /** Charges of birds' lots as sums before each day of a stay, by day x levels + level. */
  readonly lots: Float64Array;
  /** The same by day on ground that nobody used: not summed. */
  readonly lotsUntouched: Float64Array;
}

const HAIR = 1e-6;

export function longGrass(season: Season, cell: number, grid: Levels, cuts: Cuts): LongGrass {
  const least = leastLogits(season, cell, grid, cuts);
  const birds = season.groups.map((_, g) => g).filter((g) => season.groups[g].bird && season.groups[g].mayEnter[cell]);
  const walked = walkMoney(season, cell);
  const coverOf = (t: number, j: number): number => (least ? grid.coverAt(least[t * grid.count + j], t) : 0);
  const table = (of: (cover: number, t: number) => number): Float64Array => {
    const values = new Float64Array(season.days * grid.count);
    for (let t = 0; t < season.days; t++) for (let j = 0; j < grid.reach[t]; j++) values[t * grid.count + j] = of(coverOf(t, j), t);
    return values;
  };
  return {
    walk: walked ? table(walked) : null,
    walkUntouched: Float64Array.from({ length: season.days }, (_, t) => walked?.(grid.untouched[t], t) ?? 0),
    birds: least && birds.length > 0 ? birdsGrass(season, cell, birds, grid, least, table) : null,
  };
}

/** Charge of the weekly walk at a cover, 0 on other days; null where long grass is not charged. */
function walkMoney(season: Season, cell: number): ((cover: number, t: number) => number) | null {
  if (!chargedIn(season, "upper-cover", cell, -1)) return null;
  const [long, price] = ["long", "long-price"].map((key) => figures(season, "upper-cover", key)(cell, -1));
  if (!Number.isFinite(long * price)) return null;
  const { open, areaHa } = season.cells[cell];
  const walks = new Set(season.walks);
  return (cover, t) => (walks.has(t) && open[t] ? (Math.max(0, cover - HAIR - long) / 1000) * areaHa * price : 0);
}

function birdsGrass(
  season: Season, cell: number, birds: readonly number[], grid: Levels, least: Float64Array, table: (of: (cover: number, t: number) => number) => Float64Array,
): BirdsGrass {
  const { days } = season;
  const { count } = grid;
  const { rates } = season.cells[cell];
  const barrier = Math.max(...birds.map((g) => (askedIn(season, "upper-cover", cell, g) ? figures(season, "upper-cover", "birds-barrier")(cell, g) : Infinity))) + HAIR;
  // Lots are split off at the start of each seven days; a stay may still end within the last of them.
  const week = Math.max(...birds.map((g) => 6 + (season.scenario.groups[g].strip?.days ?? 1)));
  const wall = barrier < season.ceiling ? grid.logit(barrier) : Infinity;
  /** The last day from t on with at most the barrier: ground is taken on such days only, and for a week at most. */
  const lastShort = (logit: number, t: number): number => {
    if (logit + rates[t] > wall) return t - 1;
    let low = t;
    let high = days;
    while (low < high) {
      const mid = (low + high + 1) >> 1;
      if (logit + rates[mid] <= wall) low = mid;
      else high = mid - 1;
    }
    return low;
  };
  const end = (logit: number, t: number): number => {
    const last = lastShort(logit, t);
    return last < t ? t : Math.min(days, last + week);
  };
  const from = (cover: number, of: (logit: number, t: number) => number): Int16Array => Int16Array.from({ length: days }, (_, t) => of(grid.logit(cover) - rates[t], t));
  const until = Int16Array.from({ length: days * count }, (_, i) => end(least[i], Math.floor(i / count)));
  const mayBegin = Uint8Array.from({ length: days }, (_, t) => (grid.untouched[t] <= barrier ? 1 : 0));
  const money = lotMoney(season, cell, birds);
  const untouched = Float64Array.from({ length: days }, (_, t) => money(grid.untouched[t]));
  return {
    until, mayBegin, week, untilWorked: from(leastWorked(season, cell), end), shortUntil: from(leastGrazed(season, cell), lastShort),
    mayStand: mayBegin.map((_, t) => (mayBegin.subarray(Math.max(0, t - week + 1), t + 1).includes(1) ? 1 : 0)),
    lots: sumsAlong(table(money), days, count, week),
    lotsUntouched: untouched.map((_, t) => Math.min(...untouched.subarray(Math.max(0, t - week + 1), t + 1)) / week),
  };
}

/** What a lot is charged at a cover of the ground that it is taken from, at least; nothing where lots are rarer than weeks. */
function lotMoney(season: Season, cell: number, birds: readonly number[]): (cover: number) => number {
  const charged = birds.every((g) => chargedIn(season, "upper-cover", cell, g));
  const wished = Math.max(...birds.map((g) => figures(season, "upper-cover", "birds-wished")(cell, g)));
  const price = Math.min(...birds.map((g) => figures(season, "upper-cover", "birds-price")(cell, g)));
  if (!charged || !Number.isFinite(wished * price)) return () => 0;
  return (cover) => (Math.max(0, cover - HAIR - wished) / 1000) * price;
}

/** Sums before each day, level by level: each day bears its share of the cheapest lot of the week before it. */
function sumsAlong(lots: Float64Array, days: number, count: number, week: number): Float64Array {
  const sums = new Float64Array((days + 1) * count);
  for (let t = 0; t < days; t++) {
    for (let j = 0; j < count; j++) {
      let least = Infinity;
      for (let d = Math.max(0, t - week + 1); d <= t; d++) least = Math.min(least, lots[d * count + j]);
      sums[(t + 1) * count + j] = sums[t * count + j] + least / week;
    }
  }
  return sums;
}

/** Cover that grazing always leaves; next to nothing where no residual is asked. */
function leastGrazed(season: Season, cell: number): number {
  return Math.min(...season.groups.map((_, g) => (askedIn(season, "residual-cover", cell, g) ? figures(season, "residual-cover", "grazers")(cell, g) : 1))) - HAIR;
}

/** Cover that no part of a cell is below, whoever used it. */
function leastWorked(season: Season, cell: number): number {
  const least = season.groups.flatMap((group, g) => {
    if (!group.mayEnter[cell]) return [];
    if (group.pig) return [figures(season, "after-pigs", "cover")(cell, g)];
    return group.bird ? [figures(season, "demand-met", "least-standing")(cell, g)] : [];
  });
  return Math.max(1, Math.min(...least, leastGrazed(season, cell), figures(season, "hay-stock", "stubble")(cell, -1), season.cells[cell].startCover) - HAIR);
}

