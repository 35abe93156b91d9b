import type { Rule } from "./rule.js";

export const everyDayPlaced: Rule = {
  id: "every-day-placed",
  sentence: "A group on the farm is in one cell, or in its yard, every day.",
  equation: "cells + yard = 1, each group and day",
  unit: "places",
  scope: "farm",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [],
};
