import type { Rule } from "./rule.js";

export const workedGround: Rule = {
  id: "worked-ground",
  sentence: "Ground a pen worked is shut for its interval; the rest of the cell may be grazed behind a back fence, if enough is left.",
  equation: "open share of the cell while birds' ground is shut >= least",
  unit: "%",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "litter-interval",
  parameters: [
    { key: "birds", meaning: "days that ground is shut after live birds (a precaution, no trial)", unit: "d", least: 0, usual: 21, most: 365, source: "worked-ground.birds" },
    { key: "least-open", meaning: "share of a cell that must be open to be grazed", unit: "%", least: 0, usual: 25, most: 100, source: "judgement" },
  ],
};
