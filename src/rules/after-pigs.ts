import type { Rule } from "./rule.js";

export const afterPigs: Rule = {
  id: "after-pigs",
  sentence: "Ground that pigs opened regrows before grazers come back; meanwhile enough of the cell stays open for them.",
  equation: "open share of the cell while pigs' ground is shut >= least",
  unit: "%",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "common practice",
  parameters: [
    { key: "cover", meaning: "cover left on a pigs' strip", unit: "kg/ha", least: 50, usual: 500, most: 1500, source: "judgement" },
    { key: "back", meaning: "days before grazers are back, grass regrown", unit: "d", least: 0, usual: 60, most: 365, source: "judgement" },
    { key: "reseeded", meaning: "days before grazers are back, reseeded", unit: "d", least: 0, usual: 90, most: 365, source: "judgement" },
    { key: "reseed", meaning: "1: pigs' strips are reseeded", unit: "", least: 0, usual: 0, most: 1, source: "judgement" },
  ],
};
