import type { Rule } from "./rule.js";

export const oneGroupPerCell: Rule = {
  id: "one-group-per-cell",
  sentence: "Two groups share a cell only if they run together.",
  equation: "groups in a cell <= 1, each day",
  unit: "groups",
  scope: "cell",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
