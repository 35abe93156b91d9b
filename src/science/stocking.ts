/**
 * Cells that one group needs so that each rests long enough: one in use, and those that rest meanwhile. Rounded up.
 *
 * @param restDays rest between stays, days
 * @param stayDays days in a cell
 * Source: Penn State "Four Steps to Rotational Grazing", step 3: rest / stay + 1.
 */
export function cellsNeeded(restDays: number, stayDays: number): number {
  // 42 / 7 must not come out as 7.000000001 cells.
  return Math.ceil(restDays / stayDays + 1 - 1e-9);
}

/**
 * Live weight on ground: over the cell in use it is the stocking density, over the season's land the stocking rate.
 *
 * @param liveWeightKg kg
 * @param areaHa ha
 * @returns kg/ha
 */
export function stockingDensityKgPerHa(liveWeightKg: number, areaHa: number): number {
  return liveWeightKg / areaHa;
}

/**
 * Live weight that ground carries for a season.
 *
 * @param grownKgPerHa herbage grown in the season, kg DM/ha
 * @param utilisation share of it that is eaten
 * @param intakeShare eaten a day as a share of live weight
 * @param days days of the season
 * @returns kg live weight/ha
 * Source: Univ. of Maine pasture course, lesson 5, eq. 1; USDA-NRCS Missouri.
 */
export function carryingCapacityKgPerHa(grownKgPerHa: number, utilisation: number, intakeShare: number, days: number): number {
  return (grownKgPerHa * utilisation) / (intakeShare * days);
}

/**
 * Cover that must stand when a round comes back to a cell, so that the round lasts.
 *
 * @param demandKgPerHaDay eaten a day over all the ground, kg DM/ha/day
 * @param roundDays days of the round
 * @param residualKgPerHa cover left, kg DM/ha, on the datum of the answer
 * @returns kg DM/ha
 * Source: DairyNZ, pasture allocation; Irish Farmers Journal, grassland management.
 */
export function targetCoverKgPerHa(demandKgPerHaDay: number, roundDays: number, residualKgPerHa: number): number {
  return demandKgPerHaDay * roundDays + residualKgPerHa;
}

/**
 * Days of grass in hand.
 *
 * @param aboveResidualKgPerHa mean cover above the residual, kg DM/ha
 * @param demandKgPerHaDay eaten a day over all the ground, kg DM/ha/day
 * Source: Irish Farmers Journal, grassland management.
 */
export function daysAhead(aboveResidualKgPerHa: number, demandKgPerHaDay: number): number {
  return aboveResidualKgPerHa / demandKgPerHaDay;
}
