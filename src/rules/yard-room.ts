import type { Rule } from "./rule.js";

export const yardRoom: Rule = {
  id: "yard-room",
  sentence: "The yard holds so many, on its open dates; a day in it has its price.",
  equation: "head in yard <= room; days x price",
  unit: "head",
  scope: "farm",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
