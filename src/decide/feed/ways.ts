import { usualRest } from "../../programme/rules/rest-period.js";
import { grownCover } from "../../science/growth.js";
import type { Season } from "../../season/season.js";
import type { Ground } from "./grounds.js";

/** Weeks after a grazing or cut within which any later week may use the ground again; longer ones are tried every second week. */
const EVERY_WEEK = 12;
/** What a grazing takes at least, kg DM/ha: down to the residual; or, of long grass, down to what may be entered again at once. */
const LEAST_BITE = 50;
const LEAST_LIGHT = 300;
/** Months in which hay is made beside the owner's own cuts, January 1: May to September (common practice). */
const HAY_MONTHS = [5, 9] as const;
/** Cut by then or not at all: a cut that waits longer only loses value, kg DM/ha above what it is worth making from. */
const CUT_WITHIN = 600;

/** A morning from which some ground grows on: the season's first, or that after a grazing or a cut. */
export interface Moment {
  readonly ground: number;
  readonly day: number;
  readonly cover: number;
  /** Which of the ground's stands it is on the first morning; null later. */
  readonly stand: number | null;
  /** Latest grazing, null when there was none. */
  readonly grazed: number | null;
}

/** Hectares that grow from one moment to the next use, and what that use gives; all by the hectare. */
export interface Way {
  readonly ground: number;
  readonly from: number;
  /** Moment after it; null where it is the season's end. */
  readonly to: number | null;
  readonly kind: "graze" | "own-cut" | "cut" | "close";
  readonly week: number;
  /** Morning up to which it grows, and the cover then, kg DM/ha. */
  readonly day: number;
  readonly cover: number;
  /** Taken from it by mouths and feet, or by the mower, kg DM/ha. */
  readonly taken: number;
  /** Hay as stored, kg/ha. */
  readonly hay: number;
  /** Rests cut short, a low first pass, grass too long, closing cover, mowing. */
  readonly money: number;
  /** Short of the closing cover wished, t/ha. */
  readonly closingShort: number;
}

export interface Ways {
  readonly moments: readonly Moment[];
  readonly ways: readonly Way[];
}

/** Weeks of a season: seven days each, the last what is left. */
export function weeksIn(season: Season): readonly { readonly first: number; readonly days: number }[] {
  return Array.from({ length: Math.ceil(season.days / 7) }, (_, w) => ({ first: w * 7, days: Math.min(7, season.days - w * 7) }));
}

/** Cover of some ground on a morning, grown on from a moment. */
export function coverOn(season: Season, ground: Ground, from: Moment, day: number): number {
  return grownCover(from.cover, ground.like.rates[day]! - ground.like.rates[from.day]!, season.ceiling);
}

/**
 * Every way in which some ground may be used from week to week: exact regrowth, entry cover, shortest rest, closed dates and
 * closing cover are in it, so that a budget made of hectares on these ways knows what the rules know.
 */
export function waysOf(season: Season, grounds: readonly Ground[]): Ways {
  const moments: Moment[] = [];
  const ways: Way[] = [];
  const usual = usualRest(season);
  grounds.forEach((ground, k) => {
    const first = moments.length;
    ground.stands.forEach((stand, i) => moments.push({ ground: k, day: 0, cover: stand.cover, stand: i, grazed: stand.lastGrazed }));
    for (const [w, week] of weeksIn(season).entries()) {
      const uses = usesIn(season, ground, week);
      for (const use of uses) addWays({ season, ground, usual, k, w, first, moments, ways }, use);
    }
    for (let n = first; n < moments.length; n++) {
      if (survives(season, ground, moments[n]!, season.days)) ways.push(closing(season, ground, k, moments[n]!, n));
    }
  });
  return { moments, ways };
}

interface Use {
  readonly kind: "graze" | "own-cut" | "cut";
  /** Morning before the use (grazing) or after its evening (cut). */
  readonly day: number;
  /** Cover it leaves, and the least that it is done at, kg DM/ha. */
  readonly leaves: number;
}

/** What may be done to a ground in a week, in date order: grazing in the middle of its open days, cuts likewise or on the owner's day. */
function usesIn(season: Season, ground: Ground, { first, days }: { first: number; days: number }): readonly Use[] {
  const { like } = ground;
  const open = Array.from({ length: days }, (_, i) => first + i).filter((t) => like.open[t] && ground.groups.some((g) => season.groups[g]!.out[t]));
  const free = Array.from({ length: days }, (_, i) => first + i).filter((t) => like.open[t]);
  const { residual, entry, stubble } = ground.figures;
  const own = like.ownerCuts.filter(({ day }) => day >= first && day < first + days).map(({ day }): Use => ({ kind: "own-cut", day: day + 1, leaves: stubble }));
  const graze = open.length === 0 ? [] : [...new Set([residual, Math.max(residual, entry)])].map((leaves): Use => ({ kind: "graze", day: middleOf(open), leaves }));
  const month = season.month[first]! + 1;
  const cut: Use[] = like.mow && free.length > 0 && own.length === 0 && month >= HAY_MONTHS[0] && month <= HAY_MONTHS[1] ? [{ kind: "cut", day: middleOf(free) + 1, leaves: stubble }] : [];
  return [...graze, ...cut, ...own].sort((a, b) => a.day - b.day);
}

