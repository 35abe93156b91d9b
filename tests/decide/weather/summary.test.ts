/** What many years say together, from years made up so that the answer can be counted. */
import { describe, expect, it } from "vitest";
import type { Failure, LivedYear } from "../../../src/decide/weather/lived-year.js";
import { weatherSummary } from "../../../src/decide/weather/weather-summary.js";
import { tinyFarm, cell, group } from "../../fixtures/tiny-farm.js";

const farm = tinyFarm({ cells: [cell("A1")], groups: [group("Cows")], more: { hay: { inStoreKg: 1000, winterNeedKg: 900, dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05 } } });

const failure = (day: number, name: string, rule: Failure["rule"] = "entry-cover", cause: Failure["cause"] = "grass"): Failure =>
  ({ day, cause, rule, group: "Cows", cell: name, found: "", allowed: "", inYard: true });

/** Year i of 20 feeds i x 10 kg in its second week; dry ones first. */
function year(i: number, own: Failure | null = null): LivedYear {
  const failures = { grass: null, late: null, away: null, ...(own && { [own.cause]: own }) };
  const kind = i < 5 ? "dry" : i < 15 ? "usual" : "wet";
  return { kind, growth: 1, hayFedKg: 10 * i, hayMadeKg: 0, hayByWeek: [0, 10 * i, 10 * i], yardDays: { Cows: i }, failures, failure: own, daysAmiss: own === null ? 0 : i };
}

const years = Array.from({ length: 20 }, (_, i) =>
  year(i + 1, i < 3 ? failure(15, "A1") : i < 5 ? failure(3, "A2") : i === 5 ? failure(20, "A1", "residual-cover", "late") : null));
const summary = weatherSummary(farm, years);

describe("weatherSummary", () => {
  it("counts the years that fail, and in which week each began to", () => {
    expect(summary.failed).toMatchObject({ years: 6, share: 0.3 });
    expect(summary.byWeek).toEqual([2, 0, 4]);
    expect(summary.middleWeek).toBe(2);
  });

  it("tells how much of a failed year is amiss", () => {
    expect(summary.badness).toEqual([{ upToDays: 3, years: 3 }, { upToDays: 14, years: 3 }, { upToDays: null, years: 0 }]);
    expect(summary.middleDaysAmiss).toBe(3);
    expect(weatherSummary(farm, [year(8)])).toMatchObject({ middleDaysAmiss: null, badness: [{ years: 0 }, { years: 0 }, { years: 0 }] });
  });

  it("tells causes apart, and in each the rule and cell by which most years fail first", () => {
    expect(summary.byCause.grass.failed.years).toBe(5);
    expect(summary.byCause.grass.weak.map(({ rule, cell: name, years: count }) => [rule, name, count])).toEqual([["entry-cover", "A1", 3], ["entry-cover", "A2", 2]]);
    expect(summary.byCause.grass.weakRules.map(({ rule, years: count }) => [rule, count])).toEqual([["entry-cover", 5]]);
    expect(summary.byCause.late.weak.map(({ rule, cell: name, years: count }) => [rule, name, count])).toEqual([["residual-cover", "A1", 1]]);
    expect(summary.byCause.away).toMatchObject({ failed: { years: 0, share: 0 }, middleWeek: null, weak: [] });
  });

  // Of 10, 20, ... 200: number 10, 16 and 19; the ranks of the median of 20 are 6 and 15 (see tests/science/quantile.test.ts)
  it("gives hay that is enough in half the years, 8 in 10 and 19 in 20, with how sure that is", () => {
    expect(summary.hay.map(({ share, amount }) => [share, amount])).toEqual([[0.5, 100], [0.8, 160], [0.95, 190]]);
    expect(summary.hay[0]).toMatchObject({ low: 60, high: 150 });
    expect(summary.hay[2]!.high).toBeNull();
    expect(summary.hayByWeek.map(({ kg }) => kg)).toEqual([[0, 100, 100], [0, 160, 160], [0, 190, 190]]);
  });

  // 1,000 in store less what is fed leaves the winter's 900 up to 100 kg
  it("counts the years that leave the winter's hay", () => {
    expect(summary.winterKept.years).toBe(10);
  });

  it("tells dry, usual and wet years apart", () => {
    expect(summary.kinds).toEqual([
      { kind: "dry", years: 4, failed: 4, hayFedKg: 20, yardDays: { Cows: 2 } },
      { kind: "usual", years: 10, failed: 2, hayFedKg: 90, yardDays: { Cows: 9 } },
      { kind: "wet", years: 6, failed: 0, hayFedKg: 170, yardDays: { Cows: 17 } },
    ]);
    expect(weatherSummary(farm, [year(8)]).kinds[0]).toEqual({ kind: "dry", years: 0, failed: 0, hayFedKg: null, yardDays: null });
  });
});
