import type { Scenario } from "../farm/scenario.js";
import { farmFigure, figures } from "../programme/half.js";
import type { PricingSolver } from "../programme/solver.js";
import { addDays } from "../quantity/calendar.js";
import { cellsNeeded } from "../science/stocking.js";
import { buildSeason } from "../season/build-season.js";
import type { Season } from "../season/season.js";
import { feedBudget, type FeedWeek } from "./feed-budget.js";

/** What a group needs of the land. */
export interface GroupNeed {
  readonly group: string;
  /** Heaviest live weight of the season, kg, companions apart. */
  readonly liveWeightKg: number;
  /** Dry matter eaten over the season, kg. */
  readonly demandKg: number;
  /** Rest / stay + 1 with the season's longest usual rest; null for groups that take ground by strips. */
  readonly cellsNeeded: number | null;
  readonly cellsItMayEnter: number;
}

/** A week of the feed budget, with its first day as a date. */
export interface LandWeek extends Pick<FeedWeek, "grownKg" | "eatenKg" | "hayKg" | "standingKg" | "daysInHand"> {
  readonly firstDay: string;
}

/** The first answer for any farm: need against land, and the feed week by week. */
export interface LandSummary {
  readonly groups: readonly GroupNeed[];
  /** Dry matter that the land grows in the season in a low, a usual and a high year, kg. */
  readonly grownKg: { readonly low: number; readonly usual: number; readonly high: number };
  readonly weeks: readonly LandWeek[];
}

/** Cells needed against cells there are, growth by year, and the weekly feed budget. */
export async function landSummary(scenario: Scenario, solver: PricingSolver): Promise<LandSummary> {
  const season = buildSeason(scenario);
  const grown = season.cells.reduce((sum, cell) => sum + cell.growth.reduce((kg, g, t) => kg + (cell.inHand[t] ? g : 0), 0) * cell.areaHa, 0);
  const { weeks } = await feedBudget(season, solver);
  return {
    groups: season.groups.map((_, g) => groupNeed(season, g)),
    grownKg: { low: grown * scenario.weather.dry, usual: grown, high: grown * scenario.weather.wet },
    weeks: weeks.map(({ day, grownKg, eatenKg, hayKg, keptInHayKg, standingKg, daysInHand }) => (
      { firstDay: addDays(scenario.season.firstDay, day), grownKg, eatenKg, hayKg: hayKg + keptInHayKg, standingKg, daysInHand })),
  };
}

/** What a group needs of the land. */
export function groupNeed(season: Season, g: number): GroupNeed {
  const group = season.groups[g];
  const { kind } = season.scenario.groups[g];
  const rest = Math.max(farmFigure(season, "rest-period", "flush"), farmFigure(season, "rest-period", "midsummer"));
  const cells = season.cells.map((_, c) => c).filter((c) => group.mayEnter[c] && season.cells[c].open.some((open) => open === 1));
  const usual = group.grazer ? figures(season, "stay-limit", kind)(cells[0] ?? 0, g) : 0;
  return {
    group: group.name,
    liveWeightKg: Math.max(0, ...group.liveWeight),
    demandKg: group.intake.reduce((sum, kg) => sum + kg, 0),
    cellsNeeded: group.grazer ? cellsNeeded(rest, usual) : null,
    cellsItMayEnter: cells.length,
  };
}
