import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import { RULE_IDS } from "../../src/rules/rule.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { bare, cows, hens } from "../rules/animals.js";
import { day, planFromRows } from "../rules/grid.js";

const bull = group("Bull", {
  head: 1, weightKg: 800, intake: { shareOfWeight: 0.02, youngShareOfWeight: 0 }, nitrogenKgPerHeadDay: 0.1,
  runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(10) }] },
});
const scenario = tinyFarm({ days: 10, cells: [bare("A", 2600), bare("B", 2600), bare("C", 2600, { field: "Far" })], groups: [cows(), bull, hens({ follows: "Cows" })] });
const plan = planFromRows(scenario, { Cows: "A*2 B*3 C*3 yard*2", Bull: "A*2 B*3 C*3 yard*2", Hens: "yard*3 A*7" });
const report = checkPlan(scenario, plan);

describe("checkPlan", () => {
  it("has no breach where a plan keeps all rules", () => {
    expect(report.breaches).toEqual([]);
  });

  it("adds charges up by rule and in all", () => {
    const sum = report.charges.reduce((money, charge) => money + charge.money, 0);
    expect(report.cost).toBeCloseTo(sum, 9);
    expect(Object.keys(report.chargesByRule)).toEqual([...RULE_IDS]);
    expect(Object.values(report.chargesByRule).reduce((a, b) => a + b, 0)).toBeCloseTo(sum, 9);
    // moves: 45 + 14, 45, 45 + 18 and 15 min of the cows; the hens' 45 min, their haul of 14 min apart
    expect(report.chargesByRule.people).toBeCloseTo(((59 + 45 + 63 + 15 + 45) * 14) / 60, 9);
    expect(report.chargesByRule["pen-steps"]).toBeCloseTo((14 * 14) / 60, 9);
    // two days of cows and bull, three of hens, at 2
    expect(report.chargesByRule["yard-room"]).toBe(10);
    expect(report.chargesByRule["demand-met"]).toBeCloseTo(((2 * 91 + 3 * 1.5) / (0.88 * 0.9 * 0.95)) * 0.15, 9);
  });

  it("measures what the plan comes to", () => {
    const { measures } = report;
    expect(measures.hayFedKg).toBeCloseTo((2 * 91 + 3 * 1.5) / (0.88 * 0.9 * 0.95), 9);
    expect(measures.hayMadeKg).toBe(0);
    // the cows to B, C and the yard, the hens to A; hauled to C, in another field, and from the yard to A
    expect([measures.moves, measures.hauls]).toEqual([4, 2]);
    expect(measures.yardDays).toEqual({ Cows: 2, Bull: 2, Hens: 3 });
    // 5 x 0.227 and 0.1 for two days on 0.3 ha; 60 x 0.0015 for seven
    expect(measures.nitrogenByCell.A).toBeCloseTo((2 * 1.235 + 7 * 0.09) / 0.3, 9);
    expect(measures.nitrogenInYardKg).toBeCloseTo(2 * 1.235 + 3 * 0.09, 9);
    expect(measures.nitrogenOnHoldingKgPerHa).toBeCloseTo((8 * 1.235 + 7 * 0.09) / 0.9, 9);
    // round 30, two groups 5 each, dusk 10; moves and steps on top
    expect(measures.minutesByDay).toEqual([109, 50, 95, 109, 50, 113, 80, 50, 65, 80].map((minutes) => expect.closeTo(minutes, 9)));
    expect(measures.minutesAtHomeByDay).toEqual(Array<number>(10).fill(600));
  });

  it("gives each cell's season", () => {
    const [a] = report.cells;
    expect([a!.cell, a!.workedHa, a!.openedHa]).toEqual(["A", expect.closeTo(0.09, 12), 0]);
    expect(a!.nitrogenKgPerHa).toBeCloseTo(report.measures.nitrogenByCell.A!, 9);
    expect(a!.coverKgPerHa).toHaveLength(11);
    // two days of 91 kg eaten by cows and bull, and a week of the hens' 1.5
    expect(a!.balance.eaten).toBeCloseTo(2 * 91 + 10.5, 9);
  });

  it("tells breaches by first day, then rules in their order", () => {
    const bad = planFromRows(scenario, { Cows: "A*2 . A Z*6", Bull: "A*10", Hens: "A*10" });
    const told = checkPlan(scenario, bad).breaches.map((breach) => [breach.firstDay, RULE_IDS.indexOf(breach.rule)] as const);
    const sorted = [...told].sort((a, b) => a[0].localeCompare(b[0]) || a[1] - b[1]);
    expect(told.length).toBeGreaterThan(5);
    expect(told).toEqual(sorted);
  });

  it("finds every day without a place in an empty plan", () => {
    const { breaches, cost } = checkPlan(tinyFarm({ days: 5, cells: [cell("A")], groups: [cows()] }), { stays: [], cuts: [] });
    expect(breaches).toEqual([{ rule: "every-day-placed", group: "Cows", cell: null, firstDay: day(1), lastDay: day(5), found: "no place", allowed: "1 place" }]);
    expect(cost).toBeGreaterThanOrEqual(0);
  });

  it("judges a rule by the group's own word, then the field's, then the farm's", () => {
    const own = { ...scenario.rules, groups: { Hens: { "follow-window": { figures: { price: 7 } } } }, fields: { Field: { "follow-window": { figures: { price: 5 } } } } };
    const late = planFromRows(scenario, { Cows: "A*2 B*3 C*3 yard*2", Bull: "A*2 B*3 C*3 yard*2", Hens: "yard*7 A*3" });
    const price = (rules: typeof scenario.rules) => checkPlan({ ...scenario, rules }, late).chargesByRule["follow-window"];
    expect([price(scenario.rules), price({ ...own, groups: {} }), price(own)]).toEqual([3, 5, 7]);
  });
});
