import type { Scenario } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import { pathTables } from "../../programme/path-tables.js";
import { placesOf } from "../../programme/places-of.js";
import { HALVES } from "../../programme/rules/index.js";
import { buildSeason } from "../../season/build-season.js";
import { grownFarm } from "./grown.js";
import { livedYear, type LivedYear } from "./lived-year.js";
import { walkYear, type WalkedPlan } from "./walk.js";
import type { Year } from "./year.js";

export function walkedPlan(scenario: Scenario, plan: Plan): WalkedPlan {
  const season = buildSeason(scenario);
  return { season, tables: pathTables(season, HALVES), plan: placesOf(season, plan) };
}

/** Walks a plan through a year and judges what came of it. */
export function walkThrough(walked: WalkedPlan, year: Year): LivedYear {
  const farm = grownFarm(walked.season.scenario, year);
  return livedYear(walked, farm, walkYear(walked, farm, year));
}
