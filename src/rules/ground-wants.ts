import type { Rule } from "./rule.js";

export const groundWants: Rule = {
  id: "ground-wants",
  sentence: "Cells that want fertility, scratching or opening get it.",
  equation: "share left undone x area x price",
  unit: "share",
  scope: "cell",
  use: "charged",
  uses: ["charged", "off"],
  source: "common practice",
  parameters: [
    { key: "opening-price", meaning: "price of a hectare left unopened", unit: "money/ha", least: 0, usual: 60, most: 10000, source: "judgement" },
    { key: "scratching-price", meaning: "price of a hectare left unscratched", unit: "money/ha", least: 0, usual: 40, most: 10000, source: "judgement" },
    { key: "fertility-price", meaning: "price of a hectare left unfed", unit: "money/ha", least: 0, usual: 40, most: 10000, source: "judgement" },
    { key: "fertility-target", meaning: "nitrogen that counts as fed", unit: "kg/ha", least: 10, usual: 60, most: 250, source: "judgement" },
  ],
};
