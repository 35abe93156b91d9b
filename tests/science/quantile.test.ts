/** Quantiles, and how sure they are with so many amounts. */
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { quantileOf, quantileRanks, shareInterval } from "../../src/science/quantile.js";

describe("quantileOf", () => {
  test.prop([fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 60 }), fc.integer({ min: 1, max: 99 })], { seed: 1, numRuns: 300 })(
    "is the smallest amount that at least the share of all does not exceed", (amounts, percent) => {
      const sorted = [...amounts].sort((a, b) => a - b);
      const found = quantileOf(sorted, percent / 100);
      expect(sorted).toContain(found);
      expect(100 * sorted.filter((one) => one <= found).length).toBeGreaterThanOrEqual(percent * sorted.length);
      expect(100 * sorted.filter((one) => one < found).length).toBeLessThan(percent * sorted.length);
    },
  );
});

/**
 * Confidence intervals for the median from ranks, n, low, high, per cent, as printed in a textbook's Table A.7,
 * https://www.coursehero.com/file/5646626/A7/: of the rows of each n the shortest of at least 95 %.
 */
const TABLE_A7 = [
  [6, 1, 6, 96.9], [7, 1, 7, 98.4], [8, 1, 8, 99.2], [9, 2, 8, 96.1], [10, 2, 9, 97.9], [11, 2, 10, 98.8], [12, 3, 10, 96.1], [13, 3, 11, 97.8], [14, 3, 12, 98.7],
  [15, 4, 12, 96.5], [16, 4, 13, 97.9], [17, 5, 13, 95.1], [18, 5, 14, 96.9], [19, 5, 15, 98.1], [20, 6, 15, 95.9],
] as const;

describe("quantileRanks", () => {
  it.each(TABLE_A7)("of %i amounts has the median between numbers %i and %i: %f", (count, low, high, percent) => {
    const ranks = quantileRanks(count, 0.5);
    expect([ranks.low, ranks.high]).toEqual([low, high]);
    expect(100 * ranks.chance).toBeCloseTo(percent, 1);
  });

  // The shortest interval about the 18th of 35, numbers 17 to 19: 0.264121, printed at the address in the docstring
  it("gives the chance that is printed for 35 amounts", () => {
    const ranks = quantileRanks(35, 0.5, 0.26);
    expect([ranks.low, ranks.high]).toEqual([17, 19]);
    expect(ranks.chance).toBeCloseTo(0.264121, 6);
  });

  it("says when the amounts are too few to end on either side", () => {
    expect(quantileRanks(1, 0.5)).toEqual({ low: 0, high: 2, chance: 1 });
    expect(quantileRanks(20, 0.95)).toMatchObject({ high: 21 });
  });

  // Closed form: the largest of n is below the quantile with chance share^n; 0.95^72 = 0.0249, 0.95^71 = 0.0262
  it("ends above as soon as the largest amount is sure to be enough", () => {
    expect(quantileRanks(71, 0.95).high).toBe(72);
    expect(quantileRanks(72, 0.95).high).toBe(72);
  });

  it.each([200, 10_000])("of %i amounts is as wide as the normal distribution has it, to two numbers", (count) => {
    const { low, high, chance } = quantileRanks(count, 0.8);
    const half = 1.96 * Math.sqrt(count * 0.8 * 0.2);
    expect(Math.abs(low - (0.8 * count - half))).toBeLessThan(2);
    expect(Math.abs(high - (0.8 * count + half))).toBeLessThan(2.5);
    expect(chance).toBeGreaterThanOrEqual(0.95);
  });
});

describe("shareInterval", () => {
  // Closed form: at the ends the count found lies exactly z standard deviations off (Wilson 1927)
  test.prop([fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 400 })], { seed: 2, numRuns: 200 })("ends where the share found would just be believed", (count, found) => {
    const many = Math.min(found, count);
    const { low, high } = shareInterval(many, count);
    for (const end of [low, high]) {
      const off = Math.abs(many / count - end);
      if (end > 1e-12 && end < 1 - 1e-12) expect(off).toBeCloseTo(1.96 * Math.sqrt((end * (1 - end)) / count), 8);
    }
    expect(low).toBeLessThanOrEqual(many / count + 1e-12);
    expect(high).toBeGreaterThanOrEqual(many / count - 1e-12);
  });
});
