import { checkPlan } from "../check/check-plan.js";
import type { Scenario } from "../farm/scenario.js";
import type { LessenJob } from "../programme/jobs.js";
import { planOf } from "../programme/plan-of.js";
import type { Snapshot } from "../programme/snapshot.js";
import { buildSeason } from "../season/build-season.js";
import { stepsOf, type Effort } from "./effort.js";
import type { Race } from "./race.js";

/** Rounds of elastic windows over the season, and of searching on from what they found. */
const ROUNDS = 3;
const TURNS = 2;

/** Breaking less by this little, in the rules' own steps, is not worth another turn. */
const LEAST_GAIN = 0.05;

/**
 * Lessens what the best plan so far breaks: elastic windows over the groups at fault, then a search from there, in turn.
 * Where that ends in a valid plan, searches make it cheaper.
 */
export async function lessenBreaking(scenario: Scenario, race: Race, effort: Effort): Promise<void> {
  const steps = stepsOf(effort);
  const searches = (from: Snapshot, count: number, turn: number) => Array.from({ length: count }, (_, i) => (
    { kind: "search" as const, scenario, from, keep: null, steps: steps.search, polishes: steps.polishes, seed: effort.seed * 100 + 50 + turn * 10 + i }
  ));
  for (let turn = 0; turn < TURNS && race.best && race.best.over > 0 && !race.over; turn++) {
    const before = race.best.over;
    await race.run([{ kind: "lessen", scenario, from: race.best, groups: groupsAtFault(scenario, race.best), rounds: ROUNDS }]);
    if (race.best.over > 0) await race.run(searches(race.best, 1, turn));
    if (race.best.over > before - LEAST_GAIN) break;
  }
  if (race.best?.over === 0) await race.run(searches(race.best, steps.seeds, TURNS));
}

/** Groups named where the plan breaks a rule; all of them where something of the whole farm is broken. */
export function groupsAtFault(scenario: Scenario, plan: Snapshot): LessenJob["groups"] {
  const season = buildSeason(scenario);
  const { breaches } = checkPlan(scenario, planOf(season, plan));
  const all = season.groups.map((_, g) => g).filter((g) => season.groups[g].present.includes(1));
  const named = all.filter((g) => breaches.some((breach) => breach.group === season.groups[g].name));
  return named.length > 0 && breaches.every((breach) => breach.group !== null) ? named : all;
}
