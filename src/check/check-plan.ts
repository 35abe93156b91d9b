import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { RULE_IDS, type Breach, type Charge, type RuleId } from "../rules/rule.js";
import { cellDaysOf, measuresOf } from "./measures.js";
import { replayPlan } from "./replay.js";
import type { Report } from "./report.js";
import { RULE_CHECKS } from "./rule-checks.js";

const RULE_ORDER = new Map<RuleId, number>(RULE_IDS.map((id, i) => [id, i]));

/**
 * Judges any plan, also one typed by hand: every rule by dates on the wall calendar, with what the plan costs and
 * comes to. Cover in kg DM/ha, money in the farm's currency.
 */
export function checkPlan(scenario: Scenario, plan: Plan): Report {
  const replay = replayPlan(scenario, plan);
  const judged = RULE_IDS.map((id) => RULE_CHECKS[id](scenario, plan, replay));
  const order = byDayRuleAndPlace(scenario);
  const charges = judged.flatMap((j) => j.charges).sort(order);
  return {
    firstDay: scenario.season.firstDay,
    breaches: judged.flatMap((j) => j.breaches).sort(order),
    charges,
    chargesByRule: chargesByRule(charges),
    cost: charges.reduce((sum, charge) => sum + charge.money, 0),
    measures: measuresOf(scenario, replay),
    cells: cellDaysOf(scenario, replay),
  };
}

function chargesByRule(charges: readonly Charge[]): Record<RuleId, number> {
  const sums = Object.fromEntries(RULE_IDS.map((id) => [id, 0])) as Record<RuleId, number>;
  for (const charge of charges) sums[charge.rule] += charge.money;
  return sums;
}

/** By first day, then rules in the order they are written for people, then groups and cells in the farm's order. */
function byDayRuleAndPlace(scenario: Scenario): (a: Breach | Charge, b: Breach | Charge) => number {
  const groups = new Map(scenario.groups.map((group, g) => [group.name, g]));
  const cells = new Map(scenario.cells.map((cell, c) => [cell.name, c]));
  const at = (places: ReadonlyMap<string, number>, name: string | null) => (name === null ? -1 : places.get(name)!);
  return (a, b) =>
    (a.firstDay < b.firstDay ? -1 : a.firstDay > b.firstDay ? 1 : 0) ||
    RULE_ORDER.get(a.rule)! - RULE_ORDER.get(b.rule)! ||
    at(groups, a.group) - at(groups, b.group) ||
    at(cells, a.cell) - at(cells, b.cell);
}
