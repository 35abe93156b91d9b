import { checkPlan } from "../check/check-plan.js";
import { checkAnswer, checkText } from "./check-text.js";
import { openFarm, openPlan } from "./open.js";
import type { Outcome } from "./outcome.js";
import type { Screen } from "./screen.js";

export interface CheckGiven {
  readonly farm: string;
  readonly plan: string;
  readonly changes: readonly string[];
}

/** `inbye check FARM PLAN`: any plan, judged by replaying it day by day. */
export function checkCommand(given: CheckGiven, screen: Screen): Outcome {
  const farm = openFarm(given.farm, given.changes);
  const { value: plan, notes } = openPlan(given.plan, farm.value);
  const report = checkPlan(farm.value, plan);
  const said = [...farm.notes, ...notes];
  return {
    exit: report.breaches.length > 0 ? 3 : 0,
    text: checkText(farm.value, report, said, screen),
    answer: { shape: "check-answer", value: checkAnswer(farm.value, report, said) },
  };
}
