import type { RuleId } from "../rules/rule.js";

/** A charged rule in few words, as sheets name it where several small ones are told together. */
const WORDS: Partial<Record<RuleId, string>> = {
  "entry-cover": "first pass before the grass is up",
  "upper-cover": "long grass",
  "demand-met": "hay fed",
  "stay-limit": "stays longer than usual",
  "rest-period": "rest cut short",
  "clean-ground": "ground not yet clean of worms",
  "pig-pressure": "a last strip left before it is opened",
  "follow-window": "birds not close behind",
  "ground-wants": "ground that still wants work",
  "grass-in-hand": "little grass ahead",
  "closing-cover": "low grass at closing",
  "nitrogen-ceiling": "more nitrogen than advised",
  "pen-steps": "pens hauled",
  people: "moves and hauls",
  water: "water carried or far",
  shade: "days without shade",
  "yard-room": "yard",
  "hay-stock": "mowing and winter hay",
};

export function ruleWords(rule: RuleId): string {
  return WORDS[rule] ?? rule.replaceAll("-", " ");
}

/** Running costs of any plan: told as sums, never as notes on a day. */
export const RUNNING: readonly RuleId[] = ["people", "pen-steps", "demand-met", "yard-room", "hay-stock", "water"];
