import { checkPlan } from "../check/check-plan.js";
import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { cellSimulator } from "../programme/cell-simulator.js";
import { Draft } from "../programme/draft.js";
import { placesOf } from "../programme/places-of.js";
import { planOf } from "../programme/plan-of.js";
import { snapshot } from "../programme/snapshot.js";
import type { Threads } from "../programme/threads.js";
import { buildSeason } from "../season/build-season.js";
import { Race } from "./race.js";

/** How a plan is looked for near another: steps of one search, its seed, and money for each group-day that differs; 0 for none. */
export interface Near {
  readonly steps: number;
  readonly seed: number;
  readonly keep: number;
  /** Without windows after the search: sooner done. */
  readonly searchOnly?: boolean;
  /** Share of the usual heat of a polish, 1 unless given. */
  readonly heat?: number;
}

/** The best plan found near another, judged by the check; not `valid` where it still breaks rules. */
export interface NearPlan {
  readonly plan: Plan;
  readonly report: Report;
  readonly cost: number;
  readonly valid: boolean;
  readonly notes: readonly string[];
}

/**
 * Plans a farm from a plan made for it before, or for a farm a little different: groups, cells and days of that plan
 * that are no longer there are let go, new groups begin in their yard. One search with windows, in a thread of its own;
 * the same on every machine.
 */
export async function planNear(scenario: Scenario, base: Plan, threads: Threads, near: Near, stop: { readonly asked: boolean }): Promise<NearPlan> {
  const season = buildSeason(scenario);
  const own = placesOf(season, base);
  const keep = near.keep > 0 ? { place: own.place, price: near.keep } : null;
  const draft = new Draft(season, cellSimulator(season), undefined, keep);
  draft.load(own.place, own.cuts);
  const from = snapshot(draft);
  const race = new Race(threads, { name: "usual", seed: near.seed, capSeconds: null }, stop, () => undefined);
  race.offer(from);
  await race.run([{ kind: "search", scenario, from, keep, steps: near.steps, polishes: 1, seed: near.seed, searchOnly: near.searchOnly === true, heat: near.heat ?? 1 }]);
  const best = race.best ?? from;
  const plan = planOf(season, best);
  const report = checkPlan(scenario, plan);
  if (best.over === 0 && report.breaches.length > 0) throw new Error(`the check refuses the plan: ${JSON.stringify(report.breaches[0])}`);
  return { plan, report, cost: report.cost, valid: best.over === 0, notes: race.notes };
}