const middleOf = (days: readonly number[]): number => days[days.length >> 1]!;

interface At {
  readonly season: Season;
  readonly ground: Ground;
  readonly usual: ReturnType<typeof usualRest>;
  readonly k: number;
  readonly w: number;
  readonly first: number;
  readonly moments: Moment[];
  readonly ways: Way[];
}

function addWays(at: At, use: Use): void {
  const { season, ground, k, w, first, moments, ways } = at;
  const to = moments.length;
  const made: Way[] = [];
  for (let n = first; n < to; n++) {
    const from = moments[n]!;
    // On the first morning it may be grazed as it stands.
    if (from.day > use.day || (from.day === use.day && from.stand === null) || (from.stand === null && use.kind !== "own-cut" && thinned(from.day, use.day))) continue;
    if (!survives(season, ground, from, use.kind === "own-cut" ? use.day - 1 : use.day)) continue;
    const way = wayTo(at, from, use);
    if (way) made.push({ ...way, ground: k, from: n, to, week: w });
  }
  if (made.length === 0) return;
  ways.push(...made);
  moments.push({ ground: k, day: use.day, cover: use.leaves, stand: null, grazed: use.kind === "graze" ? use.day : null });
}

/** Long rests differ little from week to week. */
function thinned(from: number, to: number): boolean {
  const weeks = Math.round((to - from) / 7);
  return weeks > EVERY_WEEK && weeks % 2 === 1;
}

/** Nothing long stands through the owner's cut: it is cut with the rest. */
function survives(season: Season, ground: Ground, from: Moment, before: number): boolean {
  return ground.like.ownerCuts.every(({ day }) => day < from.day || day >= before || coverOn(season, ground, from, day + 1) <= ground.figures.stubble);
}

function wayTo({ season, ground, usual }: At, from: Moment, use: Use): Omit<Way, "ground" | "from" | "to" | "week"> | null {
  const cover = coverOn(season, ground, from, use.day);
  const { figures } = ground;
  const long = longMoney(season, ground, from, use.day);
  if (use.kind === "graze") {
    const first = from.stand !== null && use.day < figures.firstPassDays;
    const rest = from.grazed === null ? Infinity : use.day - from.grazed - 1;
    const enough = Math.max(first ? figures.firstPass : figures.entry, use.leaves + (use.leaves > figures.residual ? LEAST_LIGHT : LEAST_BITE));
    if (cover < enough || rest < figures.restFloor) return null;
    const short = first ? (Math.max(0, figures.entry - cover) / 1000) * figures.firstPassPrice : 0;
    return { kind: "graze", day: use.day, cover, taken: cover - use.leaves, hay: 0, money: long + short + restMoney(ground, usual(ground.cells[0]!, -1, use.day) - rest), closingShort: 0 };
  }
  const own = use.kind === "own-cut";
  if (own ? cover <= figures.stubble : cover < figures.cutFrom || cover > figures.cutFrom + CUT_WITHIN) return null;
  const makes = !own || ground.like.ownerCuts.some(({ day, makesHay }) => day === use.day - 1 && makesHay);
  const taken = cover - figures.stubble;
  const hay = makes ? (taken * (1 - figures.makingLoss)) / season.scenario.hay.dryMatter : 0;
  return { kind: use.kind, day: use.day, cover, taken, hay, money: long + season.scenario.prices.mowingPerHa, closingShort: 0 };
}

function closing(season: Season, ground: Ground, k: number, from: Moment, n: number): Way {
  const cover = coverOn(season, ground, from, season.days);
  const { closingWish, closingPrice } = ground.figures;
  const short = ground.like.inHand[season.days - 1] ? Math.max(0, closingWish - cover) / 1000 : 0;
  const money = short * closingPrice + longMoney(season, ground, from, season.days);
  return { ground: k, from: n, to: null, kind: "close", week: weeksIn(season).length - 1, day: season.days, cover, taken: 0, hay: 0, money, closingShort: short };
}

function restMoney({ figures, cellHa }: Ground, daysShort: number): number {
  return (Math.max(0, daysShort) * figures.restPrice) / cellHa;
}

/** Grass too long on the weekly walks, by the hectare. */
function longMoney(season: Season, ground: Ground, from: Moment, to: number): number {
  const { long, longPrice } = ground.figures;
  return season.walks.filter((t) => t >= from.day && t < to).reduce((sum, t) => sum + (Math.max(0, coverOn(season, ground, from, t) - long) / 1000) * longPrice, 0);
}
