import type { Rule } from "./rule.js";

export const pigRest: Rule = {
  id: "pig-rest",
  sentence: "A strip that pigs used is not used by pigs again within its rest.",
  equation: "strips wanted x area <= area without pigs within the rest",
  unit: "ha",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "pig-rest",
  parameters: [
    { key: "rest", meaning: "rest after pigs", unit: "d", least: 0, usual: 180, most: 730, source: "pig-rest.strip" },
  ],
};
