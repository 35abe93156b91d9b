import { checkPlan } from "../check/check-plan.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { IsoDate } from "../quantity/calendar.js";
import { cellDay, groupsOn, type CellDay } from "./why-cell-day.js";
import { hostOf, samePlace, stayOn, type Place } from "./why-forced.js";
import type { Found, WhyEffort, WhyServices } from "./why-search.js";
import { hereOf, type Here } from "./why-stay.js";
import { weigh, type Weighed, type Weighing } from "./why-weigh.js";

/** What every answer tells of the plan and the seasons that were planned beside it; money. */
interface Beside {
  readonly day: IsoDate;
  readonly planCost: number;
  /** Of the cheapest plan found; the plan's own where none is cheaper. Every `more` is reckoned from it. */
  readonly cheapestCost: number;
  /** What the stay that the plan has on that day costs more than the cheapest plan; 0 where that has it as well, null where there is no stay. */
  readonly hereMore: number | null;
  /** The cheapest plan that leaves the cell of that stay empty that day, and what it costs more: what the day is worth. Null where there is no such cell or plan. */
  readonly without: { readonly more: number; readonly found: Found } | null;
  readonly cheapest: Found;
  readonly places: readonly Weighed[];
  readonly stopped: boolean;
}

/** Why a group stands where it stands on a day. */
export interface WhyGroup extends Beside {
  readonly group: string;
  /** The group whose place it shares that day, or null. */
  readonly runsWith: string | null;
  readonly here: Here;
}

/** Why a cell is empty on a day, or who stands there; `places` has each group that is not there. */
export interface WhyCell extends Beside {
  readonly cell: CellDay;
}

/** All places a group could be asked about: every cell, and its yard. */
export function placesFor(scenario: Scenario, group: string): readonly Place[] {
  const yard = scenario.groups.find(({ name }) => name === group)?.yard ?? null;
  return [...scenario.cells.map(({ name }): Place => ({ cell: name, yard: null })), { cell: null, yard }];
}

/**
 * Weighs every other place of a group on a day, or only one. The plan must keep every rule and have a place for the group that day.
 * A group that runs with another is answered for with that one.
 */
export async function whyGroup(
  scenario: Scenario, plan: Plan, asked: { readonly group: string; readonly day: IsoDate; readonly only: Place | null }, services: WhyServices, effort: WhyEffort,
): Promise<WhyGroup> {
  const { day, only } = asked;
  const group = hostOf(scenario, asked.group, day);
  const report = checkPlan(scenario, plan);
  const here = hereOf(scenario, plan, report, group, day);
  if (!here) throw new Error(`${group} has no place on ${day}`);
  const place = { cell: here.cell, yard: here.yard };
  const questions = (only ? [only] : placesFor(scenario, group)).filter((other) => !samePlace(other, place)).map((other) => ({ group, place: other, day }));
  const stay = { group, place, day };
  const weighing = await weigh(scenario, plan, { questions, here: stay, without: here.cell === null ? null : { cell: here.cell, day } }, services, effort);
  return { group, runsWith: group === asked.group ? null : group, here, ...besideOf(weighing, day, report.cost) };
}

/** Weighs every group that is on the farm that day and not in the cell, against the plan. The plan must keep every rule. */
export async function whyCell(scenario: Scenario, plan: Plan, asked: { readonly cell: string; readonly day: IsoDate }, services: WhyServices, effort: WhyEffort): Promise<WhyCell> {
  const { cell, day } = asked;
  const report = checkPlan(scenario, plan);
  const state = cellDay(scenario, plan, report, cell, day);
  const place = { cell, yard: null };
  const questions = groupsOn(scenario, day).filter((group) => stayOn(plan, group, day)?.cell !== cell).map((group) => ({ group, place, day }));
  const stay = state.stay ? { group: state.stay.group, place, day } : null;
  const weighing = await weigh(scenario, plan, { questions, here: stay, without: stay ? asked : null }, services, effort);
  return { cell: state, ...besideOf(weighing, day, report.cost) };
}

function besideOf({ cheapest, places, without, withStay, stopped }: Weighing, day: IsoDate, planCost: number): Beside {
  return {
    day, planCost, cheapestCost: cheapest.cost, cheapest, places, stopped,
    hereMore: withStay && withStay.cost - cheapest.cost,
    without: without && { more: without.cost - cheapest.cost, found: without },
  };
}
