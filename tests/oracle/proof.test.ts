/** A plan is proven best when it is: all ways to live tiny seasons are tried by the check alone, with the planner's cuts among them on some. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { handRule } from "../../src/programme/hand-rule.js";
import { snapshot, type Snapshot } from "../../src/programme/snapshot.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import { prove, proveJob } from "../../src/programme/whole/prove.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { draftOf } from "../programme/drafts.js";
import { enumerateSeason, type Enumerated } from "./best-way.js";
import { judged } from "./enumerate.js";
import { MOWER, TINY_SIZES, tinySeason } from "./tiny-seasons.js";

const FIRST_SEED = Number(process.env["INBYE_FIRST_SEED"] ?? 0);
const SEEDS = Array.from({ length: Number(process.env["INBYE_SEEDS"] ?? 45) }, (_, i) => FIRST_SEED + i);
const seen = { seasons: 0, proven: 0, mown: 0, better: 0, split: 0 };
const QUIET = { stop: () => false, better: () => undefined, bound: () => undefined };
const WORK = 40_000;

let highs: PricingSolver;
beforeAll(() => {
  highs = highsSolver();
});

/** Plans to start from: by hand, and the dearest that there is. */
function startsOf({ season, dearest }: Enumerated): Snapshot[] {
  const draft = draftOf(season);
  handRule(draft);
  const byHand = snapshot(draft);
  if (dearest) draft.load(dearest.way.place, dearest.way.cuts);
  return [byHand, snapshot(draft)].filter((plan) => plan.over === 0);
}

const cutsTried = ({ cuts }: Snapshot, mown: number | null): boolean => cuts.every((own, c) => own.length === 0 || (c === mown && own.length === 1));

describe("a proof", () => {
  it.each(SEEDS)("of season %i ends at the best of all ways", { timeout: 60_000 }, async (seed) => {
    const size = TINY_SIZES[seed % TINY_SIZES.length];
    const scenario = tinySeason(size, seed);
    const mown = size.name === MOWER ? 0 : null;
    const found = enumerateSeason(scenario, mown);
    for (const from of startsOf(found)) {
      const { plan, proof } = await prove(proveJob(scenario, from, WORK)!, highs, QUIET);
      const { report, keeps } = judged(found.season, plan);
      expect({ keeps, breaches: keeps ? [] : report.breaches }).toEqual({ keeps: true, breaches: [] });
      expect(report.cost).toBeCloseTo(plan.cost, 6);
      expect(proof.bound).toBeLessThanOrEqual(Math.min(plan.cost, found.best!.cost) + 1e-6);
      seen.seasons++;
      if (proof.parts > 1) seen.split++;
      if (plan.cost < from.cost - 0.005) seen.better++;
      if (!proof.proven) continue;
      seen.proven++;
      // A cut that was not tried may cost less.
      if (cutsTried(plan, mown)) expect(plan.cost).toBeCloseTo(found.best!.cost, 2);
      else expect(plan.cost).toBeLessThan(found.best!.cost + 0.005);
      if (plan.cuts.some((own) => own.length > 0)) seen.mown++;
    }
  });

  it.runIf(SEEDS.length >= 45)("is found for nearly all, some with cuts, most after making the plan better", () => {
    expect(seen.proven).toBeGreaterThan(0.95 * seen.seasons);
    expect(seen.better).toBeGreaterThan(30);
    expect(seen.mown).toBeGreaterThan(0);
  });

  afterAll(() => {
    if (process.env["INBYE_COUNTS"]) process.stdout.write(`${JSON.stringify(seen)}\n`);
  });
});
