import type { Rule } from "./rule.js";

export const closedDates: Rule = {
  id: "closed-dates",
  sentence: "Groups stand only in cells open to them on that day.",
  equation: "day not closed, cell open to the group",
  unit: "yes or no",
  scope: "cell",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
