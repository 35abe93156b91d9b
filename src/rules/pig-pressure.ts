import type { Rule } from "./rule.js";

export const pigPressure: Rule = {
  id: "pig-pressure",
  sentence: "Pigs stay on a strip long enough to open it where that is wanted, and never too long.",
  equation: "head x days / strip area <= most",
  unit: "pig-days/ha",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "pig-pressure",
  parameters: [
    { key: "opened", meaning: "pig-days a hectare that open a strip", unit: "pig-days/ha", least: 100, usual: 2500, most: 10000, source: "judgement" },
    { key: "most", meaning: "most pig-days a hectare on a strip", unit: "pig-days/ha", least: 300, usual: 3600, most: 10000, source: "pig-pressure.most" },
    { key: "unopened-price", meaning: "price of a last strip left before it is opened", unit: "money", least: 0, usual: 4, most: 1000, source: "judgement" },
  ],
};
