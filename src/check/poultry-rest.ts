import { figureOf, isBird, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { groundResting, groundTaken } from "./earlier.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { areaOver, areaShort } from "./words.js";

/** Birds find ground in the cell that no birds used within the rest of their kind. */
export function checkPoultryRest(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "poultry-rest", replay.days);
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    if (!isBird(group.kind)) continue;
    const cell = replay.cells[stay.cell]!;
    const figure = (key: string) => figureOf(scenario, "poultry-rest", key, cell.cell.field, group.name) ?? 0;
    const resting = groundResting(scenario, replay.days, cell, stay, isBird, (kind) => figure(kind));
    const fresh = Math.max(0, cell.cell.areaHa - resting);
    const wanted = groundTaken(scenario, stay);
    if (wanted <= fresh + TOLERANCE) continue;
    findings.breach(stayWhere(scenario, stay), { found: `${areaOver(wanted)} wanted`, allowed: `at most ${areaShort(fresh)} rested from birds` });
  }
  return findings.judged();
}
