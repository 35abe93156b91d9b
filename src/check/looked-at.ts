import { farmDay, findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";

/** On each day with a group here, somebody is at home with time to look. */
export function checkLookedAt(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "looked-at", replay.days);
  replay.labour.peopleAtHome.forEach((people, t) => {
    if (people > 0 || !replay.groups.some(({ here }) => here[t])) return;
    findings.breach(farmDay(t), { found: "nobody at home", allowed: "at least 1 person at home" });
  });
  return findings.judged();
}
