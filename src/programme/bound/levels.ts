import type { Season } from "../../season/season.js";
import { grownCover } from "../../science/growth.js";
import { askedIn, figures } from "../half.js";
import { cutsAll, leastToCut } from "./cut-ground.js";

/**
 * Cover as levels of untouched growth: level j is the trajectory whose logit starts j steps below the cell's own.
 * Waiting keeps the level, so it is rounded once a stay, and always up: no cover of the exact season is above its level.
 */
export interface Levels {
  readonly count: number;
  /** By group (grazers only): [(day x count + level) x most + days - 1] = level after the stay, or -1 where it cannot be. */
  readonly after: ReadonlyMap<number, Int16Array>;
  /** Longest stay in the tables. */
  readonly most: number;
  /** By group: level and money after a first pass from the untouched ground: [day x most + days - 1], -1 where it cannot be. */
  readonly afterFirst: ReadonlyMap<number, { readonly level: Int16Array; readonly money: Float64Array }>;
  /** Levels worth asking on each morning: none lower can be, while grazing leaves its residual. */
  readonly reach: Int16Array;
  /** Cover of each morning while nobody grazes, all the owner's cuts made: the least there is where nobody was. */
  readonly untouched: Float64Array;
  /** The same with those of the owner's cuts only that are sure to take all of it: the most there is. */
  readonly untouchedMost: Float64Array;
  /** Cover of a level on a morning. */
  cover(level: number, day: number): number;
  logit(cover: number): number;
  /** Lowest level that a cover on a morning is not above; 0 where it is above all. */
  levelOf(cover: number, day: number): number;
  /** Cover on a day of ground whose logit less the growth so far is this. */
  coverAt(logit: number, day: number): number;
  /** Least cover at which a group may start grazing on ground that was grazed before. */
  entry(group: number): number;
}

/** Slack for comparing with the exact replay, kg DM/ha: a bound may be a hair too kind, never too harsh. */
const HAIR = 1e-6;

/** Levels of one cell, `step` apart in logit. Longer steps are coarser and still true. */
export function cellLevels(season: Season, cell: number, step: number, most: number): Levels {
  const own = season.cells[cell];
  const K = season.ceiling;
  const logit = (cover: number): number => Math.log(cover / (K - cover));
  const top = logit(Math.min(own.startCover, K * 0.9999)) + 1e-12;
  const lowest = logit(Math.max(50, Math.min(own.startCover, 1000)) / 1.5) - own.rates[season.days];
  const count = Math.ceil((top - lowest) / step) + 1;
  const cover = (level: number, day: number): number => K / (1 + Math.exp(-(top - level * step + own.rates[day])));
  const levelOf = (value: number, day: number): number => {
    const at = (top - logit(Math.min(value, K * 0.999999)) + own.rates[day]) / step;
    return Math.max(0, Math.min(count - 1, Math.floor(at + 1e-9)));
  };
  const walk = stayWalk(season, cell);
  const untouched = untouchedCover(season, cell, (day) => cutsAll(season, cell, day));
  const after = new Map<number, Int16Array>();
  const afterFirst = new Map<number, { level: Int16Array; money: Float64Array }>();
  season.groups.forEach((group, g) => {
    if (!group.grazer || !group.mayEnter[cell]) return;
    after.set(g, grazingTable(season, cell, g, entryByDay(season, cell, g, untouched), { count, most, cover, levelOf, walk }));
    afterFirst.set(g, firstPass(season, cell, g, most, untouched, levelOf, walk));
  });
  const entries = season.groups.map((_, g) => Math.min(...entryByDay(season, cell, g, untouched)));
  return {
    count, after, most, afterFirst, logit, levelOf, cover,
    reach: reachOf(season, cell, count, levelOf), untouched: untouchedCover(season, cell, () => true), untouchedMost: untouched,
    coverAt: (x, day) => K / (1 + Math.exp(-(x + own.rates[day]))),
    entry: (g) => entries[g],
  };
}

interface Grid {
  readonly count: number;
  readonly most: number;
  cover(level: number, day: number): number;
  levelOf(cover: number, day: number): number;
  readonly walk: StayWalk;
}

/** Level after every stay of a group, by day, level and days. */
function grazingTable(season: Season, cell: number, g: number, entries: Float64Array, { count, most, cover, levelOf, walk }: Grid): Int16Array {
  const table = new Int16Array(season.days * count * most).fill(-1);
  for (let t = 0; t < season.days; t++) {
    if (!season.groups[g].out[t] || !season.cells[cell].open[t]) continue;
    for (let j = 0; j < count; j++) {
      const start = cover(j, t);
      if (start < entries[t] - HAIR) break;
      walk(g, start, t, most, (days, end) => (table[(t * count + j) * most + days - 1] = levelOf(end, t + days)));
    }
  }
  return table;
}

