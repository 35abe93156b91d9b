import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { nettedM2, penRun, positionsThatFit, shareCovered } from "../../src/science/pen-run.js";
import { classRow, rowOf } from "../../src/science/tables.js";
import { ACRE, LB, LB_PER_ACRE, off, SQUARE_FOOT, TABLES } from "./published.js";

describe("pen run", () => {
  it("covers far less than it seems: one pen of 14.4 m2 moved daily for 35 days on 0.2 ha", () => {
    const run = penRun(0.2, 0.00144, 35, 1, 75 * 0.045 / 49, 170);
    expect(run).toMatchObject({ positions: 138, used: 35 });
    expect(run.shareCovered).toBeCloseTo(0.252, 3);
    expect(run.seasonsToCover).toBeCloseTo(138 / 35, 9);
  });

  it("never covers more than the ground, and fills what it needs of whole positions", () => {
    const area = fc.double({ min: 0.01, max: 2, noNaN: true });
    const position = fc.double({ min: 0.0005, max: 0.05, noNaN: true });
    fc.assert(fc.property(area, position, fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 7 }), (ground, each, days, step) => {
      const run = penRun(ground, each, days, step, 0.1, 250);
      expect(run.used).toBeLessThanOrEqual(run.positions);
      expect(run.used * each).toBeLessThanOrEqual(ground + 1e-6);
      expect(run.shareCovered).toBeLessThanOrEqual(1);
      expect(run.longestStandDays).toBeGreaterThanOrEqual(run.passesUnderCeiling * step);
    }));
  });

  it("counts whole positions as they fit, not as fractions round", () => {
    expect(positionsThatFit(0.3, 0.1)).toBe(3);
    expect(positionsThatFit(0.29, 0.1)).toBe(2);
  });
});

describe("outside truth: pens and nets", () => {
  it("a netting seller's page: 50 m in a square is 156 m2; 75 m round 12.5 by 25 m is 312 m2", () => {
    expect(Math.floor(nettedM2(50))).toBe(156);
    expect(nettedM2(75, 12.5)).toBe(312.5);
  });

  it("no rectangle of a net holds more than the square", () => {
    fc.assert(fc.property(fc.double({ min: 10, max: 400, noNaN: true }), fc.double({ min: 0, max: 0.5, noNaN: true }), (edge, share) => {
      expect(nettedM2(edge, edge * share)).toBeLessThanOrEqual(nettedM2(edge) + 1e-9);
    }));
  });

  it("Reg. (EC) 2295/2003: 300 hens need 3,000 m2 in all and 750 m2 in use: four cells just pass, five of 600 m2 fail", () => {
    const all = 300 * rowOf(TABLES.poultry, "layers.range-rotated").value;
    const inUse = 300 * rowOf(TABLES.poultry, "layers.in-use").value;
    expect([all, inUse]).toEqual([3000, 750]);
    expect(positionsThatFit(all, inUse)).toBe(4);
    expect(all / 5).toBeLessThan(inUse);
  });

  it("a practitioner's page: 2,000 hens on half a square foot of new ground a day: 43 days an acre, about 130 days on 3 ac", () => {
    const perDay = (2000 * 0.5 * SQUARE_FOOT) / 10_000;
    expect(positionsThatFit(ACRE, perDay)).toBe(43);
    expect(positionsThatFit(3 * ACRE, perDay)).toBe(130);
  });

  // The claim of some 300 lb N/ac in the trade is 2.6 to 3.2 times what these give.
  it.each([[0.12, 93], [0.147, 114]])("75 birds over 35 positions of 120 square feet at %d lb N a bird lay down %d lb/ac", (perBird, printed) => {
    const position = (120 * SQUARE_FOOT) / 10_000;
    const run = penRun(1, position, 35, 1, (75 * perBird * LB) / 35, 170);
    expect(off(run.nitrogenKgPerHa / LB_PER_ACRE, printed)).toBeLessThan(0.01);
  });

  // Hens at 0.56 kg a year standing for a day on so many square metres each.
  it.each([[0.19, 81], [0.46, 33], [1, 15], [2.5, 6.1], [4, 3.8]])("a hen's day on %d m2 lays down %d kg N/ha", (squareMetres, printed) => {
    const hen = classRow(TABLES.nitrogen, "layers", null, 1.9).value;
    expect(off(penRun(1, squareMetres / 10_000, 1, 1, hen, 170).nitrogenKgPerHa, printed)).toBeLessThan(0.025);
  });

  it("on the smallest footprint a pen of hens may stand two days under 170 kg N/ha", () => {
    const hen = classRow(TABLES.nitrogen, "layers", null, 1.9).value;
    const foot = rowOf(TABLES.poultry, "broilers.pen").value / 10_000;
    expect(penRun(1, foot, 100, 1, hen, 170).longestStandDays).toBe(2);
  });

  it("Animals 10:1666: 8 growers 7 days on 160 m2 press like 37/ha over 98 days", () => {
    const pressure = (8 * 7) / 0.016;
    expect(off(pressure, rowOf(TABLES.pigs, "growers.pressure").value)).toBeLessThan(0.04);
    expect(pressure).toBeLessThan(rowOf(TABLES.defaults, "pig-pressure.most").value);
    expect(shareCovered(1, 0.016, 0.2)).toBeCloseTo(0.08, 9);
  });
});
