const ROUND_TO = 5;

/**
 * Minutes as they are printed, so that they add up: each rounded to 5, the sum being the rounded sum, by largest remainders.
 * To 1 where some would come to nothing.
 */
export function sharedOut(minutes: readonly number[]): readonly number[] {
  const fives = rounded(minutes, ROUND_TO);
  return fives.some((shown, i) => shown === 0 && minutes[i]! > 0) ? rounded(minutes, 1) : fives;
}

function rounded(minutes: readonly number[], unit: number): readonly number[] {
  const whole = minutes.map((one) => Math.floor(one / unit + 1e-9));
  const total = Math.round(minutes.reduce((sum, one) => sum + one, 0) / unit);
  const most = minutes.map((one, i) => [one / unit - whole[i]!, i] as const).sort((a, b) => b[0] - a[0] || a[1] - b[1]);
  const more = new Set(most.slice(0, total - whole.reduce((sum, one) => sum + one, 0)).map(([, i]) => i));
  return whole.map((one, i) => (one + (more.has(i) ? 1 : 0)) * unit);
}
