import type { Rule } from "./rule.js";

export const housingOrder: Rule = {
  id: "housing-order",
  sentence: "Birds are in the yard while a housing order runs.",
  equation: "cell days of housed kinds in the order = 0",
  unit: "d",
  scope: "group",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
