import type { Planned } from "../decide/plan-season.js";
import type { Scenario } from "../farm/scenario.js";
import type { Report } from "../check/report.js";
import type { PlanFile, YardDays } from "../plan/plan-file.js";
import type { IsoDate } from "../quantity/calendar.js";
import { buildSeason } from "../season/build-season.js";
import { madeDates, type HayYear, type Made } from "../sheets/made.js";

/**
 * What the sheets say beside the plan. A plan made before its season is firm from the season's first day on.
 *
 * @param replaces version of the plan that it takes the place of
 */
export function madeOf(scenario: Scenario, planned: Planned, today: IsoDate, replaces: number | null = null): Made {
  const { firstDay } = scenario.season;
  return {
    ...madeDates(today > firstDay ? today : firstDay),
    madeOn: today,
    version: (replaces ?? 0) + 1,
    hay: hayYears(scenario, planned.weatherYardDays),
    cost: planned.cost,
    bound: Math.max(0, planned.bound),
    handRuleCost: planned.handRuleCost,
    currency: scenario.prices.currency,
  };
}

/** A plan that was read: as plan.json has it; what was reckoned for a farm that has changed since is left out. A grid says nothing: made today. */
export function madeOfRead(scenario: Scenario, file: PlanFile | null, report: Report, today: IsoDate): Made {
  const { firstDay } = scenario.season;
  const { currency } = scenario.prices;
  const nothing = { hay: null, cost: report.cost, bound: null, handRuleCost: null, currency };
  if (file === null) return { ...madeDates(today > firstDay ? today : firstDay), madeOn: today, version: 1, ...nothing };
  const { madeOn, firmTo, likelyTo, version } = file;
  if (file.farmPrint !== scenario.print) return { madeOn, firmTo, likelyTo, version, ...nothing };
  return {
    madeOn, firmTo, likelyTo, version, currency, cost: report.cost, hay: file.yardDays && hayYears(scenario, file.yardDays),
    bound: amountOf(file.bound), handRuleCost: amountOf(file.handRule),
  };
}

/** "1304.40 GBP" as a figure. */
function amountOf(money: string | null): number | null {
  const amount = money === null ? NaN : parseFloat(money);
  return Number.isFinite(amount) ? amount : null;
}

/** Hay that the yard days of each kind of year take: each group at its mean over the days it is on the farm. */
function hayYears(scenario: Scenario, yardDays: YardDays): NonNullable<Made["hay"]> {
  const kgPerDay = buildSeason(scenario).groups.map((group) => [group.name, meanOver(group.hayKg, group.present)] as const);
  const year = (days: Readonly<Record<string, number>>): HayYear => ({
    kg: kgPerDay.reduce((sum, [name, kg]) => sum + kg * (days[name] ?? 0), 0),
    yardDays: days,
  });
  return { dry: year(yardDays.dry), usual: year(yardDays.usual), wet: year(yardDays.wet) };
}

function meanOver(amounts: Float64Array, counts: Uint8Array): number {
  const days = counts.reduce((sum, one) => sum + one, 0);
  return days === 0 ? 0 : amounts.reduce((sum, kg) => sum + kg, 0) / days;
}

/** Today by this machine's own clock and place. */
export function todayHere(now = new Date()): IsoDate {
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
