import { checkPlan } from "../check/check-plan.js";
import type { Planned } from "../decide/plan-season.js";
import type { Scenario } from "../farm/scenario.js";
import type { OutFile } from "../files/write.js";
import { writePlanFile, type PlanFile } from "../plan/plan-file.js";
import { RULE_IDS } from "../rules/rule.js";
import { gridCsv } from "../sheets/grid-csv.js";
import type { Made } from "../sheets/made.js";
import type { Ancestry } from "../sheets/plan-record.js";
import { seasonGridHtml } from "../sheets/season-grid-html.js";
import { english } from "./english.js";
import { holdToSchema } from "./hold-to-schema.js";

/** What a plan is written to, in the order it is told. */
export const SHEETS = ["season-grid.html", "grid.csv", "plan.json"] as const;

/** What is written when no plan keeps every rule: the one that breaks least, and the cheapest way out with its plan. */
export const REFUSED_FILES = ["nearest-plan.json", "way-out.yaml", "way-out-plan.json"] as const;

/**
 * The plan that breaks least, to be looked at with `check`, and the cheapest way out; no sheets for the wall. The change
 * is written only where the plan keeps every rule of the farm as read with it.
 */
export function refusedFiles(scenario: Scenario, planned: Planned, made: Made, ancestry: Ancestry, read: (change: string) => Scenario | null): readonly OutFile[] {
  const [way] = planned.refusal?.waysOut ?? [];
  const nearest = { name: REFUSED_FILES[0], text: held(scenario, planFileOf(scenario, planned, made, ancestry)) };
  if (!way) return [nearest];
  const changed = way.change === null ? null : read(way.change);
  const same = changed !== null && checkPlan(changed, way.plan).breaches.length === 0;
  const farm = same ? changed : way.scenario;
  const file = planFileOf(farm, { ...planned, plan: way.plan, report: way.report, cost: way.cost }, made, { ...ancestry, changes: [...ancestry.changes, way.words] });
  const plan = { name: REFUSED_FILES[2], text: held(farm, { ...file, bound: null, handRule: null, yardDays: null }) };
  return [nearest, ...(same && way.change !== null ? [{ name: REFUSED_FILES[1], text: way.change }] : []), plan];
}

function held(scenario: Scenario, file: PlanFile): string {
  const text = writePlanFile(scenario, file);
  holdToSchema("plan-file", JSON.parse(text));
  return text;
}

/** Every sheet of a plan, ready to be written. */
export function sheetFiles(scenario: Scenario, planned: Planned, made: Made, ancestry: Ancestry): readonly OutFile[] {
  const text = held(scenario, planFileOf(scenario, planned, made, ancestry));
  return [
    { name: SHEETS[0], text: seasonGridHtml(scenario, planned.plan, planned.report, made, english()) },
    { name: SHEETS[1], text: gridCsv(scenario, planned.plan) },
    { name: SHEETS[2], text },
  ];
}

function planFileOf(scenario: Scenario, planned: Planned, made: Made, { replaces, changes }: Ancestry): PlanFile {
  const { measures, chargesByRule } = planned.report;
  const money = (amount: number) => `${amount.toFixed(2)} ${scenario.prices.currency}`;
  const paid = RULE_IDS.filter((id) => chargesByRule[id] > 0);
  return {
    farm: scenario.farm,
    version: made.version,
    replaces,
    madeOn: made.madeOn,
    firmTo: made.firmTo,
    likelyTo: made.likelyTo,
    farmPrint: scenario.print,
    farmForm: scenario.form,
    changes,
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
