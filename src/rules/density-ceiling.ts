import type { Rule } from "./rule.js";

export const densityCeiling: Rule = {
  id: "density-ceiling",
  sentence: "Live weight on the open ground of the cell in use stays under the ceiling.",
  equation: "live weight / open area <= most",
  unit: "kg/ha",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "common practice",
  parameters: [
    { key: "most", meaning: "most live weight a hectare in use; no limit unless set", unit: "kg/ha", least: 1000, usual: null, most: 1000000, source: "judgement" },
  ],
};
