import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { SHUT_BY_PIGS } from "./cell-record.js";
import type { Judged } from "./findings.js";
import { openShare } from "./open-share.js";
import type { Replay } from "./replay.js";

/** While ground that pigs opened is shut, enough of the cell stays open for those that graze it. */
export function checkAfterPigs(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  return openShare(scenario, replay, "after-pigs", "pigs'", (shut) => (shut & SHUT_BY_PIGS) !== 0);
}
