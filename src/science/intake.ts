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

/**
 * Animal units by live weight. Published tables by class differ by half (shared/animal-units.json), so the unit is a parameter.
 *
 * @param liveWeightKg live weight of all the animals, kg
 * @param unitKg live weight of one animal unit, kg
 * Source: 0.1 animal unit for each 100 lb, Texas chart in shared/animal-units.json.
 */
export function animalUnits(liveWeightKg: number, unitKg: number): number {
  return liveWeightKg / unitKg;
}
