import { checkPlan } from "../check/check-plan.js";
import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { cellSimulator } from "../programme/cell-simulator.js";
import { Draft, type Keep } from "../programme/draft.js";
import { handRule } from "../programme/hand-rule.js";
import { placesOf } from "../programme/places-of.js";
import { planOf } from "../programme/plan-of.js";
import { HALVES } from "../programme/rules/index.js";
import { betterThan, snapshot, type Snapshot } from "../programme/snapshot.js";
import type { PricingSolver } from "../programme/solver.js";
import type { Job } from "../programme/jobs.js";
import type { Threads } from "../programme/threads.js";
import { proveJob } from "../programme/whole/prove.js";
import { buildSeason } from "../season/build-season.js";
import { stepsOf, type Effort } from "./effort.js";
import { Race } from "./race.js";
import { redoneWords } from "./redone-words.js";
import { lessenBreaking } from "./least-broken.js";
import { refusalOf, type Refusal } from "./refusal.js";
import { yardReasons } from "./yard-reasons.js";
import { weatherYardDays, type YardDays } from "./weather.js";

/** What planning needs from outside the core. */
export interface Services {
  readonly threads: Threads;
  readonly solver: PricingSolver;
}

export interface Progress {
  readonly seconds: number;
  readonly cost: number;
  readonly bound: number;
  /** Changed farms planned so far, while ways out are looked for. */
  readonly looks?: number;
}

/** A finished planning. `kind` is "no-plan" when no way to keep every hard rule was found: `report` says what breaks. */
export interface Planned {
  readonly kind: "plan" | "no-plan";
  readonly plan: Plan;
  readonly report: Report;
  readonly cost: number;
  /** No plan can cost less. */
  readonly bound: number;
  readonly boundKind: string;
  readonly handRuleCost: number;
  readonly handRulePlan: Plan;
  readonly weatherYardDays: { readonly dry: YardDays; readonly usual: YardDays; readonly wet: YardDays };
  readonly seconds: number;
  readonly steps: number;
  /** True when seconds or the owner ended it before the effort was spent. */
  readonly capped: boolean;
  readonly notes: readonly string[];
  /** For "no-plan": what gives in the plan that breaks least, and what would make a plan possible; else null. */
  readonly refusal: Refusal | null;
}

/**
 * The whole road from a farm to a plan: (1) lay the farm out by day, (2) plan by the hand rule, (3) search from
 * several seeds while the bound climbs beside them, (4) mend window by window, (5) prove the plan of a small farm the
 * best there is, (6) judge the best by the check.
 * Never hands out a plan that the check refuses.
 */
export async function planSeason(scenario: Scenario, services: Services, effort: Effort, onProgress: (p: Progress) => void, stop: { readonly asked: boolean }): Promise<Planned> {
  const race = new Race(services.threads, effort, stop, onProgress);
  const steps = stepsOf(effort);
  const { byHand, from, keep } = startOf(scenario, effort);
  race.offer(from);
  const searches = Array.from({ length: steps.seeds }, (_, i): Job => (
    { kind: "search", scenario, from, keep, steps: steps.search, polishes: steps.polishes, seed: effort.seed * 100 + i }
  ));
  await race.run([{ kind: "bound", scenario, steps: steps.bound }, ...searches]);
  if (race.best && race.best.over > 0) await lessenBreaking(scenario, race, effort);
  if (race.best && steps.windowRounds > 0) await race.run([{ kind: "mend", scenario, from: race.best, keep, rounds: steps.windowRounds }]);
  const proof = race.best && !keep && proveJob(scenario, race.best, PROOF_WORK[effort.name]);
  if (proof) await race.run([proof]);
  const planned = judged(scenario, byHand, race);
  return planned.kind === "plan" ? planned : { ...planned, refusal: await refusalOf(scenario, planned, race, services.threads, effort, stop, onProgress) };
}

/** How a bound is told that is the plan's own cost. */
export const PROVEN = "every way to live the season looked at";

/** Steps x cells x groups x days of a proof, on farms small enough for one: a few seconds, a quarter of a minute, minutes. */
const PROOF_WORK: Record<Effort["name"], number> = { quick: 150_000, usual: 600_000, long: 6_000_000 };

/** The hand rule's plan, and the plan to start from: that, or the base plan where it breaks no more and costs no more. */
export function startOf(scenario: Scenario, { base }: Pick<Effort, "base">): { byHand: Snapshot; from: Snapshot; keep: Keep | null } {
  const season = buildSeason(scenario);
  const simulator = cellSimulator(season);
  const draft = new Draft(season, simulator);
  handRule(draft);
  const byHand = snapshot(draft);
  if (!base) return { byHand, from: byHand, keep: null };
  const own = placesOf(season, base.plan);
  const keep = { place: own.place, price: base.price };
  const near = new Draft(season, simulator, HALVES, keep);
  const [hand, based] = [byHand, own].map(({ place, cuts }) => {
    near.load(place, cuts);
    return snapshot(near);
  });
  return { byHand, from: betterThan(hand, based) ? hand : based, keep };
}

/** The best plan of a race in names and dates, with the check's word on it and what is to be said beside it; no ways out yet. */
export function judged(scenario: Scenario, byHand: Snapshot, race: Race): Planned {
  const season = buildSeason(scenario);
  const best = race.best ?? byHand;
  const plan = planOf(season, best);
  const report = checkPlan(scenario, plan);
  if (best.over === 0 && report.breaches.length > 0) throw new Error(`the check refuses the plan: ${JSON.stringify(report.breaches[0])}`);
  if (best.over === 0 && race.lowest > report.cost + 1e-6) throw new Error(`the bound ${race.lowest} is above a plan that costs ${report.cost}`);
  return {
    kind: best.over === 0 ? "plan" : "no-plan",
    plan,
    report,
    cost: report.cost,
    bound: race.lowest,
    boundKind: race.proven ? PROVEN : "cells and groups priced apart",
    handRuleCost: byHand.cost,
    handRulePlan: planOf(season, byHand),
    weatherYardDays: weatherYardDays(scenario, best),
    seconds: race.seconds,
    steps: race.steps,
    capped: race.capped,
    notes: [...race.notes, ...redoneWords(season, race), ...yardReasons(season, best)],
    refusal: null,
  };
}
