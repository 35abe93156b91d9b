import type { Planned } from "../decide/plan-season.js";
import type { Scenario } from "../farm/scenario.js";
import type { OutFile } from "../files/write.js";
import { writePlanFile, type PlanFile } from "../plan/plan-file.js";
import { RULE_IDS } from "../rules/rule.js";
import { gridCsv } from "../sheets/grid-csv.js";
import type { Made } from "../sheets/made.js";
import { seasonGridHtml } from "../sheets/season-grid-html.js";
import { holdToSchema } from "./hold-to-schema.js";

/** What a plan is written to, in the order it is told. */
export const SHEETS = ["season-grid.html", "grid.csv", "plan.json"] as const;

/** Every sheet of a plan, ready to be written. */
export function sheetFiles(scenario: Scenario, planned: Planned, made: Made): readonly OutFile[] {
  const text = writePlanFile(scenario, planFileOf(scenario, planned, made));
  holdToSchema("plan-file", JSON.parse(text));
  return [
    { name: SHEETS[0], text: seasonGridHtml(scenario, planned.plan, planned.report, made) },
    { name: SHEETS[1], text: gridCsv(scenario, planned.plan) },
    { name: SHEETS[2], text },
  ];
}

function planFileOf(scenario: Scenario, planned: Planned, made: Made): PlanFile {
  const { measures, chargesByRule } = planned.report;
  const money = (amount: number) => `${amount.toFixed(2)} ${scenario.prices.currency}`;
  const paid = RULE_IDS.filter((id) => chargesByRule[id] > 0);
  return {
    farm: scenario.farm,
    version: made.version,
    replaces: null,
    madeOn: made.madeOn,
    firmTo: made.firmTo,
    likelyTo: made.likelyTo,
    farmPrint: scenario.print,
    changes: [],
    plan: planned.plan,
    measures: {
      "hay-fed": `${Math.round(measures.hayFedKg)} kg`,
      "hay-made": `${Math.round(measures.hayMadeKg)} kg`,
      moves: String(measures.moves),
      hauls: String(measures.hauls),
      "nitrogen-in-yard": `${Math.round(measures.nitrogenInYardKg)} kg`,
      "nitrogen-on-holding": `${Math.round(measures.nitrogenOnHoldingKgPerHa)} kg/ha`,
    },
    charges: Object.fromEntries(paid.map((id) => [id, money(chargesByRule[id])])),
    cost: money(planned.cost),
    bound: money(Math.floor(Math.max(0, planned.bound) * 100) / 100),
    handRule: money(planned.handRuleCost),
    yardDays: planned.weatherYardDays,
    assumed: scenario.assumed,
  };
}
