import { findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";

/** No two groups in a cell on a day but those that run together, and these in the same place. */
export function checkOneGroupPerCell(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "one-group-per-cell", replay.days);
  for (const { rule, group, cell, first, last, found, allowed } of replay.placingFaults) {
    if (rule !== "one-group-per-cell") continue;
    const where = { group: group === null ? null : scenario.groups[group]!, cell: cell === null ? null : scenario.cells[cell]!, first, last };
    findings.breach(where, { found, allowed });
  }
  return findings.judged();
}
