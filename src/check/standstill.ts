import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { daysIn, positionOf } from "./season-days.js";

/** Nothing comes onto the farm or leaves it while a standstill runs; the season's end is no leaving. */
export function checkStandstill(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "standstill", replay.days);
  const standing = daysIn(replay.days, scenario.standstills);
  for (const group of scenario.groups) {
    const fault = (t: number, found: string) => {
      if (standing[t]) findings.breach({ group, cell: null, first: t, last: t }, { found, allowed: "nothing on or off in a standstill" });
    };
    for (const span of group.here) {
      fault(positionOf(replay.days, span.firstDay), "comes onto the farm");
      const last = positionOf(replay.days, span.lastDay);
      if (last !== replay.days.count - 1) fault(last, "leaves the farm");
    }
  }
  return findings.judged();
}
