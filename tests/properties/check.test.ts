/** What holds for the check of any plan on any day, however it was typed. */
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import type { Scenario } from "../../src/farm/scenario.js";
import type { Cut, Plan, Stay } from "../../src/plan/plan.js";
import { ruleOf } from "../../src/rules/index.js";
import { RULE_IDS, type RuleId, type Use } from "../../src/rules/rule.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { cows, ewes, hens, pigs } from "../rules/animals.js";
import { day } from "../rules/grid.js";
import { frozen } from "../rules/rule-cases.js";

const DAYS = 45;

/** A farm on which every rule has something to say. */
function busyFarm(): Scenario {
  const cells = [
    cell("A", { wants: ["opening"], shade: true }), cell("B", { areaHa: 0.12, wants: ["scratching"], water: "carted", past: [{ by: "layers", lastDay: "2027-03-01", share: 0.4 }] }),
    cell("C", { field: "Far", closed: [{ firstDay: day(5), lastDay: day(20), reason: "hay" }], coverKgPerHa: 3400 }),
    cell("D", { field: "Far", wants: ["fertility"], wetGround: true, pastNitrogen: [{ day: "2026-10-01", kgPerHa: 240 }], past: [{ by: "pigs", lastDay: "2026-09-01", share: 0.6 }] }),
    cell("E", { ours: { firstDay: day(8), lastDay: day(40) }, coverDate: day(8), waterWalkM: 150, mow: false }),
  ];
  const groups = [
    cows({ young: { head: 4, weightKg: 80, gainKgPerDay: 1 } }),
    group("Bull", { head: 1, weightKg: 900, runsWith: { with: "Cows", days: [{ firstDay: day(10), lastDay: day(25) }] } }),
    ewes({ here: [{ firstDay: day(1), lastDay: day(12) }, { firstDay: day(20), lastDay: day(45) }] }),
    pigs({ gainKgPerDay: 0.6, here: [{ firstDay: day(3), lastDay: day(40) }] }), hens({ follows: "Cows", needsTow: true }),
  ];
  return tinyFarm({
    days: DAYS, cells, groups,
    rules: { "density-ceiling": { figures: { most: 12000 } }, "rate-ceiling": { figures: { most: 3000 } }, water: { figures: { "carted-most": 100 } } },
    more: {
      kit: { nets: 1, reels: 1, reelM: 200, energisers: 2 },
      holds: [{ name: "Held", days: { firstDay: day(15), lastDay: day(17) }, group: "Cows", cell: "A", yard: null, cut: null }],
      housingOrders: [{ name: "Order", known: day(1), kinds: ["layers"], firstDay: day(30), lastDay: day(35) }],
      standstills: [{ name: "Standstill", firstDay: day(38), lastDay: day(42) }],
      people: [{ name: "Owner", tows: true, minutesByWeekday: [120, 120, 120, 120, 120, 60, 0], minutesByDay: {}, away: [{ firstDay: day(22), lastDay: day(23) }] }],
    },
  });
}

const FARM = frozen(busyFarm());

const dates = fc.integer({ min: -5, max: DAYS + 5 }).map((n) => day(n));
const typedDates = fc.oneof({ weight: 20, arbitrary: dates }, { weight: 1, arbitrary: fc.constantFrom("", "2027-02-30", "soon", "10/06/2027") });
const places = fc.oneof(
  { weight: 12, arbitrary: fc.constantFrom("A", "B", "C", "D", "E").map((name) => ({ cell: name, yard: null })) },
  { weight: 4, arbitrary: fc.constant({ cell: null, yard: "Yard" }) },
  { weight: 1, arbitrary: fc.constantFrom({ cell: "Z", yard: null }, { cell: null, yard: "Nowhere" }, { cell: null, yard: null }, { cell: "A", yard: "Yard" }) },
);
const stays: fc.Arbitrary<Stay> = fc
  .record({ group: fc.constantFrom("Cows", "Bull", "Ewes", "Pigs", "Hens", "Geese"), place: places, firstDay: typedDates, lastDay: typedDates })
  .map(({ group: name, place, firstDay, lastDay }) => ({ group: name, ...place, firstDay, lastDay }));
const cuts: fc.Arbitrary<Cut> = fc.record({
  cell: fc.constantFrom("A", "B", "C", "E", "Z"), cut: fc.constantFrom("hay" as const, "topping" as const), day: typedDates,
});
const typedPlans: fc.Arbitrary<Plan> = fc.record({ stays: fc.array(stays, { maxLength: 30 }), cuts: fc.array(cuts, { maxLength: 4 }) });

/** Plans without a typing error: each group's days cut into stays, each group in cells of its own. */
const OWN: Readonly<Record<string, readonly string[]>> = { Cows: ["A", "C"], Ewes: ["D"], Pigs: ["B"], Hens: ["E"] };
const apartPlans: fc.Arbitrary<Plan> = fc
  .tuple(...Object.entries(OWN).map(([name, cells]) =>
    fc.array(fc.record({ place: fc.constantFrom(...cells, "yard"), days: fc.integer({ min: 1, max: 9 }) }), { minLength: 12, maxLength: 12 }).map((runs) => laid(name, runs))))
  .map((groups) => ({ stays: groups.flat(), cuts: [] }));

