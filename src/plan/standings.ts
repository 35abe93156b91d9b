import { addDays, type IsoDate } from "../quantity/calendar.js";
import type { Scenario } from "../farm/scenario.js";
import type { Cut, Plan, Stay } from "./plan.js";

/** One group in one place on one day. */
export interface Standing {
  readonly group: string;
  readonly cell: string | null;
  readonly yard: string | null;
  readonly day: IsoDate;
}

/** The plan of all standings: touching days of a group in one place make one stay, whatever order they come in. */
export function planOfStandings(standings: readonly Standing[], cuts: readonly Cut[], scenario: Scenario): Plan {
  const runs = new Map<string, { first: Standing; days: IsoDate[] }>();
  for (const standing of standings) {
    const key = placeKey(standing);
    const run = runs.get(key) ?? { first: standing, days: [] };
    run.days.push(standing.day);
    runs.set(key, run);
  }
  return orderedPlan([...runs.values()].flatMap(({ first, days }) => staysOf(first, [...new Set(days)].sort())), cuts, scenario);
}

function placeKey(standing: Standing): string {
  return JSON.stringify([standing.group, standing.cell, standing.yard]);
}

function staysOf({ group, cell, yard }: Standing, days: readonly IsoDate[]): Stay[] {
  const stays: Stay[] = [];
  for (const day of days) {
    const last = stays.at(-1);
    if (last && addDays(last.lastDay, 1) === day) stays[stays.length - 1] = { ...last, lastDay: day };
    else stays.push({ group, cell, yard, firstDay: day, lastDay: day });
  }
  return stays;
}

/** By first day, then group in farm order; cuts by day, then cells in walk order. */
export function orderedPlan(stays: readonly Stay[], cuts: readonly Cut[], scenario: Scenario): Plan {
  const [cells, groups, yards] = [rankOf(scenario.cells), rankOf(scenario.groups), rankOf(scenario.yards)];
  return {
    stays: [...stays].sort((a, b) =>
      a.firstDay.localeCompare(b.firstDay) || groups(a.group, b.group) || cells(a.cell, b.cell) || yards(a.yard, b.yard)),
    cuts: [...cuts].sort((a, b) => a.day.localeCompare(b.day) || cells(a.cell, b.cell) || a.cut.localeCompare(b.cut)),
  };
}

/** Compares names by their place in the farm file; unknown ones last. */
function rankOf(things: readonly { readonly name: string }[]): (a: string | null, b: string | null) => number {
  const rank = new Map(things.map((thing, i) => [thing.name, i]));
  const at = (name: string | null): number => rank.get(name ?? "") ?? things.length;
  return (a, b) => at(a) - at(b);
}
