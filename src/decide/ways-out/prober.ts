import { checkPlan } from "../../check/check-plan.js";
import type { Report } from "../../check/report.js";
import type { Scenario } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import { cellSimulator } from "../../programme/cell-simulator.js";
import { Draft } from "../../programme/draft.js";
import type { SearchJob } from "../../programme/jobs.js";
import { planOf } from "../../programme/plan-of.js";
import { snapshot, type Snapshot } from "../../programme/snapshot.js";
import type { Threads } from "../../programme/threads.js";
import { buildSeason } from "../../season/build-season.js";
import type { Effort, Steps } from "../effort.js";
import { Race } from "../race.js";

/** Steps of looking whether there is a valid plan at all, and of finding out what it then costs. */
const LOOK: Record<Effort["name"], number> = { quick: 40_000, usual: 80_000, long: 250_000 };

/** Plans changed farms, each from the plan that breaks least on the farm as it is. Steps, not seconds, end each look. */
export class Prober {
  /** Plans made so far. */
  looks = 0;

  constructor(
    private readonly threads: Threads,
    private readonly effort: Effort,
    private readonly stop: { readonly asked: boolean },
    private readonly nearest: Snapshot,
    private readonly onLook: (looks: number) => void,
  ) {}

  get stopped(): boolean {
    return this.stop.asked;
  }

  /** The first plan found that keeps every rule of a changed farm, or null. */
  async validPlan(scenario: Scenario): Promise<Snapshot | null> {
    const found = await this.search(scenario, this.nearest, { steps: LOOK[this.effort.name], polishes: 1, untilValid: true });
    return found && found.over === 0 ? found : null;
  }

  /** A valid plan made cheaper by a look: about what it costs. */
  async cheaper(scenario: Scenario, from: Snapshot): Promise<Snapshot> {
    return (await this.search(scenario, from, { steps: LOOK[this.effort.name], polishes: 1, searchOnly: true })) ?? from;
  }

  /** A valid plan made as cheap as a proper planning makes it, without windows where only the search is asked for. */
  async proper(scenario: Scenario, from: Snapshot, { search, polishes }: Steps, searchOnly: boolean): Promise<Snapshot> {
    return (await this.search(scenario, from, { steps: search, polishes, searchOnly })) ?? from;
  }

  private async search(scenario: Scenario, start: Snapshot, how: Pick<SearchJob, "steps" | "polishes" | "untilValid" | "searchOnly">): Promise<Snapshot | null> {
    if (this.stop.asked) return null;
    this.onLook(++this.looks);
    const from = standingIn(scenario, start);
    if (how.untilValid && from.over === 0) return from;
    const race = new Race(this.threads, { ...this.effort, capSeconds: null }, this.stop, () => undefined);
    race.offer(from);
    await race.run([{ kind: "search", scenario, from, keep: null, seed: this.effort.seed, ...how }]);
    return race.best;
  }
}

/** A plan's places on a changed farm, judged anew. */
export function standingIn(scenario: Scenario, plan: Snapshot): Snapshot {
  const season = buildSeason(scenario);
  const draft = new Draft(season, cellSimulator(season));
  draft.load(plan.place, plan.cuts);
  return snapshot(draft);
}

/** A valid plan in names and dates, with the check's word on it. */
export function acceptedPlan(scenario: Scenario, found: Snapshot): { readonly plan: Plan; readonly report: Report } {
  const plan = planOf(buildSeason(scenario), found);
  const report = checkPlan(scenario, plan);
  if (report.breaches.length > 0) throw new Error(`the check refuses a way out: ${JSON.stringify(report.breaches[0])}`);
  return { plan, report };
}
