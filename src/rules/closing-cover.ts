import type { Rule } from "./rule.js";

export const closingCover: Rule = {
  id: "closing-cover",
  sentence: "Cells close in autumn with the cover wished, wet ones first.",
  equation: "cover after the last day >= wish",
  unit: "kg/ha",
  scope: "cell",
  use: "charged",
  uses: ["charged", "off"],
  source: "closing",
  parameters: [
    { key: "wish", meaning: "cover wished at the season's end", unit: "kg/ha", least: 0, usual: 2000, most: 3500, source: "closing-cover.wish" },
    { key: "price", meaning: "price of a tonne short", unit: "money/t", least: 0, usual: 40, most: 1000, source: "judgement" },
    { key: "wet-days", meaning: "days before the end from which wet ground is better left", unit: "d", least: 0, usual: 21, most: 120, source: "judgement" },
    { key: "wet-price", meaning: "price of a grazing day on wet ground in those days", unit: "money/d", least: 0, usual: 1, most: 1000, source: "judgement" },
  ],
};