/** Least cover at which a group may start on ground that was grazed or mown before; lower in spring where a cut may come before the first pass. */
function entryByDay(season: Season, cell: number, g: number, untouched: Float64Array): Float64Array {
  if (!askedIn(season, "entry-cover", cell, g)) return new Float64Array(season.days);
  const [full, low, days] = ["grazers", "first-pass", "first-pass-days"].map((key) => figures(season, "entry-cover", key)(cell, g));
  const from = leastToCut(season, cell);
  const cut = untouched.findIndex((cover, t) => t > 0 && cover >= from);
  return Float64Array.from({ length: season.days }, (_, t) => (cut >= 0 && cut <= t && t < days ? Math.min(low, full) : full));
}

/** Grazed ground is never under its residual, nor mown ground under its stubble; all levels where no residual is asked. */
function reachOf(season: Season, cell: number, count: number, levelOf: (value: number, day: number) => number): Int16Array {
  const own = season.cells[cell];
  const grazers = season.groups.map((_, g) => g).filter((g) => season.groups[g].grazer);
  if (!grazers.every((g) => askedIn(season, "residual-cover", cell, g))) return new Int16Array(season.days + 1).fill(count);
  const residuals = grazers.map((g) => figures(season, "residual-cover", "grazers")(cell, g));
  const lowest = Math.min(own.startCover, figures(season, "hay-stock", "stubble")(cell, -1), ...residuals) - 1;
  return Int16Array.from({ length: season.days + 1 }, (_, t) => Math.min(count, levelOf(lowest, t) + 2));
}

type StayWalk = (group: number, start: number, day: number, most: number, seen: (days: number, end: number) => void) => void;

/**
 * Walks a grazing stay day by day on the whole cell, as long as the residual is left. From a cover that is only the
 * least there can be, `atLeast` keeps to the residual instead: the exact stay is known to have left it.
 */
export function stayWalk(season: Season, cell: number, atLeast = false): StayWalk {
  const own = season.cells[cell];
  const residual = figures(season, "residual-cover", "grazers");
  const least = figures(season, "demand-met", "least-standing");
  return (g, start, day, most, seen) => {
    const { taken, out } = season.groups[g];
    const floor = Math.max(askedIn(season, "residual-cover", cell, g) ? residual(cell, g) : 0, least(cell, g)) - HAIR;
    let value = start;
    for (let t = day; t < Math.min(day + most, season.days) && out[t] && own.open[t]; t++) {
      value -= taken[t] / own.areaHa;
      if (value < floor) {
        if (!atLeast) return;
        value = floor;
      }
      value = grownCover(value, own.rates[t + 1] - own.rates[t], season.ceiling);
      seen(t - day + 1, value);
    }
  };
}

/** Cover of each morning while nobody grazes, those of the owner's cuts made that are told. */
function untouchedCover(season: Season, cell: number, told: (day: number) => boolean): Float64Array {
  const own = season.cells[cell];
  const stubble = figures(season, "hay-stock", "stubble")(cell, -1);
  const covers = new Float64Array(season.days + 1);
  covers[0] = own.startCover;
  for (let t = 0; t < season.days; t++) {
    const grown = grownCover(covers[t], own.rates[t + 1] - own.rates[t], season.ceiling);
    covers[t + 1] = own.ownerCuts.some((cut) => cut.day === t && told(t)) ? Math.min(grown, stubble) : grown;
  }
  return covers;
}

/** First pass of spring from untouched ground: its own entry cover, and what entering low costs. */
function firstPass(
  season: Season, cell: number, g: number, most: number, untouched: Float64Array, levelOf: (value: number, day: number) => number, walk: StayWalk,
): { level: Int16Array; money: Float64Array } {
  const [full, low, price, days] = ["grazers", "first-pass", "first-pass-price", "first-pass-days"].map((key) => figures(season, "entry-cover", key)(cell, g));
  const own = season.cells[cell];
  const asked = askedIn(season, "entry-cover", cell, g);
  const level = new Int16Array(season.days * most).fill(-1);
  const money = new Float64Array(season.days);
  for (let t = 0; t < season.days; t++) {
    if (!season.groups[g].out[t] || !own.open[t]) continue;
    const start = untouched[t];
    const early = t < days;
    if (asked && start < (early ? Math.min(low, full) : full) - HAIR) continue;
    if (asked && early) money[t] = (Math.max(0, full - start) / 1000) * least(season, cell) * price;
    walk(g, start, t, most, (n, end) => (level[t * most + n - 1] = levelOf(end, t + n)));
  }
  return { level, money };
}

/** Smallest open area a cell can have: the whole cell unless strips may have been taken from it. */
function least(season: Season, cell: number): number {
  return season.groups.some((group) => !group.grazer && group.mayEnter[cell]) ? 0 : season.cells[cell].areaHa;
}
