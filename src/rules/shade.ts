import type { Rule } from "./rule.js";

export const shade: Rule = {
  id: "shade",
  sentence: "In the hot months pigs stand where there is shade.",
  equation: "shade = yes in the hot months",
  unit: "yes or no",
  scope: "cell",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "common practice",
  parameters: [
    { key: "first-month", meaning: "first hot month", unit: "month", least: 1, usual: 6, most: 12, source: "judgement" },
    { key: "last-month", meaning: "last hot month", unit: "month", least: 1, usual: 8, most: 12, source: "judgement" },
    { key: "pigs-price", meaning: "price of a day of pigs without shade", unit: "money/d", least: 0, usual: 0.5, most: 1000, source: "judgement" },
    { key: "grazers-price", meaning: "price of a day of grazers without shade", unit: "money/d", least: 0, usual: 0, most: 1000, source: "judgement" },
  ],
};
