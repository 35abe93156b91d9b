import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { SHUT_BY_BIRDS } from "./cell-record.js";
import type { Judged } from "./findings.js";
import { openShare } from "./open-share.js";
import type { Replay } from "./replay.js";

/** While only ground that birds worked is shut, enough of the cell stays open for those that graze it. */
export function checkWorkedGround(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  return openShare(scenario, replay, "worked-ground", "birds'", (shut) => shut === SHUT_BY_BIRDS);
}
