import type { Scenario } from "../farm/scenario.js";
import { pathTables } from "../programme/path-tables.js";
import { planOf } from "../programme/plan-of.js";
import { HALVES } from "../programme/rules/index.js";
import type { Snapshot } from "../programme/snapshot.js";
import { daysBetween } from "../quantity/calendar.js";
import { buildSeason } from "../season/build-season.js";
import type { Season } from "../season/season.js";
import { grownFarm } from "./weather/grown.js";
import { walkYear } from "./weather/walk.js";
import { steadyYear } from "./weather/year.js";

/** Days in the yard by group, when the plan is kept as far as the year's grass allows. */
export type YardDays = Readonly<Record<string, number>>;

/** Yard days of a plan as made, and when growth turns out dry or wet all season. */
export function weatherYardDays(scenario: Scenario, plan: Pick<Snapshot, "place" | "cuts">): { dry: YardDays; usual: YardDays; wet: YardDays } {
  const season = buildSeason(scenario);
  const walked = { season, tables: pathTables(season, HALVES), plan };
  const keptIn = (factor: number): YardDays => {
    const year = steadyYear(season, factor);
    return yardDaysOf(season, walkYear(walked, grownFarm(scenario, year), year));
  };
  return { dry: keptIn(scenario.weather.dry), usual: yardDaysOf(season, plan), wet: keptIn(scenario.weather.wet) };
}

/** Days on which each group stands in a yard, beside its host too where it runs with another. */
function yardDaysOf(season: Season, places: Pick<Snapshot, "place" | "cuts">): YardDays {
  const { stays } = planOf(season, places);
  const daysOf = (group: string): number =>
    stays.filter((stay) => stay.group === group && stay.yard !== null).reduce((sum, { firstDay, lastDay }) => sum + daysBetween(firstDay, lastDay) + 1, 0);
  return Object.fromEntries(season.groups.map(({ name }) => [name, daysOf(name)]));
}
