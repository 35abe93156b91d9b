import type { Rule } from "./rule.js";

export const penSteps: Rule = {
  id: "pen-steps",
  sentence: "A pen or net steps always onto fresh open ground; hauls between fields cost minutes.",
  equation: "positions wanted x area <= open area of the cell",
  unit: "ha",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "common practice",
  parameters: [
    { key: "least-step", meaning: "shortest days on a position", unit: "d", least: 1, usual: 1, most: 3, source: "pen-steps.step" },
    { key: "most-step", meaning: "longest days on a position", unit: "d", least: 1, usual: 3, most: 7, source: "pen-steps.step" },
  ],
};
