import { KG_PER_LB, M2_PER_ACRE } from "../quantity/units.js";
import type { HeightRow, Range } from "./tables.js";

export const STANDS = ["fair", "good", "excellent"] as const;
export type Stand = (typeof STANDS)[number];

/** Datum: the ground. Down where the sward is densest, 4 cm hold about 1,500 kg DM/ha (AHDB, GB levy board). */
const BASE_CM = 4;
const BASE_KG_PER_HA = 1500;

/** kg DM/ha in a centimetre for each lb DM/acre in an inch. */
const PER_CM_OF_LB_PER_ACRE_INCH = (KG_PER_LB * 10_000) / M2_PER_ACRE / 2.54;

/**
 * Dry matter in a centimetre of height above the base, the middle of the published range.
 *
 * @param row sward of shared/heights.json, lb/ac/in
 * @returns kg DM/ha/cm
 */
export function kgPerHaCm(row: HeightRow, stand: Stand): number {
  const [least, most] = row.value[stand];
  return ((least + most) / 2) * PER_CM_OF_LB_PER_ACRE_INCH;
}

/**
 * Cover of a sward of a height, above the ground: 1,500 kg DM/ha in the lowest 4 cm, the sward's own figure above.
 *
 * @param heightCm height, cm
 * @param perCm kg DM/ha/cm above 4 cm
 * @returns kg DM/ha
 */
export function coverOfHeight(heightCm: number, perCm: number): number {
  if (heightCm <= BASE_CM) return (heightCm / BASE_CM) * BASE_KG_PER_HA;
  return BASE_KG_PER_HA + (heightCm - BASE_CM) * perCm;
}

/** Height of a sward of a cover, cm: `coverOfHeight` turned round. */
export function heightOfCover(coverKgPerHa: number, perCm: number): number {
  if (coverKgPerHa <= BASE_KG_PER_HA) return (coverKgPerHa / BASE_KG_PER_HA) * BASE_CM;
  return BASE_CM + (coverKgPerHa - BASE_KG_PER_HA) / perCm;
}

/**
 * How far the cover of a height may lie either way, from the middle of a fair stand to the middle of an excellent one.
 *
 * @returns least and most, kg DM/ha
 */
export function coverRangeOfHeight(heightCm: number, row: HeightRow): Range {
  return [coverOfHeight(heightCm, kgPerHaCm(row, "fair")), coverOfHeight(heightCm, kgPerHaCm(row, "excellent"))];
}
