import { RULES } from "../rules/index.js";
import type { RuleId } from "../rules/rule.js";
import type { RuleFigures } from "./scenario.js";

/** Every rule's default use and figures, as its statement says them. */
export function defaultFigures(): Record<RuleId, RuleFigures> {
  return Object.fromEntries(
    RULES.map((rule) => [rule.id, { use: rule.use, figures: Object.fromEntries(rule.parameters.map((p) => [p.key, p.usual])) }]),
  ) as Record<RuleId, RuleFigures>;
}
