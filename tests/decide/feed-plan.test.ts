/** The pinch that the budget names is where a planned season feeds hay. */
import { describe, expect, it } from "vitest";
import { feedBudget } from "../../src/decide/feed-budget.js";
import { pinches } from "../../src/decide/feed/pinch.js";
import { planSeason } from "../../src/decide/plan-season.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { daysBetween } from "../../src/quantity/calendar.js";
import { buildSeason } from "../../src/season/build-season.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { inThisThread } from "./in-this-thread.js";

const SLOW = 120_000;
const EFFORT = { name: "quick", seed: 1, capSeconds: null, steps: { seeds: 1, search: 10_000, polishes: 1, bound: 4, windowRounds: 0 } } as const;
const byMonth = (figures: Readonly<Record<number, number>>): number[] => Array.from({ length: 12 }, (_, month) => figures[month + 1] ?? 0);
const cells = (count: number, coverKgPerHa: number, apart: number, growthByMonth: readonly number[]) =>
  Array.from({ length: count }, (_, i) => cell(`A${i + 1}`, { areaHa: 0.35, coverKgPerHa: coverKgPerHa + apart * i, growthByMonth, mow: false, coverDate: "2027-04-10" }));

/** Late grass: as much grows as four cows eat, but nothing is high enough to be entered for the first week. */
const LATE_SPRING = tinyFarm({ days: 105, firstDay: "2027-04-10", cells: cells(8, 1540, 3, byMonth({ 4: 30, 5: 60, 6: 60, 7: 60 })), groups: [group("Cows", { head: 4 })] });
/** Enough until June is out, next to nothing in July, and grass again from August. */
const DRY_JULY = tinyFarm({ days: 105, firstDay: "2027-05-20", cells: cells(8, 2100, 60, byMonth({ 5: 45, 6: 25, 7: 2, 8: 55 })), groups: [group("Cows", { head: 6 })] });

async function yardDays(scenario: Scenario): Promise<readonly number[]> {
  const solver = highsSolver();
  const planned = await planSeason(scenario, { threads: inThisThread(solver), solver }, EFFORT, () => undefined, { asked: false });
  expect(planned.kind).toBe("plan");
  return planned.plan.stays.filter((stay) => stay.yard !== null).flatMap((stay) => {
    const first = daysBetween(scenario.season.firstDay, stay.firstDay);
    return Array.from({ length: daysBetween(stay.firstDay, stay.lastDay) + 1 }, (_, i) => first + i);
  });
}

it("nothing is grazed before the cover to enter on stands, though there is grass above what must be left", async () => {
  const { weeks } = await feedBudget(buildSeason(LATE_SPRING), highsSolver());
  expect(weeks[0]!.groups[0]!.grassKg).toBeCloseTo(0, 6);
  expect(weeks[0]!.daysInHand).toBeGreaterThan(3);
  expect(weeks[1]!.groups[0]!.grassKg).toBeGreaterThan(100);
});

describe("the weeks that pinch", { timeout: SLOW }, () => {
  it.each([["a late spring", LATE_SPRING, [0, 14]], ["a dry July", DRY_JULY, [28, 91]]] as const)("in %s hold most of the days on which a plan feeds hay, or lie beside them", async (_, scenario, [from, to]) => {
    const { weeks } = await feedBudget(buildSeason(scenario), highsSolver());
    const spans = pinches(weeks);
    expect(spans.length).toBeGreaterThan(0);
    expect(spans.every((span) => span.from * 7 >= from - 7 && span.to * 7 <= to)).toBe(true);
    const days = await yardDays(scenario);
    expect(days.length).toBeGreaterThan(3);
    const near = days.filter((t) => spans.some((span) => t >= (span.from - 1) * 7 && t < (span.to + 2) * 7));
    expect(near.length).toBeGreaterThan(0.8 * days.length);
  });
});
