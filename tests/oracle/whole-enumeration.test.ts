/** Two seasons of the full size of the oracle: one group, three cells and the yard on eight days; two groups, two cells on five. */
import { beforeAll, describe, expect, it } from "vitest";
import { handRule } from "../../src/programme/hand-rule.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import { mendWindow } from "../../src/programme/window/windows.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { cell, tinyFarm } from "../fixtures/tiny-farm.js";
import { draftOf } from "../programme/drafts.js";
import { cows, ewes } from "../rules/animals.js";
import { day } from "../rules/grid.js";
import { buildSeason } from "../../src/season/build-season.js";
import { everyWay, judged } from "./enumerate.js";

const short = { "rest-period": { figures: { floor: 2, flush: 4, price: 2 } }, "stay-limit": { figures: { cattle: 1, sheep: 2, limit: 4, price: 3 } }, "ground-wants": { figures: { "fertility-price": 120 } } };

const HERD = tinyFarm({
  days: 8, groups: [cows()], rules: short,
  cells: [cell("A", { wants: ["fertility"] }), cell("B", { coverKgPerHa: 2100, closed: [{ reason: "nesting", firstDay: day(4), lastDay: day(5) }] }), cell("C", { field: "Far", areaHa: 0.4, water: "carted" })],
  more: { people: [{ name: "Owner", tows: true, minutesByWeekday: Array<number>(7).fill(105), minutesByDay: { [day(4)]: 50 }, away: [] }] },
});

const HERD_AND_FLOCK = tinyFarm({
  days: 5, groups: [cows(), ewes({ here: [{ firstDay: day(1), lastDay: day(5) }] })], rules: { ...short, "clean-ground": { figures: { worms: 3 } } },
  cells: [cell("A", { areaHa: 0.5, past: [{ by: "goats", lastDay: day(-1), share: 1 }] }), cell("B", { coverKgPerHa: 2000, wants: ["fertility"] })],
  more: { kit: { nets: null, reels: 6, reelM: 100, energisers: null } },
});

let highs: PricingSolver;
beforeAll(() => {
  highs = highsSolver();
});

/** The least cost of all ways that the check accepts, and how many ways there are and are accepted. */
function byTheCheck(scenario: Scenario): { ways: number; kept: number; least: number } {
  const season = buildSeason(scenario);
  const found = { ways: 0, kept: 0, least: Infinity };
  everyWay(season, null, (way) => {
    found.ways++;
    const { report, keeps } = judged(season, way);
    if (!keeps) return;
    found.kept++;
    found.least = Math.min(found.least, report.cost);
  });
  return found;
}

describe.each([
  { name: "one group, three cells, eight days", scenario: HERD, ways: 4 ** 8 },
  // Of the 9 ways of a day two share a cell
  { name: "two groups, two cells, five days", scenario: HERD_AND_FLOCK, ways: 7 ** 5 },
])("$name", ({ scenario, ways }) => {
  it("has one cheapest plan for check and programme", { timeout: 120_000 }, async () => {
    const found = byTheCheck(scenario);
    expect(found.ways).toBe(ways);
    expect(found.kept).toBeGreaterThan(100);
    const draft = draftOf(scenario);
    handRule(draft);
    expect(draft.over).toBe(0);
    const free = draft.season.groups.map((_, group) => ({ group, from: 0, to: draft.season.days - 1 }));
    let end = "better";
    while (end === "better") end = await mendWindow(draft, free, highs, { cards: 20_000, nodes: 5000, guardSeconds: 30 });
    expect(end).toBe("proven");
    expect(draft.cost).toBeCloseTo(found.least, 2);
  });
});
