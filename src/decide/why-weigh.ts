import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { Breach } from "../rules/rule.js";
import { asItStands, hostOf, ownFirst, standsThere, startWith, type Question } from "./why-forced.js";
import { neverThere } from "./why-never.js";
import { FoundPlans, holdingStart, leavesEmpty, looked, planned, soughtHard, withoutStart, type Found, type Start, type WhyEffort, type WhyServices } from "./why-search.js";

/**
 * What is known of a group in a place on a day.
 *
 * `never`: the check refuses the stay even alone on the farm, so that no planning of other stays or days can mend it.
 * `allowed`: a plan was found that has it and keeps every rule; `more` is that plan's cost less that of the cheapest plan found.
 * `none-found`: planned again with the stay held, and no plan that keeps every rule was found; a search's word, not a proof.
 */
export interface Weighed {
  readonly question: Question;
  readonly kind: "never" | "allowed" | "none-found";
  /** For `never`: the check's breaches of the stay alone. */
  readonly never: readonly Breach[];
  /** The check's breaches of the stay forced into the plan as it stands, its own first; none where nobody else has to move. */
  readonly asItStands: readonly Breach[];
  readonly found: Found | null;
  readonly more: number | null;
  /** True when the rest of the season was planned again round the stay by a proper search, false when only a look was had. */
  readonly replanned: boolean;
}

/** Stays and a cell's day weighed against the cheapest plan found. */
export interface Weighing {
  /** The cheapest plan found at all, the given plan among them. */
  readonly cheapest: Found;
  readonly places: readonly Weighed[];
  /** The cheapest plan found that leaves the cell asked about empty that day; null where none was looked for, or found. */
  readonly without: Found | null;
  /** The cheapest plan found with the stay that the plan has. */
  readonly withStay: Found | null;
  readonly stopped: boolean;
}

/** What is to be weighed: places, where the plan has the group, and the cell whose day is to be left out. */
export interface Scales {
  readonly questions: readonly Question[];
  /** Where the plan has it already: looked for again should the cheapest plan have it elsewhere. */
  readonly here: Question | null;
  readonly without: { readonly cell: string; readonly day: string } | null;
}

/** Places that are planned properly, the cheapest by a look first. */
const PROPER = 3;
/** Rounds of weighing all again from a cheaper plan that came to light, so that what was won in one place does not weigh on another. */
const ROUNDS = 3;
/** Less than this is no cheaper plan, money. */
const CHEAPER = 0.5;

/**
 * Weighs stays that a plan does not have: (1) what is never allowed, by the check; (2) each other stay forced into the plan as it
 * stands; (3) from the cheapest plan, a look at the season planned with each stay held; (4) from the same plan, by the same steps, the
 * cheapest three, the plan itself without any, and the cell's day left out, planned properly; stays for which nothing was found
 * planned hard, once; (5) all of (3) and (4) again from a cheaper plan, should one have come to light, whatever it was looked for.
 * The plan must keep every rule. The same on every machine for the same effort, unless it is stopped.
 */
export async function weigh(scenario: Scenario, plan: Plan, scales: Scales, services: WhyServices, effort: WhyEffort): Promise<Weighing> {
  const found = new FoundPlans(scenario, services, effort);
  found.add(plan);
  if (!found.cheapest()) throw new Error("only a plan that keeps every rule can be weighed");
  const asked = scales.questions.map((question) => ({ question, never: neverThere(scenario, question), forced: asItStands(scenario, plan, question) }));
  const open = asked.filter(({ never }) => never.length === 0);
  for (const { forced } of open) found.add(forced.plan);
  const replanned = await planAgain(scenario, found, { ...scales, questions: open.map(({ question }) => question) }, effort);
  const cheapest = found.cheapest()!;
  const places = asked.map(({ question, never, forced }): Weighed => {
    const best = never.length > 0 ? null : bestWith(found, question);
    return {
      question, never, found: best, replanned: replanned.has(question), more: best && best.cost - cheapest.cost,
      kind: never.length > 0 ? "never" : best ? "allowed" : "none-found", asItStands: ownFirst(forced.report.breaches, question),
    };
  });
  const { without, here } = scales;
  return {
    cheapest, places, stopped: found.stopped, withStay: here && bestWith(found, here),
    without: without && found.cheapest((one) => leavesEmpty(one, without.cell, without.day)),
  };
}

/** Looks, proper searches and rounds; answers which stays were planned properly, the last time from the cheapest plan there was. */
async function planAgain(scenario: Scenario, found: FoundPlans, scales: Scales, effort: WhyEffort): Promise<ReadonlySet<Question>> {
  const sought = new Set<Question>();
  let replanned = new Set<Question>();
  for (let round = 0, base: Found | null = null; round < ROUNDS && !found.stopped; round++) {
    const from = found.cheapest()!;
    if (base && from.cost > base.cost - CHEAPER) break;
    base = from;
    await found.look(scales.questions.map((question) => looked(holdingStart(scenario, from.plan, question), effort)));
    const chosen = cheapestOf(found, scales.questions);
    const missing = scales.questions.filter((question) => !sought.has(question) && bestWith(found, question) === null);
    const starts = [{ scenario, from: from.plan }, ...chosen.map((question) => holdingStart(scenario, from.plan, question)), ...besides(scenario, found, from, scales)];
    await found.look([
      ...starts.flatMap((start) => planned(start, effort)),
      ...missing.flatMap((question) => soughtHard(holdingStart(scenario, from.plan, question), effort)),
    ]);
    if (found.stopped) break;
    for (const question of missing) sought.add(question);
    replanned = new Set(chosen);
  }
  return new Set([...replanned, ...sought]);
}

function bestWith(found: FoundPlans, question: Question): Found | null {
  return found.cheapest((plan) => standsThere(plan, question));
}

/** The cheapest three places by what is known. */
function cheapestOf(found: FoundPlans, questions: readonly Question[]): readonly Question[] {
  const known = questions.flatMap((question) => {
    const best = bestWith(found, question);
    return best ? [{ question, cost: best.cost }] : [];
  });
  return known.sort((a, b) => a.cost - b.cost).slice(0, PROPER).map(({ question }) => question);
}

/** The cell's day left out; and where the plan has the group, should the cheapest plan have it elsewhere. */
function besides(scenario: Scenario, found: FoundPlans, base: Found, { here, without }: Scales): readonly Start[] {
  const starts: Start[] = here && !standsThere(base.plan, here) ? [holdingStart(scenario, base.plan, here)] : [];
  if (!without) return starts;
  const { cell, day } = without;
  const empty = found.cheapest((plan) => leavesEmpty(plan, cell, day))?.plan ?? emptied(scenario, base.plan, cell, day);
  return [...starts, withoutStart(scenario, empty, cell, day)];
}

/** A plan with whoever stands in a cell on a day in its yard instead. */
function emptied(scenario: Scenario, plan: Plan, cell: string, day: string): Plan {
  const stay = plan.stays.find((one) => one.cell === cell && one.firstDay <= day && day <= one.lastDay);
  if (!stay) return plan;
  const group = hostOf(scenario, stay.group, day);
  const yard = scenario.groups.find(({ name }) => name === group)?.yard ?? null;
  return startWith(scenario, plan, { group, place: { cell: null, yard }, day });
}
