import { checkPlan } from "../../check/check-plan.js";
import type { Report } from "../../check/report.js";
import { isGrazer, type Scenario } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import { cellSimulator } from "../../programme/cell-simulator.js";
import { Draft } from "../../programme/draft.js";
import type { SearchJob } from "../../programme/jobs.js";
import { planOf } from "../../programme/plan-of.js";
import { snapshot, type Snapshot } from "../../programme/snapshot.js";
import type { Threads } from "../../programme/threads.js";
import { buildSeason } from "../../season/build-season.js";
import { groupsAtFault } from "../least-broken.js";
import { stepsOf, type Effort, type Steps } from "../effort.js";
import { Race } from "../race.js";

/** Steps of looking whether there is a valid plan at all, and about what it costs: never more than this share of a proper search. */
const LOOK: Readonly<Record<Effort["name"], number>> = { quick: 150_000, usual: 300_000, long: 1_000_000 };
const SHARE = 0.4;

/** A thorough look takes so many times the steps. */
const THOROUGH = 2;

/** Breaking, in the rules' own steps, up to which windows are worth trying. */
const NEAR = 8;

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

  private get steps(): number {
    return Math.round(Math.min(LOOK[this.effort.name], SHARE * stepsOf(this.effort).search));
  }

  get stopped(): boolean {
    return this.stop.asked;
  }

  /**
   * The first plan found that keeps every rule of a changed farm, or null; from `near` where that breaks less there. A
   * thorough look takes more steps, then windows where it came near.
   */
  async validPlan(scenario: Scenario, thorough = false, near: Snapshot | null = null): Promise<Snapshot | null> {
    const steps = thorough ? Math.round(THOROUGH * this.steps) : this.steps;
    const from = near && fits(scenario, near) && standingIn(scenario, near).over < standingIn(scenario, this.nearest).over ? near : this.nearest;
    const found = await this.search(scenario, from, { steps, polishes: 1, untilValid: true }, thorough);
    return found && found.over === 0 ? found : null;
  }

  /** A valid plan made cheaper by a look: about what it costs. */
  async cheaper(scenario: Scenario, from: Snapshot): Promise<Snapshot> {
    return (await this.search(scenario, from, { steps: this.steps, polishes: 1, searchOnly: true })) ?? from;
  }

  /** A valid plan made as cheap as a proper planning makes it, without windows where only the search is asked for. */
  async proper(scenario: Scenario, from: Snapshot, { search, polishes }: Steps, searchOnly: boolean): Promise<Snapshot> {
    return (await this.search(scenario, from, { steps: search, polishes, searchOnly })) ?? from;
  }

  private async search(
    scenario: Scenario, start: Snapshot, how: Pick<SearchJob, "steps" | "polishes" | "untilValid" | "searchOnly">, windows = false,
  ): Promise<Snapshot | null> {
    if (this.stop.asked) return null;
    this.onLook(++this.looks);
    const from = standingIn(scenario, start);
    if (how.untilValid && from.over === 0) return from;
    const race = new Race(this.threads, { ...this.effort, capSeconds: null }, this.stop, () => undefined);
    race.offer(from);
    await race.run([{ kind: "search", scenario, from, keep: null, seed: this.effort.seed, ...how }]);
    const { best } = race;
    if (windows && best && best.over > 0 && best.over < NEAR) await race.run([{ kind: "lessen", scenario, from: best, groups: grazersFirst(scenario, groupsAtFault(scenario, best)), rounds: 1 }]);
    return race.best;
  }
}

/** The grazers of some groups; where there are none, all: windows over birds and pigs take long. */
function grazersFirst(scenario: Scenario, groups: readonly number[]): readonly number[] {
  const grazers = groups.filter((g) => isGrazer(scenario.groups[g]!.kind));
  return grazers.length > 0 ? grazers : groups;
}

/** True when every place of a plan is there on a farm. */
function fits({ cells }: Scenario, { place, cuts }: Snapshot): boolean {
  return cuts.length === cells.length && place.every((days) => days.every((at) => at < cells.length));
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
