import type { Rule } from "./rule.js";

export const upperCover: Rule = {
  id: "upper-cover",
  sentence: "Birds want short grass; for grazers grass grown too long loses value.",
  equation: "cover on the first day of a week's ground <= barrier; cover on the weekly walk <= long",
  unit: "kg/ha",
  scope: "cell",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "poultry-sward",
  parameters: [
    { key: "birds-wished", meaning: "cover above which birds' ground costs", unit: "kg/ha", least: 800, usual: 2300, most: 5000, source: "upper-cover.birds-wished" },
    { key: "birds-barrier", meaning: "cover above which birds never enter", unit: "kg/ha", least: 1000, usual: 3000, most: 7000, source: "upper-cover.birds-barrier" },
    { key: "birds-price", meaning: "price of 1,000 kg/ha above the wish, for each week's ground", unit: "money", least: 0, usual: 4, most: 1000, source: "judgement" },
    { key: "long", meaning: "cover above which grass loses value", unit: "kg/ha", least: 2000, usual: 3000, most: 7000, source: "upper-cover.long" },
    { key: "long-price", meaning: "price of a tonne of grass above that, each weekly walk", unit: "money/t", least: 0, usual: 1, most: 1000, source: "judgement" },
  ],
};
