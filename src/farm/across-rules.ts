import { say, type Desk } from "./desk.js";
import type { RuleId } from "../rules/rule.js";
import type { Scenario } from "./scenario.js";
import { child, type MapNode, type Place } from "./tree.js";

/** Pairs of figures of which the first may not pass the second. */
const ORDERED: readonly (readonly [RuleId, string, RuleId, string])[] = [
  ["follow-window", "first", "follow-window", "last"],
  ["pen-steps", "least-step", "pen-steps", "most-step"],
  ["rest-period", "floor", "rest-period", "flush"],
  ["rest-period", "flush-until", "rest-period", "midsummer-from"],
  ["entry-cover", "first-pass", "entry-cover", "grazers"],
  ["residual-cover", "grazers", "entry-cover", "grazers"],
  ["upper-cover", "birds-wished", "upper-cover", "birds-barrier"],
  ["hay-stock", "stubble", "hay-stock", "cut-from"],
];

/** Figures that cross: no plan could keep both. */
export function checkRules(desk: Desk, root: MapNode, scenario: Scenario): void {
  for (const [rule, key, other, limit] of ORDERED) {
    const [a, b] = [scenario.rules.farm[rule].figures[key], scenario.rules.farm[other].figures[limit]];
    if (typeof a !== "number" || typeof b !== "number" || !(a > b)) continue;
    const rules = child(root, "rules");
    const at: Place = child(child(rules, rule), key) ?? child(child(rules, other), limit) ?? root;
    const second = rule === other ? limit : `${other} ${limit}`;
    say(desk, at, { code: "figures-crossed", found: `${rule}: ${key} is ${a}, more than ${second}, ${b}`, allowed: `${key} is at most ${second}`, next: "change one of the two" });
  }
}
