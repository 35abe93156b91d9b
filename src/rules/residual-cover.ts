import type { Rule } from "./rule.js";

export const residualCover: Rule = {
  id: "residual-cover",
  sentence: "No grazing takes a cell below what must be left.",
  equation: "cover after the day's eating >= residual",
  unit: "kg/ha",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "grazing-heights",
  parameters: [
    { key: "grazers", meaning: "cover that must be left by grazers", unit: "kg/ha", least: 1000, usual: 1500, most: 2500, source: "residual-cover.grazers" },
  ],
};
