import type { Report } from "../../check/report.js";
import type { Scenario } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import type { Snapshot } from "../../programme/snapshot.js";
import type { Breach } from "../../rules/rule.js";
import { stepsOf, type Effort } from "../effort.js";
import { inLanes } from "../lanes.js";
import { fewerHead, moreCells } from "./land-and-stock.js";
import { allLifted, clashingHolds, liftedHolds, type Clash } from "./lifted-holds.js";
import { acceptedPlan, standingIn, type Prober } from "./prober.js";
import { softerRules } from "./softer-rules.js";
import type { Sort, Way } from "./way.js";
import { moreHands } from "./work-and-kit.js";
import { yardDaysAllowed } from "./yard-days.js";

/** A single change that makes a plan possible, with that plan and what the season then costs by its own charges. */
export interface WayOut {
  readonly words: string;
  readonly cost: number;
  /** The farm with the change, and the text of a change file that says the same where there is one. */
  readonly scenario: Scenario;
  readonly change: string | null;
  readonly plan: Plan;
  readonly report: Report;
}

export interface WaysOut {
  readonly clash: Clash | null;
  /** Cheapest first. */
  readonly ways: readonly WayOut[];
  /** Dearer ones, their plans not made as cheap as they could be. */
  readonly others: readonly WayOut[];
}

/** Ways planned properly at most. */
const WAYS = 3;

interface Found {
  readonly way: Way;
  readonly plan: Snapshot;
}

/**
 * The cheapest single changes that make a plan possible: of each sort the smallest that was found to be enough, each
 * with a plan that the check accepts. The cheapest three are planned with the steps of a proper plan; in quick planning
 * the second and third by search alone. What the change itself costs or loses (rent, animals sold) is not in it.
 */
export async function findWaysOut(scenario: Scenario, breaches: readonly Breach[], prober: Prober, effort: Effort): Promise<WaysOut> {
  const [steps, quick] = [stepsOf(effort), effort.name === "quick"];
  const clash = await clashingHolds(scenario, prober);
  const lifted = await inLanes(liftedHolds(scenario, clash).map((sort) => () => smallest(sort, prober)));
  const all = clash && lifted.every((one) => one === null) ? await smallest([allLifted(scenario, clash)], prober) : null;
  const sorts = [
    moreCells(scenario, breaches), ...fewerHead(scenario, breaches), ...softerRules(scenario, breaches),
    ...moreHands(scenario, breaches),
  ];
  const tries = [() => yardWay(scenario, prober), ...sorts.filter((sort) => sort.length > 0).map((sort) => () => smallest(sort, prober))];
  const found = [...lifted, all, ...(await inLanes(tries))].filter((one) => one !== null);
  const looked = await inLanes(found.map(({ way, plan }) => async () => ({ way, plan: await prober.cheaper(way.scenario, plan) })));
  const ranked = looked.sort((a, b) => a.plan.cost - b.plan.cost);
  const cheapest = ranked.slice(0, WAYS);
  const planned = await inLanes(cheapest.map(({ way, plan }, i) => async () => wayOut(way, await prober.proper(way.scenario, plan, steps, i > 0 && quick))));
  return { clash, ways: planned.sort((a, b) => a.cost - b.cost), others: ranked.slice(WAYS).map(({ way, plan }) => wayOut(way, plan)) };
}

function wayOut({ words, scenario, change }: Way, found: Snapshot): WayOut {
  const { plan, report } = acceptedPlan(scenario, found);
  return { words, cost: report.cost, scenario, change, plan, report };
}

async function yardWay(scenario: Scenario, prober: Prober): Promise<Found | null> {
  const allowed = await yardDaysAllowed(scenario, prober);
  if (!allowed) return null;
  const plan = standingIn(allowed.way.scenario, allowed.plan);
  return plan.over === 0 ? { way: allowed.way, plan } : null;
}

/**
 * The smallest change of a sort with which a plan was found: twice as far each time until one works, then halved down.
 * The largest has a thorough look before the sort is given up.
 */
async function smallest(sort: Sort, prober: Prober): Promise<Found | null> {
  const tried = async (at: number, near: Snapshot | null): Promise<Found | null> => {
    const plan = await prober.validPlan(sort[at]!.scenario, near === null && at === sort.length - 1, near);
    return plan && { way: sort[at]!, plan };
  };
  let [none, works] = [-1, 0];
  let best = await tried(works, null);
  while (!best && works < sort.length - 1 && !prober.stopped) {
    none = works;
    works = Math.min(2 * works + 1, sort.length - 1);
    best = await tried(works, null);
  }
  while (best && works - none > 1 && !prober.stopped) {
    const at = Math.floor((none + works) / 2);
    const found = await tried(at, best.plan);
    if (found) [best, works] = [found, at];
    else none = at;
  }
  return best;
}
