import type { Rule } from "./rule.js";

export const restPeriod: Rule = {
  id: "rest-period",
  sentence: "Ground rests between grazings: never less than the floor, and a rest cut short of the season's usual costs.",
  equation: "firstDay - previous lastDay - 1 >= floor",
  unit: "d",
  scope: "cell",
  use: "charged",
  uses: ["hard", "charged", "off"],
  source: "rest",
  parameters: [
    { key: "floor", meaning: "shortest rest", unit: "d", least: 0, usual: 18, most: 120, source: "rest-period.floor" },
    { key: "flush", meaning: "usual rest in the flush", unit: "d", least: 1, usual: 21, most: 120, source: "rest-period.flush" },
    { key: "midsummer", meaning: "usual rest from midsummer on", unit: "d", least: 1, usual: 42, most: 180, source: "rest-period.midsummer" },
    { key: "flush-until", meaning: "day of the year on which the flush ends", unit: "day of year", least: 1, usual: 151, most: 366, source: "judgement" },
    { key: "midsummer-from", meaning: "day of the year from which the midsummer rest holds", unit: "day of year", least: 1, usual: 196, most: 366, source: "judgement" },
    { key: "price", meaning: "price of a day short of the usual", unit: "money/d", least: 0, usual: 0.4, most: 1000, source: "judgement" },
  ],
};
