import type { PastUse } from "../../src/farm/scenario.js";
import { cell } from "../fixtures/tiny-farm.js";
import { cows, ewes, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const farm = { days: 40, cells: [cell("A", { areaHa: 3 })], groups: [cows()] };
const charge = (days: [number, number], money: number, found: string, group = "Cows") => ({ group, cell: "A", days, money, found });
const after = (use: PastUse) => ({ ...farm, cells: [cell("A", { areaHa: 3, past: [use] })] });

ruleCases("rest-period", {
  keeps: [
    { name: "the flush's usual rest", farm, rows: { Cows: "A*2 yard*21 A*2 yard*15" } },
    {
      name: "the shortest rest, three days cut short at 0.4", farm, rows: { Cows: "A*2 yard*18 A*2 yard*18" },
      charges: [charge([21, 22], 1.2, "18 days of rest, 21 usual")],
    },
    {
      // 15 June is day 166 of 2027: 15/45 of the way from 21 days (day 151) to 42 (day 196) is 28
      name: "between flush and midsummer, on the line", farm: { ...farm, firstDay: "2027-05-18" }, rows: { Cows: "A*2 yard*26 A yard*11" },
      charges: [charge([29, 29], 0.8, "26 days of rest, 28 usual")],
    },
    {
      name: "the midsummer rest from its first day, day 196", farm: { ...farm, days: 60, firstDay: "2027-06-03" }, rows: { Cows: "A yard*41 A yard*17" },
      charges: [charge([43, 43], 0.4, "41 days of rest, 42 usual")],
    },
    { name: "birds between two grazings do not count", farm: { ...farm, groups: [cows(), hens()] }, rows: { Cows: "A yard*22 A yard*16", Hens: "yard*20 A yard*19" } },
    { name: "a past hay cut is no grazing", farm: after({ by: "hay", lastDay: day(-1), share: 1 }), rows: { Cows: "A yard*39" } },
    { name: "past sheep, rested", farm: after({ by: "sheep", lastDay: "2027-04-09", share: 1 }), rows: { Cows: "A yard*39" } },
  ],
  breaks: [
    {
      name: "a day under the floor, and charged", farm, rows: { Cows: "A*2 yard*17 A*2 yard*19" },
      breaches: [{ group: "Cows", cell: "A", days: [20, 21], found: "17 days of rest", allowed: "at least 18 days of rest" }],
      charges: [charge([20, 21], 1.6, "17 days of rest, 21 usual")],
    },
    {
      name: "after another group of grazers", farm: { ...farm, groups: [cows(), ewes()] }, rows: { Cows: "A yard*39", Ewes: "yard*11 A yard*28" },
      breaches: [{ group: "Ewes", cell: "A", days: [12, 12], found: "10 days of rest", allowed: "at least 18 days of rest" }],
      charges: [charge([12, 12], 4.4, "10 days of rest, 21 usual", "Ewes")],
    },
    {
      name: "past sheep, the day before the season", farm: after({ by: "sheep", lastDay: day(0), share: 0.2 }), rows: { Cows: "A yard*39" },
      breaches: [{ group: "Cows", cell: "A", days: [1, 1], found: "0 days of rest", allowed: "at least 18 days of rest" }],
      charges: [charge([1, 1], 8.4, "0 days of rest, 21 usual")],
    },
    {
      name: "made hard, the usual rest is the floor", farm: { ...farm, rules: { "rest-period": { use: "hard" } } }, rows: { Cows: "A*2 yard*20 A*2 yard*16" },
      breaches: [{ group: "Cows", cell: "A", days: [23, 24], found: "20 days of rest, 21 usual", allowed: "usually 21 days of rest" }],
    },
  ],
});
