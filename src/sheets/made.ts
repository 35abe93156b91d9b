import { addDays, type IsoDate } from "../quantity/calendar.js";
import type { Plan } from "../plan/plan.js";
import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";

/** Hay in one kind of year: kg as stored, and days each group stands in a yard. */
export interface HayYear {
  readonly kg: number;
  readonly yardDays: Readonly<Record<string, number>>;
}

/** When and how a plan was made, and what it comes to: what the sheets say beside the plan itself. */
export interface Made {
  readonly madeOn: IsoDate;
  readonly version: number;
  /** Last firm and last likely day; later days are an outline. */
  readonly firmTo: IsoDate;
  readonly likelyTo: IsoDate;
  /** Null where the kinds of year were not reckoned. */
  readonly hay: { readonly dry: HayYear; readonly usual: HayYear; readonly wet: HayYear } | null;
  /** Money: the plan's cost, what no plan can cost less than, and the cost by the hand rule; null where not known. */
  readonly cost: number;
  readonly bound: number | null;
  readonly handRuleCost: number | null;
  readonly currency: string;
}

/** Everything a sheet is drawn from. */
export interface Sheet {
  readonly scenario: Scenario;
  readonly plan: Plan;
  readonly report: Report;
  readonly made: Made;
}

/** How sure a day of the plan is. */
export type Sure = "done" | "firm" | "likely" | "outline";

const FIRM_DAYS = 14;
const LIKELY_DAYS = 42;

/** Two weeks are firm, six likely, the day of planning counted. */
export function madeDates(madeOn: IsoDate): Pick<Made, "madeOn" | "firmTo" | "likelyTo"> {
  return { madeOn, firmTo: addDays(madeOn, FIRM_DAYS - 1), likelyTo: addDays(madeOn, LIKELY_DAYS - 1) };
}

/** A stay or strip is as sure as its first day. */
export function sureOf(day: IsoDate, made: Made): Sure {
  if (day < made.madeOn) return "done";
  if (day <= made.firmTo) return "firm";
  return day <= made.likelyTo ? "likely" : "outline";
}
