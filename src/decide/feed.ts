import type { Scenario } from "../farm/scenario.js";
import type { PricingSolver } from "../programme/solver.js";
import { buildSeason } from "../season/build-season.js";
import { feedBudget, type FeedWeek } from "./feed-budget.js";
import { carries, type Carries } from "./feed/carry.js";
import { drops, type Drops } from "./feed/drop.js";
import { pinches, surpluses, tightest, type WeekSpan } from "./feed/pinch.js";
import { worths, type Worth } from "./feed/worth.js";
import { groupNeed, type GroupNeed } from "./land.js";

/** All that a season's feed budget has to say. */
export interface Feed {
  readonly groups: readonly GroupNeed[];
  readonly weeks: readonly FeedWeek[];
  /** All that stands on ground in hand on the first morning, kg DM. */
  readonly startKg: number;
  readonly pinches: readonly WeekSpan[];
  readonly surpluses: readonly WeekSpan[];
  readonly tightest: number | null;
  readonly carries: readonly Carries[];
  readonly drops: Drops;
  readonly worths: readonly Worth[];
}

/** Grass and mouths week by week: where it pinches, what the land carries, what to drop for hay, what one more of each is worth. */
export async function feedOf(scenario: Scenario, solver: PricingSolver): Promise<Feed> {
  const season = buildSeason(scenario);
  const ideal = await feedBudget(season, solver);
  const { budget, ...mown } = await drops(ideal, solver);
  const { weeks } = budget;
  const short = pinches(weeks);
  const months = ideal.programme.months.filter((month) => short.some(({ from, to }) => weeks.slice(from, to + 1).some(({ day }) => season.month[day] === month)));
  return {
    groups: season.groups.map((_, g) => groupNeed(season, g)),
    weeks,
    startKg: season.cells.reduce((sum, { inHand, startCover, areaHa }) => sum + (inHand[0] ? startCover * areaHa : 0), 0),
    pinches: short,
    surpluses: surpluses(weeks),
    tightest: tightest(weeks),
    carries: await carries(budget, solver),
    drops: mown,
    worths: await worths(ideal, months, solver),
  };
}
