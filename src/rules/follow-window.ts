import type { Rule } from "./rule.js";

export const followWindow: Rule = {
  id: "follow-window",
  sentence: "A follower enters within its window after the leader leaves.",
  equation: "first <= follower firstDay - leader lastDay <= last",
  unit: "d",
  scope: "cell",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "common practice",
  parameters: [
    { key: "first", meaning: "first day after the leader's last", unit: "d", least: 1, usual: 2, most: 30, source: "follow-window.first" },
    { key: "last", meaning: "last day after the leader's last", unit: "d", least: 1, usual: 4, most: 60, source: "follow-window.last" },
    { key: "price", meaning: "price of a stay outside the window", unit: "money", least: 0, usual: 3, most: 1000, source: "judgement" },
  ],
};
