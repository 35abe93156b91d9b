import type { Rule } from "./rule.js";

export const grassInHand: Rule = {
  id: "grass-in-hand",
  sentence: "Days of feed ahead of the grazers do not fall below the wish.",
  equation: "(cover - residual) x area / daily demand >= wish, each weekly walk",
  unit: "d",
  scope: "farm",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "days-ahead",
  parameters: [
    { key: "wish", meaning: "days of grass wished ahead", unit: "d", least: 0, usual: 10, most: 60, source: "grass-in-hand.summer" },
    { key: "spring", meaning: "days of grass wished ahead in spring", unit: "d", least: 0, usual: 15, most: 60, source: "grass-in-hand.spring" },
    { key: "spring-until", meaning: "day of the year on which spring ends", unit: "day of year", least: 1, usual: 181, most: 366, source: "grass-in-hand.spring" },
    { key: "price", meaning: "price of a day short, each weekly walk", unit: "money/d", least: 0, usual: 0.5, most: 1000, source: "judgement" },
  ],
};
