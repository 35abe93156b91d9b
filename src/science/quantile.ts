/**
 * The smallest of the amounts that at least a share of them does not exceed: amount number ceil(share x count) in order
 * (the inverse of the empirical distribution; definition 1 of Hyndman & Fan 1996, The American Statistician 50:361-365).
 *
 * @param sorted amounts, least first, at least one
 */
export function quantileOf(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length, Math.max(1, Math.ceil(share * sorted.length - 1e-9))) - 1]!;
}

/** Chance that at most 0, 1, 2, ... of `count` draws come in, each with the same chance (above 0 and below 1): sums of binomial terms. */
function chancesOfAtMost(count: number, chance: number): Float64Array {
  const sums = new Float64Array(count + 1);
  // Terms by their logarithms: with thousands of draws the first ones are too small to be told from nothing.
  const odds = Math.log(chance / (1 - chance));
  let term = count * Math.log(1 - chance);
  let sum = 0;
  for (let k = 0; k <= count; k++) {
    if (k > 0) term += Math.log((count - k + 1) / k) + odds;
    sum += Math.exp(term);
    sums[k] = Math.min(1, sum);
  }
  return sums;
}

/** Two ranks, and the chance that the true quantile lies between their amounts. Rank 0 is below every amount, `count` + 1 above. */
export interface Ranks {
  readonly low: number;
  readonly high: number;
  readonly chance: number;
}

/**
 * Ranks between which the true quantile lies with at least the chance asked: as many amounts as may be are left out on
 * either side. How many of them are below it is a binomial count, however the amounts are spread (confidence by order
 * statistics): https://real-statistics.com/order-statistics/confidence-intervals-order-statistics
 */
export function quantileRanks(count: number, share: number, chance = 0.95): Ranks {
  const atMost = chancesOfAtMost(count, share);
  const tail = (1 - chance) / 2;
  let low = 0;
  while (low < count && atMost[low]! <= tail) low++;
  let high = count + 1;
  while (high > low + 1 && 1 - atMost[high - 2]! <= tail) high--;
  return { low, high, chance: (high > count ? 1 : atMost[high - 1]!) - (low === 0 ? 0 : atMost[low - 1]!) };
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
