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
