/** Any valid plan is an answer of the day-indexed programme, and costs no more there than the check says. */
import { describe, expect, it } from "vitest";
import { dayIndexed } from "../../src/bench/day-indexed.js";
import { studyFarm } from "../../src/bench/study-farms.js";
import { checkPlan } from "../../src/check/check-plan.js";
import { cellSimulator } from "../../src/programme/cell-simulator.js";
import { Draft } from "../../src/programme/draft.js";
import { handRule } from "../../src/programme/hand-rule.js";
import { planOf } from "../../src/programme/plan-of.js";
import { anneal } from "../../src/programme/search.js";
import { snapshot, type Snapshot } from "../../src/programme/snapshot.js";
import type { Model } from "../../src/programme/solver.js";
import { buildSeason } from "../../src/season/build-season.js";
import type { Season } from "../../src/season/season.js";
import { highsSolver } from "../../src/solvers/highs.js";

const solver = highsSolver();

/** The programme with every group held where a plan has it. */
function heldTo(season: Season, plan: Snapshot): { model: Model; inside: boolean } {
  const { model, stand } = dayIndexed(season);
  const [lower, upper] = [model.lower.slice(), model.upper.slice()];
  let inside = true;
  season.groups.forEach((group, g) => group.present.forEach((present, t) => {
    if (!present) return;
    for (let place = -1; place < season.cells.length; place++) {
      const column = stand(g, place, t);
      const here = plan.place[g][t] === place;
      if (column >= 0) lower[column] = upper[column] = here ? 1 : 0;
      else if (here) inside = false;
    }
  }));
  return { model: { ...model, lower, upper, whole: new Uint8Array(model.columns) }, inside };
}

async function costInProgramme(season: Season, plan: Snapshot): Promise<number> {
  const { model, inside } = heldTo(season, plan);
  expect(inside).toBe(true);
  const solved = await solver.solve(model, { nodes: 0, gap: 0, start: null, guardSeconds: 60 });
  if (solved.kind !== "optimal") throw new Error(`the plan is no answer: ${solved.kind}`);
  return solved.value;
}

describe("the day-indexed programme", () => {
  it.each([
    { name: "one group", cells: 4, groups: 1, days: 40 },
    { name: "with hens", cells: 8, groups: 2, days: 60 },
    { name: "with pigs", cells: 12, groups: 4, days: 75 },
  ])("takes valid plans, none dearer than it is: $name", async (size) => {
    const scenario = studyFarm(size);
    const season = buildSeason(scenario);
    const draft = new Draft(season, cellSimulator(season));
    handRule(draft);
    const byHand = snapshot(draft);
    const searched = anneal(draft, { steps: 20_000, hot: 20, cold: 1, lightPenalty: 100, heavyPenalty: 400 }, 3, { stop: () => false, better: () => undefined });
    for (const plan of [byHand, searched]) {
      const report = checkPlan(scenario, planOf(season, plan));
      expect(report.breaches).toEqual([]);
      const cost = await costInProgramme(season, plan);
      expect(cost).toBeLessThanOrEqual(report.cost + 1e-6);
      // Loose, but not so loose that it knows no costs.
      expect(cost).toBeGreaterThan(report.cost * 0.3);
    }
  });
});