function laid(name: string, runs: readonly { place: string; days: number }[]): Stay[] {
  const found: Stay[] = [];
  let at = 1;
  for (const { place, days } of [...runs, { place: "yard", days: DAYS }]) {
    if (at > DAYS) break;
    const last = Math.min(DAYS, at + days - 1);
    found.push({ group: name, cell: place === "yard" ? null : place, yard: place === "yard" ? "Yard" : null, firstDay: day(at), lastDay: day(last) });
    at = last + 1;
  }
  return found;
}

function withUse(use: (id: RuleId) => Use): Scenario {
  const farm = Object.fromEntries(RULE_IDS.map((id) => [id, { ...FARM.rules.farm[id], use: use(id) }])) as Scenario["rules"]["farm"];
  return { ...FARM, rules: { ...FARM.rules, farm } };
}

describe("the check of any plan", () => {
  test.prop([typedPlans])("never throws, and leaves farm and plan as they were", (plan) => {
    const before = JSON.stringify(plan);
    checkPlan(FARM, frozen(plan));
    expect(JSON.stringify(plan)).toBe(before);
  });

  test.prop([typedPlans])("tells breaches and charges inside the season, no charge below nothing", (plan) => {
    const { breaches, charges, cost } = checkPlan(FARM, plan);
    for (const { firstDay, lastDay } of [...breaches, ...charges]) {
      expect(firstDay >= FARM.season.firstDay && firstDay <= lastDay && lastDay <= FARM.season.lastDay).toBe(true);
    }
    expect(charges.filter(({ money }) => !(money > 0))).toEqual([]);
    expect(cost).toBeGreaterThanOrEqual(0);
  });

  test.prop([typedPlans, fc.infiniteStream(fc.nat())])("does not hang on the order of its lines", (plan, random) => {
    const shuffled = <T>(items: readonly T[]): T[] => items.map((item) => ({ item, key: random.next().value })).sort((a, b) => a.key - b.key).map(({ item }) => item);
    expect(checkPlan(FARM, { stays: shuffled(plan.stays), cuts: shuffled(plan.cuts) })).toEqual(checkPlan(FARM, plan));
  });

  test.prop([typedPlans])("closes each cell's grass to the kilogram", (plan) => {
    for (const { balance, coverKgPerHa, openHa, cell: name } of checkPlan(FARM, plan).cells) {
      const { start, grown, eaten, trodden, cut, end } = balance;
      const areaHa = FARM.cells.find((c) => c.name === name)!.areaHa;
      expect(start + grown - eaten - trodden - cut).toBeCloseTo(end, 3);
      expect(start).toBeCloseTo(coverKgPerHa[0]! * areaHa, 6);
      expect(Math.min(eaten, trodden, cut, ...coverKgPerHa, ...openHa)).toBeGreaterThanOrEqual(-1e-9);
      expect(Math.max(...openHa)).toBeLessThanOrEqual(areaHa + 1e-9);
    }
  });

  test.prop([typedPlans])("is silent on rules that are off", (plan) => {
    const off = withUse((id) => (ruleOf(id).uses.includes("off") ? "off" : FARM.rules.farm[id].use));
    const { breaches, charges } = checkPlan(off, plan);
    expect([...breaches, ...charges].filter(({ rule }) => ruleOf(rule).uses.includes("off"))).toEqual([]);
  });

  test.prop([typedPlans])("turns each charge into a breach where a rule is made hard", (plan) => {
    const may = (id: RuleId) => ruleOf(id).uses.includes("hard") && ruleOf(id).uses.includes("charged");
    const soft = checkPlan(FARM, plan);
    const hard = checkPlan(withUse((id) => (may(id) ? "hard" : FARM.rules.farm[id].use)), plan);
    const count = (found: readonly { rule: RuleId }[]) => found.filter(({ rule }) => may(rule)).length;
    expect(count(hard.charges)).toBe(0);
    expect(count(hard.breaches)).toBe(count(soft.breaches) + count(soft.charges));
    expect(hard.cells).toEqual(soft.cells);
  });

  test.prop([apartPlans])("feeds each grazing day once, from the ground or from the store", (plan) => {
    const cattle = tinyFarm({ days: DAYS, cells: ["A", "C"].map((name) => cell(name, { areaHa: 5 })), groups: [cows()] });
    const { cells, measures, breaches } = checkPlan(cattle, { stays: plan.stays.filter((stay) => stay.group === "Cows"), cuts: [] });
    expect(breaches.filter(({ rule }) => rule === "demand-met" || rule === "every-day-placed")).toEqual([]);
    const eaten = cells.reduce((sum, { balance }) => sum + balance.eaten, 0);
    expect(eaten + measures.hayFedKg * 0.88 * 0.9 * 0.95).toBeCloseTo(75 * DAYS, 6);
  });

  test.prop([apartPlans])("does not hang on the order of the farm's groups and cells", (plan) => {
    const turned: Scenario = { ...FARM, groups: [...FARM.groups].reverse(), cells: [...FARM.cells].reverse(), fields: [...FARM.fields].reverse() };
    const key = (found: { rule: RuleId; group: string | null; cell: string | null; firstDay: string; found: string }) =>
      [found.firstDay, found.rule, found.group, found.cell, found.found].join("|");
    const here = checkPlan(FARM, plan);
    const there = checkPlan(turned, plan);
    expect(there.breaches.map(key).sort()).toEqual(here.breaches.map(key).sort());
    expect(there.cost).toBeCloseTo(here.cost, 6);
  });
});
