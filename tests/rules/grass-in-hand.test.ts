import { bare, cows, ewes, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

// the cows take 86.25 kg a day; 862.5 kg/ha above the residual of 1,500 on 1.5 ha are 15 days
const ahead = (cover: number, days = 23) => ({ days, cells: [bare("A", cover, { areaHa: 1.5 })], groups: [cows()] });
const charge = (on: number, money: number, found: string, wished: number) => ({ group: null, cell: null, days: [on, on] as [number, number], money, found: `${found} of grass ahead, ${wished} wished` });
/** 60 kg/ha of 1.5 ha: 90 kg, a bit over a day. */
const ONE_DAY = 90 / 86.25;

ruleCases("grass-in-hand", {
  keeps: [
    { name: "just the days wished in spring", farm: ahead(2362.5), rows: { Cows: "yard*23" } },
    { name: "no walk in the first week", farm: ahead(1500, 7), rows: { Cows: "yard*7" } },
    // on day 8 of ten, three days are left
    { name: "no more than the season's days left", farm: ahead(1672.5, 10), rows: { Cows: "yard*10" } },
    { name: "birds eat none of it", farm: { ...ahead(1500), groups: [hens()] }, rows: { Hens: "yard*23" } },
    { name: "no grazers out", farm: { ...ahead(1500), groups: [cows({ out: { firstDay: day(30), lastDay: day(40) } })] }, rows: { Cows: "yard*23" } },
    // 30 June is day 181 of 2027, the last of spring; the walk of the season from 24 June is on 1 July
    { name: "ten days from the first of July", farm: { ...ahead(2075, 20), firstDay: "2027-06-24" }, rows: { Cows: "yard*20" } },
  ],
  breaks: [
    {
      name: "a day and 1/23 ahead on the last walks", farm: ahead(1560, 17), rows: { Cows: "yard*17" },
      charges: [charge(8, (10 - ONE_DAY) / 2, "1 day", 10), charge(15, (3 - ONE_DAY) / 2, "1 day", 3)],
    },
    {
      name: "fifteen days on the last day of spring", farm: { ...ahead(2075, 20), firstDay: "2027-06-23" }, rows: { Cows: "yard*20" },
      charges: [charge(8, 1.5, "10 days", 13)],
    },
    {
      name: "closed cells, cells not in hand and cells no grazer may enter do not count", rows: { Cows: "yard*10" }, charges: [charge(8, 1.5, "0 days", 3)],
      farm: {
        ...ahead(1500, 10),
        cells: [
          bare("A", 4000, { closed: [{ firstDay: day(8), lastDay: day(8), reason: "nesting" }] }), bare("B", 4000, { ours: { firstDay: day(1), lastDay: day(7) } }),
          bare("C", 4000, { notFor: ["Cows"] }),
        ],
      },
    },
    {
      // the ewes take 20 x 70 x 2.5 % x 1.15 = 40.25 kg more: 258.75 / 126.5 = 2.045 days
      name: "all grazers' demand counts", farm: { ...ahead(1672.5, 10), groups: [cows(), ewes()] }, rows: { Cows: "yard*10", Ewes: "yard*10" },
      charges: [charge(8, (3 - 258.75 / 126.5) / 2, "2 days", 3)],
    },
    {
      name: "made hard", farm: { ...ahead(1500, 10), rules: { "grass-in-hand": { use: "hard" } } }, rows: { Cows: "yard*10" },
      breaches: [{ group: null, cell: null, days: [8, 8], found: "0 days of grass ahead, 3 wished", allowed: "at least 3 days of grass ahead" }],
    },
  ],
});
