import type { Rule } from "./rule.js";

export const standstill: Rule = {
  id: "standstill",
  sentence: "Nothing comes on or goes off while a standstill runs.",
  equation: "arrivals and departures in the standstill = 0",
  unit: "groups",
  scope: "group",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
