import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { PlanFile } from "../plan/plan-file.js";
import { showMoney } from "../quantity/show-amount.js";
import type { Made } from "./made.js";

/** What plan.json tells beside the plan: its ancestors. */
export interface Ancestry {
  readonly replaces: number | null;
  /** Titles of the changes laid over the farm. */
  readonly changes: readonly string[];
}

/** A plan with its report as plan.json holds it: figures with their units, rounded once. */
export function planRecord(scenario: Scenario, plan: Plan, report: Report, made: Made, { replaces, changes }: Ancestry): PlanFile {
  const money = (value: number): string => showMoney(value, made.currency);
  const whole = (value: number, unit: string): string => `${Math.round(value)} ${unit}`;
  const { measures } = report;
  return {
    farm: scenario.farm, version: made.version, replaces, madeOn: made.madeOn, firmTo: made.firmTo, likelyTo: made.likelyTo,
    farmPrint: scenario.print, farmForm: scenario.form, changes, plan,
    measures: {
      "hay-fed": whole(measures.hayFedKg, "kg"), "hay-made": whole(measures.hayMadeKg, "kg"), moves: String(measures.moves), hauls: String(measures.hauls),
      "nitrogen-on-holding": whole(measures.nitrogenOnHoldingKgPerHa, "kg/ha"), "nitrogen-in-yard": whole(measures.nitrogenInYardKg, "kg"),
    },
    charges: Object.fromEntries(Object.entries(report.chargesByRule).filter(([, value]) => value > 0).map(([rule, value]) => [rule, money(value)])),
    cost: money(made.cost), bound: made.bound === null ? null : money(made.bound), handRule: made.handRuleCost === null ? null : money(made.handRuleCost),
    yardDays: made.hay && { dry: made.hay.dry.yardDays, usual: made.hay.usual.yardDays, wet: made.hay.wet.yardDays },
    assumed: scenario.assumed,
  };
}
