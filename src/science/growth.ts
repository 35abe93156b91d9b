import type { GrowthRow } from "./tables.js";

/**
 * Daily rate of the logistic growth law: a sward at half its ceiling cover grows exactly the row's figure.
 *
 * @param growthKgPerHaDay growth of the row on that day, kg DM/ha/day
 * @param ceilingKgPerHa cover that no sward passes, kg DM/ha
 * @returns rate a day: 4 g / K, from dB/dt = 4 g (B/K)(1 - B/K)
 * Source: logistic regrowth, standard mathematics.
 */
export function growthRate(growthKgPerHaDay: number, ceilingKgPerHa: number): number {
  return (4 * growthKgPerHaDay) / ceilingKgPerHa;
}

/**
 * Cover after regrowth, by the closed form of the logistic law. Two covers never cross: more grass is never worse.
 *
 * @param coverKgPerHa cover at the start, kg DM/ha above ground
 * @param rate sum of daily rates over the days of regrowth
 * @param ceilingKgPerHa cover that no sward passes, kg DM/ha
 * @returns cover at the end, kg DM/ha: K / (1 + (K/B - 1) e^-rate)
 */
export function grownCover(coverKgPerHa: number, rate: number, ceilingKgPerHa: number): number {
  if (coverKgPerHa <= 0) return coverKgPerHa;
  return ceilingKgPerHa / (1 + (ceilingKgPerHa / coverKgPerHa - 1) * Math.exp(-rate));
}

/** Days of the months of a common year. */
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Growth of a published row on northern ground, scaled to what this ground grows.
 *
 * @param row growth row; a southern one is shifted by six months
 * @param scale this ground against the row, share
 * @returns kg DM/ha/day, January to December
 */
export function growthByMonth(row: GrowthRow, scale: number): readonly number[] {
  const shift = row.hemisphere === "south" ? 6 : 0;
  return row.value.map((_, month) => row.value[(month + shift) % 12]! * scale);
}

/**
 * What a row of months grows in a common year.
 *
 * @param byMonth kg DM/ha/day, January to December
 * @returns kg DM/ha/year
 */
export function yearGrowthKgPerHa(byMonth: readonly number[]): number {
  return byMonth.reduce((sum, growth, month) => sum + growth * MONTH_DAYS[month]!, 0);
}

/**
 * The scale at which a row grows what the owner says the ground grows.
 *
 * @param row growth row
 * @param yieldKgPerHa kg DM/ha/year
 * @returns share of the row
 */
export function scaleForYield(row: GrowthRow, yieldKgPerHa: number): number {
  return yieldKgPerHa / yearGrowthKgPerHa(growthByMonth(row, 1));
}
