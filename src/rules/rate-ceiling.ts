import type { Rule } from "./rule.js";

export const rateCeiling: Rule = {
  id: "rate-ceiling",
  sentence: "Live weight out on the season's land stays under the ceiling.",
  equation: "live weight on ground / farm area <= most",
  unit: "kg/ha",
  scope: "farm",
  use: "hard",
  uses: ["hard", "off"],
  source: "common practice",
  parameters: [
    { key: "most", meaning: "most live weight a hectare of farm; no limit unless set", unit: "kg/ha", least: 50, usual: null, most: 20000, source: "judgement" },
  ],
};
