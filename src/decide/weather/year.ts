import { seededRandom, type Random } from "../../programme/random.js";
import type { Season } from "../../season/season.js";

/** What chance makes of a year. */
export interface Year {
  /** Growth beside the usual by calendar month, January first. */
  readonly growth: readonly number[];
  /** Days by which spring is late; below 0 for early. */
  readonly springLate: number;
  /** By group and day: days that a move due on that day slips. */
  readonly slips: readonly Uint8Array[];
  /** First day of the week with nobody to move animals; null without one. */
  readonly away: number | null;
}

/** Days that nobody is there to move animals. */
export const WEEK = 7;

/** A year that grows so many times the usual in every month, in which nothing is late. */
export function steadyYear(season: Season, factor: number): Year {
  return { growth: Array<number>(12).fill(factor), springLate: 0, slips: season.groups.map(() => new Uint8Array(season.days)), away: null };
}

/** Outside this many standard deviations lies one year in ten on either side (normal distribution). */
const ONE_IN_TEN = 1.2816;
/** Nothing is drawn farther out than one in a hundred. */
const ONE_IN_A_HUNDRED = 2.3263;

/**
 * A year by chance: the same for a seed and a number of year, whatever other years are drawn. Growth of the whole year
 * is below `dry` in one year of ten and above `wet` in one, months and spring differ on top of that.
 */
export function drawnYear(season: Season, seed: number, year: number): Year {
  const { dry, wet, month, springDays, lateMoves, weekAway } = season.scenario.weather;
  const random = streamOf(seed, year);
  const spread = (): number => normal(random) / ONE_IN_TEN;
  const out = spread();
  const whole = Math.exp(Math.abs(out) * Math.log(out < 0 ? dry : wet));
  const springLate = spread() * springDays;
  const growth = Array.from({ length: 12 }, () => whole * Math.exp(spread() * Math.log(1 + month)));
  const isAway = random.unit() < weekAway;
  const away = random.below(Math.max(1, season.days - WEEK + 1));
  const slips = season.groups.map(() => Uint8Array.from({ length: season.days }, () => (random.unit() < lateMoves ? 1 + random.below(2) : 0)));
  return { growth, springLate, slips, away: isAway ? away : null };
}

/** One stream of chance a year. Near seeds lie close together at first. */
function streamOf(seed: number, year: number): Random {
  const random = seededRandom(seed * 20_011 + year);
  for (let i = 0; i < 16; i++) random.unit();
  return random;
}

/** A normal deviate, by Box and Muller 1958, cut off far out. */
function normal(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random.unit()));
  const z = radius * Math.cos(2 * Math.PI * random.unit());
  return Math.min(ONE_IN_A_HUNDRED, Math.max(-ONE_IN_A_HUNDRED, z));
}

const DAYS_A_MONTH = 365.25 / 12;

/** A row of growth by month as it is in a year: spring comes late or early, then every month has its own share. */
export function grownRow(row: readonly number[], { growth, springLate }: Pick<Year, "growth" | "springLate">): readonly number[] {
  return springShifted(row, springLate / DAYS_A_MONTH).map((kg, m) => kg * growth[m]);
}

/** Moves the rise from the least month to the best one by so many months, in straight lines between them; the rest of the row stands. */
function springShifted(row: readonly number[], late: number): readonly number[] {
  if (late === 0) return row;
  const best = row.indexOf(Math.max(...row));
  let rise = 0;
  while (rise < 11 && row[(best - rise + 11) % 12] < row[(best - rise + 12) % 12]) rise++;
  const at = (x: number): number => row[(best - rise + x + 12) % 12];
  const between = (x: number): number => {
    const low = Math.floor(x);
    return x === low ? at(low) : at(low) * (low + 1 - x) + at(low + 1) * (x - low);
  };
  const shifted = [...row];
  for (let x = 0; x <= rise; x++) shifted[(best - rise + x + 12) % 12] = between(Math.min(rise, Math.max(0, x - late)));
  return shifted;
}
