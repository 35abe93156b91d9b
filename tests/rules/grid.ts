import type { Cut, Plan, Stay } from "../../src/plan/plan.js";
import { addDays } from "../../src/quantity/calendar.js";
import type { Scenario } from "../../src/farm/scenario.js";

/** The first day of the tiny farm's season, and day 1 of a row. */
const FIRST_DAY = "2027-05-01";

/** The date of the nth day of a season, counted from 1 as columns of a grid are. */
export function day(n: number, firstDay = FIRST_DAY): string {
  return addDays(firstDay, n - 1);
}

/**
 * Rows by group: one word a day, "A*3" for three days in A, "yard" for the group's own yard, "yard:Barn" for another,
 * "." for a day without a place in the row. Several rows of one group may lie over each other.
 */
export type Rows = Readonly<Record<string, string | readonly string[]>>;

/** Cuts as "A hay 5": cell, cut, day of the season counted from 1. */
export function planFromRows(scenario: Scenario, rows: Rows, cuts: readonly string[] = []): Plan {
  const stays = Object.entries(rows).flatMap(([group, of]) =>
    (typeof of === "string" ? [of] : of).flatMap((row) => staysOfRow(scenario, group, row)),
  );
  return { stays, cuts: cuts.map((cut) => cutOf(scenario, cut)) };
}

function staysOfRow(scenario: Scenario, group: string, row: string): Stay[] {
  const stays: Stay[] = [];
  let at = 1;
  for (const word of row.trim().split(/\s+/)) {
    const [place, times = "1"] = word.split("*") as [string, string?];
    const firstDay = day(at, scenario.season.firstDay);
    at += Number(times);
    if (place === ".") continue;
    const lastDay = day(at - 1, scenario.season.firstDay);
    const before = stays.at(-1);
    const here = placeOf(scenario, group, place);
    if (before && before.cell === here.cell && before.yard === here.yard && addDays(before.lastDay, 1) === firstDay) {
      stays[stays.length - 1] = { ...before, lastDay };
    } else stays.push({ group, ...here, firstDay, lastDay });
  }
  return stays;
}

function placeOf(scenario: Scenario, group: string, place: string): Pick<Stay, "cell" | "yard"> {
  if (place === "yard") return { cell: null, yard: scenario.groups.find((g) => g.name === group)?.yard ?? "Yard" };
  return place.startsWith("yard:") ? { cell: null, yard: place.slice(5) } : { cell: place, yard: null };
}

function cutOf(scenario: Scenario, text: string): Cut {
  const [cell, cut, at] = text.split(" ") as [string, Cut["cut"], string];
  return { cell, cut, day: day(Number(at), scenario.season.firstDay) };
}
