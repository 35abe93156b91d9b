import type { Rule } from "./rule.js";

export const cleanGround: Rule = {
  id: "clean-ground",
  sentence: "No kind enters ground sooner than its interval after another kind.",
  equation: "firstDay - last use - 1 >= interval",
  unit: "d",
  scope: "cell",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "clean-ground",
  parameters: [
    { key: "turkeys after layers", meaning: "days before turkeys after laying hens", unit: "d", least: 0, usual: 1095, most: 3650, source: "clean-ground.turkeys-after-chickens" },
    { key: "turkeys after broilers", meaning: "days before turkeys after table chickens", unit: "d", least: 0, usual: 1095, most: 3650, source: "clean-ground.turkeys-after-chickens" },
    { key: "worms", meaning: "days before sheep or goats after sheep or goats (one kind to worms), charged", unit: "d", least: 0, usual: 60, most: 365, source: "clean-ground.worms" },
    { key: "worms-price", meaning: "price of a day short of that", unit: "money/d", least: 0, usual: 0.2, most: 1000, source: "judgement" },
    { key: "young-pigs-next-year", meaning: "1: young pigs do not stand where pigs stood the year before", unit: "", least: 0, usual: 1, most: 1, source: "clean-ground.young-pigs" },
    { key: "hay-after-birds", meaning: "1: no hay from ground that birds used this year", unit: "", least: 0, usual: 1, most: 1, source: "clean-ground.hay-after-birds" },
  ],
};
