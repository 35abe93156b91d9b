import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { over, plain } from "./words.js";

/** Pig-days a hectare on the strip where a stay keeps pigs longest. */
export function checkPigPressure(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "pig-pressure", replay.days);
  for (const stay of replay.stays) {
    const { kind, strip, head, name } = scenario.groups[stay.group]!;
    if (kind !== "pigs" || !strip) continue;
    const most = figureOf(scenario, "pig-pressure", "most", scenario.cells[stay.cell]!.field, name) ?? Infinity;
    const pressure = (head * Math.min(strip.days, stay.days)) / strip.areaHa;
    if (pressure <= most + TOLERANCE) continue;
    findings.breach(stayWhere(scenario, stay), { found: `${plain(over(pressure))} pig-days/ha`, allowed: `at most ${plain(most)} pig-days/ha` });
  }
  return findings.judged();
}
