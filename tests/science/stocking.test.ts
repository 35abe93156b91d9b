import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { carryingCapacityKgPerHa, cellsNeeded, daysAhead, stockingDensityKgPerHa, targetCoverKgPerHa } from "../../src/science/stocking.js";
import { rowOf } from "../../src/science/tables.js";
import { ACRE, LB, LB_PER_ACRE, off, TABLES } from "./published.js";

describe("stocking", () => {
  it("needs one cell more than rest over stay, rounded up", () => {
    expect([cellsNeeded(42, 7), cellsNeeded(42, 3), cellsNeeded(0, 3), cellsNeeded(1, 3)]).toEqual([7, 15, 1, 2]);
  });

  it("gives every cell its rest, and no cell too many", () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 1, max: 20 }), (rest, stay) => {
      const cells = cellsNeeded(rest, stay);
      expect((cells - 1) * stay).toBeGreaterThanOrEqual(rest);
      if (cells > 1) expect((cells - 2) * stay).toBeLessThan(rest);
    }));
  });

  it("area times density is the live weight; doubling the days halves what is carried, doubling growth doubles it", () => {
    expect(stockingDensityKgPerHa(3100, 0.28) * 0.28).toBeCloseTo(3100, 9);
    const carried = carryingCapacityKgPerHa(6500, 0.7, 0.025, 200);
    expect(carryingCapacityKgPerHa(6500, 0.7, 0.025, 400)).toBeCloseTo(carried / 2, 9);
    expect(carryingCapacityKgPerHa(13_000, 0.7, 0.025, 200)).toBeCloseTo(carried * 2, 9);
  });
});

describe("outside truth: stocking", () => {
  it("Penn State steps 3 and 4: 35 days of rest and stays of 3 need 13 paddocks, 4.6 ac each of 60", () => {
    expect(cellsNeeded(35, 3)).toBe(13);
    expect((60 / cellsNeeded(35, 3)).toFixed(1)).toBe("4.6");
  });

  it("Univ. of Florida: rest 28 days, stay 4, 8 paddocks", () => {
    expect(cellsNeeded(28, 4)).toBe(8);
  });

  it("USDA-NRCS Missouri: 8,000 lb/ac, 65 %, 3 % of weight, 200 days carry 867 lb/ac, 1.73 steers of 500 lb, 1.33 of 650 lb", () => {
    const lbPerAcre = carryingCapacityKgPerHa(8000 * LB_PER_ACRE, 0.65, 0.03, 200) / LB_PER_ACRE;
    expect(Math.round(lbPerAcre)).toBe(867);
    expect((lbPerAcre / 500).toFixed(2)).toBe("1.73");
    expect((lbPerAcre / 650).toFixed(2)).toBe("1.33");
  });

  it("Oklahoma State: 50 cows of 1,000 lb on 200 ac are 4 ac an animal unit", () => {
    const density = stockingDensityKgPerHa(50 * 1000 * LB, 200 * ACRE);
    expect((1000 * LB) / density / ACRE).toBeCloseTo(4, 9);
  });

  it("Irish Farmers Journal: 55 kg/ha/d, round of 21 days, residual 150 above 4 cm: about 1,300 kg/ha", () => {
    expect(off(targetCoverKgPerHa(55, 21, 150), 1300)).toBeLessThan(0.01);
  });

  // Its days are worked with 3 head of 18 kg.
  it.each([[702, 13], [864, 16], [540, 10]])("Irish Farmers Journal: a farm cover of %d is %d days ahead", (cover, days) => {
    expect(daysAhead(cover, 3 * 18)).toBeCloseTo(days, 9);
  });

  it.each([[3, 16, 48], [2.3, 17.5, 40]])("Irish Farmers Journal and a NZ farm: %d cows/ha eating %d kg want %d kg/ha a day", (head, kg, printed) => {
    expect(off(targetCoverKgPerHa(head * kg, 1, 0), printed)).toBeLessThan(0.01);
  });

  it("Making More from Sheep 8.4: 1,880 kg/ha for 42 days carry 13.4 ewes/ha where waste is added, 13.1 where it is divided out", () => {
    const available = targetCoverKgPerHa(40, 42, 1700) - 1500;
    expect(available).toBe(1880);
    expect((available / (2.9 * 1.15 * 42)).toFixed(1)).toBe("13.4");
    expect(carryingCapacityKgPerHa(available, 0.85, 1, 42) / 2.9).toBeCloseTo(13.1, 1);
  });

  it("UMaine: 9 cow-days an acre-inch: 5 in above the residual feed 45 cows a day and acre, 100 cows take 2.2 ac", () => {
    const [least, most] = rowOf(TABLES.heights, "mixed").value.good;
    const cowDay = rowOf(TABLES.animalUnits, "unit.umaine").value;
    const cowDays = daysAhead(5 * ((least + most) / 2), cowDay);
    // The page rounds 9.17 cow-days an acre-inch to 9.
    expect(off(cowDays, 45)).toBeLessThan(0.02);
    expect((100 / cowDays).toFixed(1)).toBe("2.2");
  });
});
