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
