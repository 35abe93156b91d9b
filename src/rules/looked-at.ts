import type { Rule } from "./rule.js";

export const lookedAt: Rule = {
  id: "looked-at",
  sentence: "Every group is seen every day, birds also at dusk.",
  equation: "people at home >= 1, each day with stock",
  unit: "people",
  scope: "farm",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
