import type { Rule } from "./rule.js";

export const entryCover: Rule = {
  id: "entry-cover",
  sentence: "Grazing starts only when enough grass stands; the first pass of spring may start lower, at a price.",
  equation: "cover on firstDay >= entry",
  unit: "kg/ha",
  scope: "cell",
  use: "hard",
  uses: ["hard", "off"],
  source: "grazing-heights",
  parameters: [
    { key: "grazers", meaning: "cover that must stand before grazers enter", unit: "kg/ha", least: 1200, usual: 2200, most: 3500, source: "entry-cover.grazers" },
    { key: "first-pass", meaning: "cover that must stand on a cell's first pass of spring", unit: "kg/ha", least: 1000, usual: 1700, most: 3000, source: "entry-cover.first-pass" },
    { key: "first-pass-days", meaning: "days from the season's first day that count as spring's first pass", unit: "d", least: 0, usual: 56, most: 120, source: "judgement" },
    { key: "pigs", meaning: "cover that must stand before pigs enter", unit: "kg/ha", least: 0, usual: 1000, most: 3000, source: "entry-cover.pigs" },
    { key: "first-pass-price", meaning: "price of a tonne of grass short of the entry cover on the first pass", unit: "money/t", least: 0, usual: 20, most: 1000, source: "judgement" },
  ],
};
