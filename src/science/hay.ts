/**
 * Hay as stored that feeds a need, losses divided out (adding them would understate).
 *
 * @param needKgDm dry matter that must be eaten, kg
 * @param dryMatter dry matter of the hay, share
 * @param feedOutLoss share lost in feeding out
 * @param storeLoss share lost in store
 * @returns kg of hay as stored
 */
export function hayKg(needKgDm: number, dryMatter: number, feedOutLoss: number, storeLoss: number): number {
  return needKgDm / dryMatter / (1 - feedOutLoss) / (1 - storeLoss);
}

/**
 * Hay made from a cut.
 *
 * @param coverKgPerHa cover before the mower, kg DM/ha
 * @param stubbleKgPerHa cover the mower leaves, kg DM/ha
 * @param areaHa area mown, ha
 * @param makingLoss share lost in making
 * @param dryMatter dry matter of the hay, share
 * @returns kg of hay as stored; 0 when there is nothing above the stubble
 */
export function hayMadeKg(coverKgPerHa: number, stubbleKgPerHa: number, areaHa: number, makingLoss: number, dryMatter: number): number {
  return (Math.max(0, coverKgPerHa - stubbleKgPerHa) * areaHa * (1 - makingLoss)) / dryMatter;
}

/**
 * Dry matter that housed animals eat.
 *
 * @param liveWeightKg live weight of all of them, kg
 * @param share share of live weight eaten as dry matter a day
 * @param days days fed
 * @returns kg DM, to be given to `hayKg`
 * Source: Iowa Beef Center, calculating winter hay needs.
 */
export function hayNeedKgDm(liveWeightKg: number, share: number, days: number): number {
  return liveWeightKg * share * days;
}
