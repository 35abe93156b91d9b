import type { Rule } from "./rule.js";

export const fenceKit: Rule = {
  id: "fence-kit",
  sentence: "Nets, reels and energisers in use at once, and set ahead, are within what the farm owns.",
  equation: "in use + set ahead <= owned, each day",
  unit: "pieces",
  scope: "farm",
  use: "hard",
  uses: ["hard", "off"],
  source: "common practice",
  parameters: [
    { key: "energisers-each", meaning: "energisers that a fenced group uses", unit: "", least: 0, usual: 1, most: 3, source: "common practice" },
  ],
};
