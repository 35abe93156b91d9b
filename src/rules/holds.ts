import type { Rule } from "./rule.js";

export const holds: Rule = {
  id: "holds",
  sentence: "Days the owner has fixed stay as they are.",
  equation: "place on held days = held place",
  unit: "places",
  scope: "group",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
