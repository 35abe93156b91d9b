import { figureOf, type Kind, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { groundResting, groundTaken } from "./earlier.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { areaOver, areaShort } from "./words.js";

/** Pigs find ground in the cell that no pigs used within the rest. */
export function checkPigRest(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "pig-rest", replay.days);
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    if (!isPigs(group.kind)) continue;
    const cell = replay.cells[stay.cell]!;
    const figure = (key: string) => figureOf(scenario, "pig-rest", key, cell.cell.field, group.name) ?? 0;
    const resting = groundResting(scenario, replay.days, cell, stay, isPigs, () => figure("rest"));
    const fresh = Math.max(0, cell.cell.areaHa - resting);
    const wanted = groundTaken(scenario, stay);
    if (wanted <= fresh + TOLERANCE) continue;
    findings.breach(stayWhere(scenario, stay), { found: `${areaOver(wanted)} wanted`, allowed: `at most ${areaShort(fresh)} rested from pigs` });
  }
  return findings.judged();
}

function isPigs(kind: Kind): boolean {
  return kind === "pigs";
}
