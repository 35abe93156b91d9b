/**
 * The smallest of the amounts that at least a share of them does not exceed: amount number ceil(share x count) in order
 * (the inverse of the empirical distribution; definition 1 of Hyndman & Fan 1996, The American Statistician 50:361-365).
 *
 * @param sorted amounts, least first, at least one
 */
export function quantileOf(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length, Math.max(1, Math.ceil(share * sorted.length - 1e-9))) - 1]!;
}

/** Chance that at most `most` of `count` draws come in, each with the same chance: sum of binomial terms. */
export function chanceOfAtMost(most: number, count: number, chance: number): number {
  if (most >= count || chance <= 0) return 1;
  if (most < 0 || chance >= 1) return 0;
  // Terms by their logarithms: with thousands of draws the first ones are too small to be told from nothing.
  const odds = Math.log(chance / (1 - chance));
  let term = count * Math.log(1 - chance);
  let sum = Math.exp(term);
  for (let k = 1; k <= most; k++) {
    term += Math.log((count - k + 1) / k) + odds;
    sum += Math.exp(term);
  }
  return Math.min(1, sum);
}

/** Chance that the true quantile lies between the amounts of two ranks: what is below it is a binomial count. */
export function rankCoverage(count: number, share: number, low: number, high: number): number {
  return chanceOfAtMost(high - 1, count, share) - chanceOfAtMost(low - 1, count, share);
}

/**
 * Ranks between which the true quantile lies with at least the chance asked: as many left out on either side as may be.
 * Where even the largest amount may be too small, `high` is one more than there are amounts. Confidence by order
 * statistics, without a word on how the amounts are spread: https://real-statistics.com/order-statistics/confidence-intervals-order-statistics
 */
export function quantileRanks(count: number, share: number, chance = 0.95): { readonly low: number; readonly high: number } {
  const tail = (1 - chance) / 2;
  let low = 1;
  while (low < count && chanceOfAtMost(low, count, share) <= tail) low++;
  let high = Math.max(low, Math.ceil(share * count));
  while (high <= count && 1 - chanceOfAtMost(high - 1, count, share) > tail) high++;
  return { low, high };
}

/**
 * Between which shares the true one lies, when so many of a count came in: Wilson's score interval (Wilson 1927, JASA
 * 22:209-212), 95 % unless `z` says otherwise.
 */
export function shareInterval(many: number, count: number, z = 1.96): { readonly low: number; readonly high: number } {
  if (count === 0) return { low: 0, high: 1 };
  const share = many / count;
  const middle = (share + (z * z) / (2 * count)) / (1 + (z * z) / count);
  const half = (z / (1 + (z * z) / count)) * Math.sqrt((share * (1 - share)) / count + (z * z) / (4 * count * count));
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}
