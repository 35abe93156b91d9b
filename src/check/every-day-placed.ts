import { findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";

/** Each group on exactly one place of the farm each day here, on none while away; and every line of the plan readable. */
export function checkEveryDayPlaced(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "every-day-placed", replay.days);
  for (const { rule, group, cell, first, last, found, allowed } of replay.placingFaults) {
    if (rule !== "every-day-placed") continue;
    const where = { group: group === null ? null : scenario.groups[group]!, cell: cell === null ? null : scenario.cells[cell]!, first, last };
    findings.breach(where, { found, allowed });
  }
  return findings.judged();
}
