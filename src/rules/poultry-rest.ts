import type { Rule } from "./rule.js";

export const poultryRest: Rule = {
  id: "poultry-rest",
  sentence: "A strip that birds used is not used by birds again within its rest.",
  equation: "strips wanted x area <= area without birds within the rest",
  unit: "ha",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "poultry-rest",
  parameters: [
    { key: "layers", meaning: "rest after laying hens", unit: "d", least: 0, usual: 270, most: 730, source: "poultry-rest.layers" },
    { key: "broilers", meaning: "rest after table chickens", unit: "d", least: 0, usual: 365, most: 730, source: "poultry-rest.table-birds" },
    { key: "turkeys", meaning: "rest after turkeys", unit: "d", least: 0, usual: 365, most: 1095, source: "poultry-rest.turkeys" },
    { key: "ducks", meaning: "rest after ducks", unit: "d", least: 0, usual: 270, most: 730, source: "judgement" },
    { key: "geese", meaning: "rest after geese", unit: "d", least: 0, usual: 270, most: 730, source: "judgement" },
  ],
};
