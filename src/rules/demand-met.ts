import type { Rule } from "./rule.js";

export const demandMet: Rule = {
  id: "demand-met",
  sentence: "What a group eats comes from its cell, or is fed in the yard and charged.",
  equation: "eaten + trodden <= standing; hay fed x price",
  unit: "kg DM",
  scope: "cell",
  use: "hard",
  uses: ["hard"],
  source: "common practice",
  parameters: [
    { key: "least-standing", meaning: "cover that no mouth takes", unit: "kg/ha", least: 0, usual: 50, most: 500, source: "judgement" },
  ],
};
