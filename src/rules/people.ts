import type { Rule } from "./rule.js";

export const people: Rule = {
  id: "people",
  sentence: "Chores, moves, steps and fences fit the minutes of the people at home; tow moves need somebody who tows, and never alone with bull, tow or calving cow.",
  equation: "minutes <= minutes at home, each day",
  unit: "min",
  scope: "farm",
  use: "hard",
  uses: ["hard", "off"],
  source: "minutes",
  parameters: [
    { key: "morning", meaning: "minutes of the morning round", unit: "min", least: 0, usual: 30, most: 600, source: "judgement" },
    { key: "each-group", meaning: "minutes a group more", unit: "min", least: 0, usual: 5, most: 240, source: "judgement" },
    { key: "dusk", meaning: "minutes of shutting birds in at dusk", unit: "min", least: 0, usual: 10, most: 240, source: "judgement" },
    { key: "haul", meaning: "minutes of a haul to another field", unit: "min", least: 0, usual: 10, most: 600, source: "judgement" },
    { key: "pace", meaning: "walking pace with stock or pen", unit: "m/min", least: 5, usual: 50, most: 120, source: "judgement" },
  ],
};
