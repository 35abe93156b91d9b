import type { Rule } from "./rule.js";

export const nitrogenCeiling: Rule = {
  id: "nitrogen-ceiling",
  sentence: "Nitrogen dropped on a cell in twelve months, and on the holding in a calendar year, stays under its figure.",
  equation: "kg N / ha <= most",
  unit: "kg/ha",
  scope: "farm",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "nitrogen-limits",
  parameters: [
    { key: "cell", meaning: "most nitrogen on a cell in any twelve months", unit: "kg/ha", least: 50, usual: 250, most: 1000, source: "nitrogen-ceiling.cell" },
    { key: "price", meaning: "price of a kilogram over on a cell", unit: "money/kg", least: 0, usual: 1, most: 1000, source: "judgement" },
    { key: "holding", meaning: "most nitrogen on the holding in a calendar year", unit: "kg/ha", least: 50, usual: 170, most: 1000, source: "nitrogen-ceiling.holding" },
    { key: "holding-price", meaning: "price of a kilogram over on the holding", unit: "money/kg", least: 0, usual: 1, most: 1000, source: "judgement" },
  ],
};
