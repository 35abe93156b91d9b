import type { Rule } from "./rule.js";

export const hayStock: Rule = {
  id: "hay-stock",
  sentence: "Hay fed in summer does not eat the winter's; mowing has its price.",
  equation: "in store + made - fed >= winter need",
  unit: "kg",
  scope: "farm",
  use: "charged",
  uses: ["charged", "off"],
  source: "hay",
  parameters: [
    { key: "short-share", meaning: "price of a tonne short, as a share of the hay price", unit: "%", least: 0, usual: 100, most: 500, source: "judgement" },
    { key: "cut-from", meaning: "cover from which a cut is worth making", unit: "kg/ha", least: 2500, usual: 3500, most: 7000, source: "judgement" },
    { key: "stubble", meaning: "cover left by the mower", unit: "kg/ha", least: 800, usual: 1800, most: 3000, source: "judgement" },
    { key: "making-loss", meaning: "share lost in making hay", unit: "%", least: 0, usual: 20, most: 60, source: "judgement" },
    { key: "together", meaning: "smallest area worth the mower's coming", unit: "ha", least: 0, usual: 0.4, most: 50, source: "judgement" },
  ],
};
