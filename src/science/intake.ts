/**
 * Live weight of one animal after some days.
 *
 * @param weightKg weight on the first day, kg
 * @param gainKgPerDay gain, kg/day
 * @param days whole days since the first day
 * @returns kg
 */
export function liveWeightKg(weightKg: number, gainKgPerDay: number, days: number): number {
  return weightKg + gainKgPerDay * days;
}

/**
 * Herbage eaten by a head as a share of its live weight.
 *
 * @param weightKg live weight, kg
 * @param share share of live weight eaten as dry matter a day (0.025 for 2.5 %)
 * @returns kg DM a day
 */
export function intakeKgDmPerDay(weightKg: number, share: number): number {
  return weightKg * share;
}

/**
 * Herbage taken from the ground: what is eaten, and what is trodden and soiled on top, counted once.
 *
 * @param intakeKgDm eaten, kg DM
 * @param troddenShare trodden and soiled as a share of intake
 * @returns kg DM taken
 */
export function takenKgDm(intakeKgDm: number, troddenShare: number): number {
  return intakeKgDm * (1 + troddenShare);
}
