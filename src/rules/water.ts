import type { Rule } from "./rule.js";

export const water: Rule = {
  id: "water",
  sentence: "Groups stand only where there is water, or where it can be carted.",
  equation: "walk to water <= most; carted litres <= most, each day",
  unit: "m",
  scope: "farm",
  use: "hard",
  uses: ["hard", "off"],
  source: "water-walk",
  parameters: [
    { key: "walk-free", meaning: "walk to water that costs nothing", unit: "m", least: 0, usual: 60, most: 400, source: "water.walk" },
    { key: "walk-most", meaning: "longest walk to water", unit: "m", least: 50, usual: 400, most: 1000, source: "water.walk" },
    { key: "walk-price", meaning: "price of 100 m more walk, each day", unit: "money/d", least: 0, usual: 0.5, most: 100, source: "judgement" },
    { key: "cart-minutes", meaning: "minutes of carting water, each day", unit: "min", least: 0, usual: 10, most: 240, source: "judgement" },
    { key: "carted-most", meaning: "most litres carted in a day; no limit unless set", unit: "L", least: 10, usual: null, most: 100000, source: "judgement" },
  ],
};
