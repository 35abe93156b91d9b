import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { hayKg, hayMadeKg, hayNeedKgDm } from "../../src/science/hay.js";
import { LB } from "./published.js";

describe("hay", () => {
  it("makes nothing of what is not above the stubble", () => {
    expect(hayMadeKg(1700, 1800, 0.4, 0.2, 0.88)).toBe(0);
  });

  it("makes more of more grass, and never more than stood there", () => {
    const cover = fc.double({ min: 500, max: 7000, noNaN: true });
    fc.assert(fc.property(cover, cover, (a, b) => {
      const [low, high] = a < b ? [a, b] : [b, a];
      expect(hayMadeKg(high, 1800, 1, 0.2, 0.88)).toBeGreaterThanOrEqual(hayMadeKg(low, 1800, 1, 0.2, 0.88));
      expect(hayMadeKg(high, 1800, 1, 0, 1)).toBeLessThanOrEqual(high);
    }));
  });

  it("feeds exactly the need after every loss", () => {
    expect(hayKg(100, 0.88, 0.1, 0.05) * 0.95 * 0.9 * 0.88).toBeCloseTo(100, 9);
  });
});

describe("outside truth: hay", () => {
  it("Iowa Beef Center: 150 cows of 1,200 lb at 2.5 % for 180 days: 810,000 lb of dry matter, 476 tons of hay, 501 with 5 % waste", () => {
    const need = hayNeedKgDm(150 * 1200 * LB, 0.025, 180);
    expect(need / LB).toBeCloseTo(810_000, 3);
    const tons = (kg: number) => kg / LB / 2000;
    expect(Math.floor(tons(hayKg(need, 0.85, 0, 0)))).toBe(476);
    expect(Math.floor(tons(hayKg(need, 0.85, 0.05, 0)))).toBe(501);
  });

  it.each([[100, 1400, 525_000], [20, 1000, 75_000], [25, 700, 65_625], [6, 2000, 45_000]])(
    "Iowa State: %d head of %d lb at 2.5 %% for 150 days eat %d lb", (head, weight, printed) => {
      expect(hayNeedKgDm(head * weight * LB, 0.025, 150) / LB).toBeCloseTo(printed, 4);
    },
  );

  it.each([[1100, 30.6], [1300, 36.1]])("Texas A&M: a cow of %d lb at 2.5 %% and 90 %% dry matter eats %d lb as fed", (weight, printed) => {
    expect((hayKg(hayNeedKgDm(weight * LB, 0.025, 1), 0.9, 0, 0) / LB).toFixed(1)).toBe(printed.toFixed(1));
  });

  it("Oklahoma State: a cow of 1,200 lb at 2 %, 92 % dry matter: 26 lb; with 15 % waste about 30, divided out rather than added", () => {
    const need = hayNeedKgDm(1200 * LB, 0.02, 1);
    expect(Math.round(hayKg(need, 0.92, 0, 0) / LB)).toBe(26);
    const fed = hayKg(need, 0.92, 0.15, 0) / LB;
    expect(fed).toBeCloseTo(30.7, 1);
    expect(fed).toBeGreaterThan((need / LB / 0.92) * 1.15);
  });

  it("Univ. of Kentucky: 200 bales of 1,000 lb less 10 % last 38.8 animal units 140 days at 33.1 lb", () => {
    const perUnit = (200 * 1000 * 0.9) / (38.8 * 140);
    expect(perUnit.toFixed(1)).toBe("33.1");
    expect(hayKg(perUnit * 38.8 * 140, 1, 0.1, 0)).toBeCloseTo(200_000, 6);
  });
});
