import type { Group, Scenario } from "../../farm/scenario.js";
import type { PricingSolver } from "../../programme/solver.js";
import { buildSeason } from "../../season/build-season.js";
import { feedBudget, type FeedBudget } from "../feed-budget.js";
import { GUARD_SECONDS } from "./model.js";

/** What one more would be worth, in money of the season; below nothing where it would cost. */
export interface Worth {
  readonly of: "hay to feed" | "hay in store" | "hectare" | "head";
  /** Month of hay to feed, 0 for January; the group of a head. */
  readonly month: number | null;
  readonly group: string | null;
  readonly money: number;
}

const TONNE = 1000;

/** The budget solved again with one more of each: nothing is read off prices, so that a whole tonne or hectare is told as it is. */
export async function worths(budget: FeedBudget, months: readonly number[], solver: PricingSolver): Promise<readonly Worth[]> {
  const { scenario } = budget.programme.season;
  const found: Worth[] = [];
  for (const month of months) found.push({ of: "hay to feed", month, group: null, money: budget.money - (await withHayGiven(budget, month, solver)) });
  const changed = async (farm: Scenario) => budget.money - (await feedBudget(buildSeason(farm), solver)).money;
  found.push({ of: "hay in store", month: null, group: null, money: await changed({ ...scenario, hay: { ...scenario.hay, inStoreKg: scenario.hay.inStoreKg + TONNE } }) });
  found.push({ of: "hectare", month: null, group: null, money: await changed(withOneHectareMore(scenario)) });
  for (const [g, group] of budget.programme.season.groups.entries()) {
    if (!group.grazer || budget.programme.needs[g]!.every(({ takenT }) => takenT === 0)) continue;
    found.push({ of: "head", month: null, group: group.name, money: await changed(withOneHeadMore(scenario, g)) });
  }
  return found;
}

/** The budget's money when a tonne of hay is there to feed in a month, at no price. */
async function withHayGiven({ programme }: FeedBudget, month: number, solver: PricingSolver): Promise<number> {
  const { model, months, rowOf } = programme;
  const own = rowOf.given + months.indexOf(month);
  const rows = model.rows.map((row, r) => (r === own ? { ...row, most: 1 } : row));
  const solved = await solver.relax({ ...model, rows }, GUARD_SECONDS);
  if (solved.kind !== "optimal") throw new Error(`a tonne of hay more has no answer: ${solved.kind}`);
  return solved.value;
}

/** One hectare more that is like all the rest together. */
function withOneHectareMore(scenario: Scenario): Scenario {
  const all = scenario.cells.reduce((sum, cell) => sum + cell.areaHa, 0);
  return { ...scenario, cells: scenario.cells.map((cell) => ({ ...cell, areaHa: cell.areaHa * (1 + 1 / all) })) };
}

/** One head more of a group, with its share of young. */
function withOneHeadMore(scenario: Scenario, g: number): Scenario {
  const more = (group: Group): Group => ({ ...group, head: group.head + 1, young: group.young && { ...group.young, head: (group.young.head * (group.head + 1)) / group.head } });
  return { ...scenario, groups: scenario.groups.map((group, i) => (i === g ? more(group) : group)) };
}
