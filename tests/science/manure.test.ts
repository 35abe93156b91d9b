import { describe, expect, it } from "vitest";
import { nitrogenKgPerStay } from "../../src/science/manure.js";
import { classRow, rowOf } from "../../src/science/tables.js";
import { ACRE, LB, off, TABLES } from "./published.js";

const daily = (kind: string, animalClass: string | null, weight: number) => classRow(TABLES.nitrogen, kind, animalClass, weight).value;

describe("outside truth: nitrogen", () => {
  it("Univ. of Wisconsin A3601: 50 dairy cows at 65 lb a year drop 3,250 lb", () => {
    expect(nitrogenKgPerStay(50, 65 / 365, 365)).toBeCloseTo(3250, 9);
  });

  it("Salomon et al. 2015: 72 suckler cows on a hectare for a month drop about 500 kg", () => {
    const dropped = nitrogenKgPerStay(72, daily("cattle", "cow with calf", 620), 30);
    expect(off(dropped, 500)).toBeLessThan(0.03);
  });

  // SI 2015/668 and SI 2008/2349, g N a day and the head that a hectare bears at 170 kg a year.
  it.each([
    ["cattle", "cow with calf", 620, 227, 2.05], ["cattle", "cow with calf", 480, 167, 2.79], ["cattle", "steer", 400, 137, 3.4],
    ["cattle", "calf", 150, 91, 5.12], ["cattle", "bull", 900, 132, 3.53], ["cattle", "milking cow", 600, 276, 1.69],
    ["sheep", "ewe with lambs", 55, 21, 22.2], ["sheep", "ewe with lambs", 60, 33, 14.1], ["goats", "dry goat", 60, 41, 11.4],
    ["horses", "horse", 500, 58, 8], ["pigs", "sow with litter", 220, 49, 9.5], ["pigs", "finisher", 80, 33, 14.1], ["pigs", "grower", 50, 24, 19.4],
  ])("England: %s, %s of %d kg: %d g a day, %d head/ha at 170 kg", (kind, animalClass, weight, grams, head) => {
    const perDay = daily(kind, animalClass, weight);
    expect(perDay).toBe(grams / 1000);
    expect(off(170 / nitrogenKgPerStay(1, perDay, 365), head)).toBeLessThan(0.006);
  });

  it("a hen's nitrogen lies between the published bounds, the high one being 106 lb/ac from 50 hens an acre", () => {
    const year = nitrogenKgPerStay(1, daily("layers", null, 1.9), 365);
    expect(year).toBeCloseTo(0.56, 2);
    expect(year).toBeGreaterThan(rowOf(TABLES.poultry, "layers.nitrogen-least").value);
    const bound = rowOf(TABLES.poultry, "layers.nitrogen-most").value;
    expect(year).toBeLessThan(bound);
    expect((106 / 50) * LB).toBeCloseTo(bound, 2);
  });

  it("2,500 hens/ha lay down 1,400 kg, eight times the holding's ceiling", () => {
    const laid = nitrogenKgPerStay(2500, daily("layers", null, 1.9), 365);
    expect(off(laid, 1400)).toBeLessThan(0.001);
    expect(laid).toBeGreaterThan(8 * rowOf(TABLES.defaults, "nitrogen-ceiling.holding").value);
  });

  it("50 hens an acre at the high figure are 106 lb/ac", () => {
    const high = rowOf(TABLES.poultry, "layers.nitrogen-most").value;
    expect(off(nitrogenKgPerStay(50, high / 365, 365) / ACRE, (106 * LB) / ACRE)).toBeLessThan(0.005);
  });
});
