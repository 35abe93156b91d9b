import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { farmDay, findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { over, plain } from "./words.js";

/** Live weight out on ground over all cells in hand, each day. */
export function checkRateCeiling(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "rate-ceiling", replay.days);
  const most = figureOf(scenario, "rate-ceiling", "most", null, null);
  if (most === null) return findings.judged();
  for (let t = 0; t < replay.days.count; t++) {
    const weight = replay.groups.reduce((sum, { places, alone }) => sum + (places[t]! >= 0 ? alone.weightKg[t]! : 0), 0);
    const area = replay.cells.reduce((sum, { cell, inHand }) => sum + (inHand[t] ? cell.areaHa : 0), 0);
    if (weight <= (most + TOLERANCE) * area) continue;
    const found = area > 0 ? `${plain(over(weight / area, 10))} kg/ha of live weight` : "live weight on no ground in hand";
    findings.breach(farmDay(t), { found, allowed: `at most ${plain(most)} kg/ha`, by: weight / area });
  }
  return findings.judged();
}
