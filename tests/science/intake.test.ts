import { describe, expect, it } from "vitest";
import { animalUnits, intakeKgDmPerDay, liveWeightKg, takenKgDm } from "../../src/science/intake.js";
import { rowOf } from "../../src/science/tables.js";
import { LB, off, TABLES } from "./published.js";

const unit = (key: string) => rowOf(TABLES.animalUnits, key).value;

describe("intake", () => {
  it("counts gain from the first day", () => {
    expect(liveWeightKg(25, 0.65, 0)).toBe(25);
    expect(liveWeightKg(25, 0.65, 100)).toBeCloseTo(90, 12);
  });

  it("counts what is trodden once, on top", () => {
    expect(takenKgDm(100, 0.15)).toBeCloseTo(115, 12);
  });
});

describe("outside truth: intake and animal units", () => {
  it("Penn State step 1: 30 cows of 1,300 lb with calves and a bull are 49.7 animal units", () => {
    expect(30 * unit("psu.cow with calf") + unit("psu.bull")).toBeCloseTo(49.7, 9);
  });

  it("NCAT: a cow of 1,050 lb at 3 % eats 31.5 lb a day", () => {
    expect(intakeKgDmPerDay(1050 * LB, 0.03) / LB).toBeCloseTo(31.5, 9);
  });

  it("a prescribed-grazing worksheet: 29,304 lb of cattle at 3 % eat 879 lb a day", () => {
    const weight = 14 * 1250 + 10_304 + 1500;
    expect(weight).toBe(29_304);
    expect(Math.round(intakeKgDmPerDay(weight * LB, 0.03) / LB)).toBe(879);
  });

  it("Univ. of Georgia: a steer of 600 lb at 3.2 % eats 19.2 lb a day", () => {
    expect(intakeKgDmPerDay(600 * LB, 0.032) / LB).toBeCloseTo(19.2, 9);
  });

  it("Univ. of Kentucky: cows, yearlings, calves and a bull of 1,800 lb are 38.8 animal units", () => {
    expect(25 * 1 + 20 * 0.5 + 8 * 0.25 + animalUnits(1800 * LB, 1000 * LB)).toBeCloseTo(38.8, 9);
  });

  // Texas chart: head, weight and share of weight give lb a year; 9,490 lb is one animal unit.
  it.each([["texas.cow", 1000, 2.6], ["texas.horse", 1100, 3], ["texas.ewe", 130, 3.5], ["texas.nanny", 90, 4.5], ["texas.boer cross", 125, 4], ["texas.angora", 70, 4.5]])(
    "NRCS Texas: %s at %d lb eating %d %% of its weight", (key, weight, percent) => {
      expect(Math.abs(intakeKgDmPerDay(weight * LB, percent / 100) / LB / unit("unit.nrcs") - unit(key))).toBeLessThan(0.01);
    },
  );

  it("NRCS handbook: the dry cow's and the bull's daily forage over 26 lb are their animal units", () => {
    expect(off(24 / unit("unit.nrcs"), unit("nrcs.cow dry"))).toBeLessThan(0.005);
    expect(off(35 / unit("unit.nrcs"), unit("nrcs.bull"))).toBeLessThan(0.005);
  });

  it("warns of tables that must not be mixed: a cow with calf is 1.0, 1.35 or 1.6 animal units", () => {
    expect(["nrcs", "vallentine", "psu"].map((table) => unit(`${table}.cow with calf`))).toEqual([1, 1.35, 1.6]);
  });
});
