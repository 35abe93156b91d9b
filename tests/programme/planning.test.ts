/** The hand rule keeps the rules; the same seed finds the same plan; and what search and bound say holds together. */
import { beforeAll, describe, expect, it } from "vitest";
import { studyFarm } from "../../src/bench/study-farms.js";
import { checkPlan } from "../../src/check/check-plan.js";
import { handRule } from "../../src/programme/hand-rule.js";
import { runJob, type Job, type JobNews } from "../../src/programme/jobs.js";
import { planOf } from "../../src/programme/plan-of.js";
import { snapshot } from "../../src/programme/snapshot.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { TINY_SIZES, tinySeason } from "../oracle/tiny-seasons.js";
import { draftOf } from "./drafts.js";

const FARMS = [
  { name: "6 cells, 2 groups", scenario: studyFarm({ name: "S", cells: 6, groups: 2, days: 40 }) },
  { name: "6 cells, 4 groups", scenario: studyFarm({ name: "M", cells: 6, groups: 4, days: 40 }, 2) },
];

let highs: PricingSolver;
beforeAll(() => {
  highs = highsSolver();
});

const done = (job: Job): Promise<JobNews> => runJob(job, { stop: () => false, news: () => undefined }, highs);

describe.each(FARMS)("$name", ({ scenario }) => {
  const byHand = (() => {
    const draft = draftOf(scenario);
    const inYard = draft.cost;
    handRule(draft);
    return { draft, inYard, plan: snapshot(draft) };
  })();

  it("has a hand rule's plan that the check accepts, cheaper than the yard", () => {
    const report = checkPlan(scenario, planOf(byHand.draft.season, byHand.plan));
    expect(report.breaches).toEqual([]);
    expect(report.cost).toBeCloseTo(byHand.plan.cost, 6);
    expect(byHand.plan.cost).toBeLessThan(byHand.inYard);
  });

  it("has the same hand rule's plan each time", () => {
    const again = draftOf(scenario);
    handRule(again);
    expect(snapshot(again)).toEqual(byHand.plan);
  });

  it("finds the same plan from the same seed, another from another, and none that the check refuses", { timeout: 60_000 }, async () => {
    const search = (seed: number): Promise<JobNews> => done({ kind: "search", scenario, from: byHand.plan, keep: null, steps: 4000, polishes: 1, seed });
    const [a, b, other] = [await search(4), await search(4), await search(5)];
    expect(a).toEqual(b);
    expect(a).not.toEqual(other);
    for (const news of [a, other]) {
      if (news.kind !== "plan") throw new Error("a search answers with a plan");
      const report = checkPlan(scenario, planOf(byHand.draft.season, news.plan));
      expect(report.breaches).toEqual([]);
      expect(report.cost).toBeCloseTo(news.plan.cost, 6);
      expect(news.plan.cost).toBeLessThanOrEqual(byHand.plan.cost);
    }
  });

  it("has the same bound each time, below every plan", { timeout: 60_000 }, async () => {
    const bound = (): Promise<JobNews> => done({ kind: "bound", scenario, steps: 12 });
    const first = await bound();
    expect(await bound()).toEqual(first);
    expect(first.kind === "bound" && first.value > 0 && first.value <= byHand.plan.cost).toBe(true);
  });

  it("mends a plan only to better ones that the check accepts", { timeout: 60_000 }, async () => {
    const news = await done({ kind: "mend", scenario, from: byHand.plan, keep: null, rounds: 1 });
    if (news.kind !== "mended") throw new Error("mending answers with a mended plan");
    expect(news.plan.cost).toBeLessThanOrEqual(byHand.plan.cost + 1e-9);
    expect(news.mended.windows).toBeGreaterThan(5);
    const report = checkPlan(scenario, planOf(byHand.draft.season, news.plan));
    expect(report.breaches).toEqual([]);
    expect(report.cost).toBeCloseTo(news.plan.cost, 6);
  });
});

describe("the hand rule under tight rules", () => {
  it("breaks nothing that standing in the yard would keep", () => {
    let out = 0;
    for (let seed = 0; seed < 98; seed++) {
      const draft = draftOf(tinySeason(TINY_SIZES[seed % TINY_SIZES.length], 700 + seed));
      const before = draft.over;
      handRule(draft);
      expect({ seed, worse: draft.over > before + 1e-6 }).toEqual({ seed, worse: false });
      if (draft.place.some((days) => days.some((p) => p >= 0))) out++;
    }
    expect(out).toBeGreaterThan(30);
  });
});
