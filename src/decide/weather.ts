import type { Scenario } from "../farm/scenario.js";
import { pathTables } from "../programme/path-tables.js";
import { HALVES } from "../programme/rules/index.js";
import type { Snapshot } from "../programme/snapshot.js";
import { buildSeason } from "../season/build-season.js";
import { YARD, type Season } from "../season/season.js";
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
    return yardDaysOf(season, walkYear(walked, grownFarm(scenario, year), year).place);
  };
  return { dry: keptIn(scenario.weather.dry), usual: yardDaysOf(season, plan.place), wet: keptIn(scenario.weather.wet) };
}

/** Days on which each group stands in a yard. */
export function yardDaysOf(season: Season, place: readonly Int16Array[]): YardDays {
  return Object.fromEntries(season.groups.map((group, g) => [group.name, place[g].filter((at) => at === YARD).length]));
}
