import { checkPlan } from "../check/check-plan.js";
import type { Scenario } from "../farm/scenario.js";
import type { LessenJob } from "../programme/jobs.js";
import { planOf } from "../programme/plan-of.js";
import type { Snapshot } from "../programme/snapshot.js";
import { buildSeason } from "../season/build-season.js";
import type { Breach } from "../rules/rule.js";
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
  const windows = async (plan: Snapshot): Promise<void> => race.run([{ kind: "lessen", scenario, from: plan, groups: groupsAtFault(scenario, plan), rounds: ROUNDS }]);
  for (let turn = 0; turn < TURNS && race.best && race.best.over > 0 && !race.over; turn++) {
    const before = race.best.over;
    await windows(race.best);
    if (race.best.over > 0) await race.run(searches(race.best, 1, turn));
    if (race.best.over > before - LEAST_GAIN) break;
  }
  // What a last search found is held against windows as well, where there is time for it.
  if (race.best && race.best.over > 0 && !race.lessened && !race.over && effort.name !== "quick") await windows(race.best);
  if (race.best?.over === 0) await race.run(searches(race.best, steps.seeds, TURNS));
}

/** Groups named where the plan breaks a rule; for what is broken of the whole farm, those that move or stand in a yard on its days. */
export function groupsAtFault(scenario: Scenario, found: Snapshot): LessenJob["groups"] {
  const season = buildSeason(scenario);
  const plan = planOf(season, found);
  const atFault = ({ group, firstDay, lastDay }: Breach): readonly string[] => {
    if (group !== null) return [group];
    return plan.stays.filter((stay) => stay.firstDay <= lastDay && (stay.yard === null ? stay.firstDay >= firstDay : stay.lastDay >= firstDay)).map((stay) => stay.group);
  };
  const names = new Set(checkPlan(scenario, plan).breaches.flatMap(atFault));
  return season.groups.map((_, g) => g).filter((g) => season.groups[g].present.includes(1) && (names.size === 0 || names.has(season.groups[g].name)));
}
