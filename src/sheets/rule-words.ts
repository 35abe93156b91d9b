import type { RuleId } from "../rules/rule.js";
import type { Words } from "../words/words.js";

/** A rule in few words, as sheets name it where several small charges are told together. */
export function ruleWords(rule: RuleId, words: Words): string {
  return words.say(`rule.${rule}`);
}

/** Running costs of any plan: told as sums, never as notes on a day. */
export const RUNNING: readonly RuleId[] = ["people", "pen-steps", "demand-met", "yard-room", "hay-stock", "water"];
