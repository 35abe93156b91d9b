import type { Rule } from "./rule.js";

export const stayLimit: Rule = {
  id: "stay-limit",
  sentence: "A stay longer than usual costs, longer than the limit never is.",
  equation: "lastDay - firstDay + 1 <= limit",
  unit: "d",
  scope: "cell",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "second-bite",
  parameters: [
    { key: "cattle", meaning: "usual stay of cattle", unit: "d", least: 1, usual: 3, most: 14, source: "stay-limit.cattle" },
    { key: "sheep", meaning: "usual stay of sheep", unit: "d", least: 1, usual: 4, most: 14, source: "stay-limit.sheep" },
    { key: "goats", meaning: "usual stay of goats", unit: "d", least: 1, usual: 4, most: 14, source: "stay-limit.goats" },
    { key: "horses", meaning: "usual stay of horses", unit: "d", least: 1, usual: 4, most: 14, source: "judgement" },
    { key: "limit", meaning: "longest stay", unit: "d", least: 1, usual: 7, most: 21, source: "stay-limit.limit" },
    { key: "nil-growth", meaning: "growth at or below which no stay is too long", unit: "kg/ha/d", least: 0, usual: 5, most: 20, source: "judgement" },
    { key: "price", meaning: "price of a day beyond the usual", unit: "money/d", least: 0, usual: 8, most: 1000, source: "judgement" },
  ],
};
