import { checkPlan } from "../check/check-plan.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { Threads } from "../programme/threads.js";
import { inLanes } from "./lanes.js";
import { planNear } from "./plan-near.js";
import { placeName, startWith, type Question } from "./why-forced.js";

/** How hard is looked: steps of a first look at each place, and of a proper search. */
export interface WhyEffort {
  readonly look: number;
  readonly proper: number;
  readonly seed: number;
}

/** What looking needs from outside: threads, a stop, and somebody to tell how many of how many searches are done. */
export interface WhyServices {
  readonly threads: Threads;
  readonly stop: { readonly asked: boolean };
  readonly onSearch: (done: number) => void;
}

/** A plan of the farm as it is that keeps every rule. */
export interface Found {
  readonly plan: Plan;
  readonly cost: number;
}

/** Next to nothing for each day that differs: a search that has a plan to stay close to polishes it and does not heat it up. */
const KEEP = 1e-4;

/**
 * All valid plans of one farm found so far, whatever they were looked for: each answers every question whose place it has, so
 * that what is said of two places never contradicts. Judged by the check on the farm as it is.
 */
export class FoundPlans {
  private readonly plans: Found[] = [];
  private done = 0;

  constructor(private readonly scenario: Scenario, private readonly services: WhyServices, private readonly effort: WhyEffort) {}

  get stopped(): boolean {
    return this.services.stop.asked;
  }

  /** Takes a plan where the check accepts it. */
  add(plan: Plan): void {
    const report = checkPlan(this.scenario, plan);
    if (report.breaches.length === 0) this.plans.push({ plan, cost: report.cost });
  }

  /** The cheapest plan that passes a test, the first found of equal ones; null where none does. */
  cheapest(test: (plan: Plan) => boolean = () => true): Found | null {
    return this.plans.filter(({ plan }) => test(plan)).reduce<Found | null>((best, next) => (best === null || next.cost < best.cost ? next : best), null);
  }

  /** Looks for plans of farms a little different from this one, each near a plan, two at a time; the answers are taken in order. */
  async look(tries: readonly Try[]): Promise<void> {
    const found = await inLanes(tries.map(({ scenario, from, steps, heat }) => async () => {
      if (this.stopped) return null;
      const near = await planNear(scenario, from, this.services.threads, { steps, seed: this.effort.seed, keep: KEEP, searchOnly: true, heat }, this.services.stop);
      this.services.onSearch(++this.done);
      return near.valid ? near.plan : null;
    }));
    for (const plan of found) if (plan) this.add(plan);
  }
}

/** A farm to plan, and the plan to begin from. */
export interface Start {
  readonly scenario: Scenario;
  readonly from: Plan;
}

/** One search: so many steps, at a share of the usual heat. */
export interface Try extends Start {
  readonly steps: number;
  readonly heat: number;
}

/** Cool: the plan is mended round the stay and hardly changed elsewhere. Warm: it may find a way that lies farther off. */
const COOL = 0.2;
const WARM = 0.6;
const HOT = 1;

/** A first look, from a start. */
export function looked(start: Start, { look }: WhyEffort): Try {
  return { ...start, steps: look, heat: COOL };
}

/** Proper searches from a start: two, one cool and one warm. */
export function planned(start: Start, { proper }: WhyEffort): readonly Try[] {
  return [COOL, WARM].map((heat) => ({ ...start, steps: proper, heat }));
}

/** Searches where a first look came to nothing: longer, and hot enough to turn the season about. */
export function soughtHard(start: Start, { proper }: WhyEffort): readonly Try[] {
  return [WARM, HOT].map((heat) => ({ ...start, steps: 2 * proper, heat }));
}

/** The farm with a group held in a place for a day. */
export function holdingStart(scenario: Scenario, near: Plan, question: Question): Start {
  const { group, place, day } = question;
  const hold = { name: `${group} in ${placeName(place)}`, days: { firstDay: day, lastDay: day }, group, ...place, cut: null };
  return { scenario: { ...scenario, holds: [...scenario.holds, hold] }, from: startWith(scenario, near, question) };
}

/** The farm with a cell left alone for a day, from a plan in which nobody stands there. */
export function withoutStart(scenario: Scenario, from: Plan, cell: string, day: string): Start {
  const closed = { reason: "left alone", firstDay: day, lastDay: day };
  return { scenario: { ...scenario, cells: scenario.cells.map((one) => (one.name === cell ? { ...one, closed: [...one.closed, closed] } : one)) }, from };
}

/** Whether a plan has a cell empty on a day. */
export function leavesEmpty(plan: Plan, cell: string, day: string): boolean {
  return !plan.stays.some((stay) => stay.cell === cell && stay.firstDay <= day && day <= stay.lastDay);
}
