import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { coverOfHeight, coverRangeOfHeight, heightOfCover, kgPerHaCm } from "../../src/science/height.js";
import { rowOf } from "../../src/science/tables.js";
import { INCH_CM, LB_PER_ACRE, off, TABLES } from "./published.js";

const mixed = rowOf(TABLES.heights, "mixed");
const good = kgPerHaCm(mixed, "good");

describe("height and cover", () => {
  it("turns height into cover and back", () => {
    const height = fc.double({ min: 0.1, max: 60, noNaN: true });
    fc.assert(fc.property(height, fc.constantFrom(...TABLES.heights), (cm, row) => {
      expect(heightOfCover(coverOfHeight(cm, kgPerHaCm(row, "good")), kgPerHaCm(row, "good"))).toBeCloseTo(cm, 9);
      const [least, most] = coverRangeOfHeight(cm, row);
      const cover = coverOfHeight(cm, kgPerHaCm(row, "good"));
      expect(least).toBeLessThanOrEqual(cover);
      expect(most).toBeGreaterThanOrEqual(cover);
    }));
  });

  it("never makes less cover of more height", () => {
    const height = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(fc.property(height, height, (a, b) => {
      expect(coverOfHeight(Math.max(a, b), good)).toBeGreaterThanOrEqual(coverOfHeight(Math.min(a, b), good));
    }));
  });
});

describe("outside truth: height and cover", () => {
  it("300 lb/ac-in is 132.4 kg/ha/cm", () => {
    expect(kgPerHaCm({ ...mixed, value: { ...mixed.value, good: [300, 300] } }, "good")).toBeCloseTo(132.4, 1);
  });

  it("Penn State step 4: grass eaten from 7 to 4 in at 300 lb/ac-in gives 900 lb/ac", () => {
    const perCm = kgPerHaCm({ ...mixed, value: { ...mixed.value, good: [300, 300] } }, "good");
    const eaten = coverOfHeight(7 * INCH_CM, perCm) - coverOfHeight(4 * INCH_CM, perCm);
    expect(eaten / LB_PER_ACRE).toBeCloseTo(900, 6);
  });

  it("UMaine: excellent orchardgrass from 7 in to a stubble of 3 gives 1,200 to 1,400 lb/ac", () => {
    const perCm = kgPerHaCm(rowOf(TABLES.heights, "orchardgrass-legume"), "excellent");
    const eaten = (coverOfHeight(7 * INCH_CM, perCm) - coverOfHeight(3 * INCH_CM, perCm)) / LB_PER_ACRE;
    expect(eaten).toBeGreaterThan(1200);
    expect(eaten).toBeLessThan(1400);
  });

  it("AHDB: a residual of about 1,500 kg/ha is 4 cm", () => {
    expect(heightOfCover(1500, good)).toBeCloseTo(4, 9);
  });

  it("Meat & Livestock Australia: 2,500 kg/ha is about 12 cm, and 12 cm may be it", () => {
    expect(off(coverOfHeight(12, good), 2500)).toBeLessThan(0.05);
    const [least, most] = coverRangeOfHeight(12, mixed);
    expect(least).toBeLessThan(2500);
    expect(most).toBeGreaterThan(2500);
  });
});
