import { group } from "../fixtures/tiny-farm.js";
import { bare, cows, hens, pigs } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const at = (cover: number) => ({ days: 3, cells: [bare("A", cover)], groups: [cows()] });
const henGround = (cover: number) => ({ days: 7, cells: [bare("A", cover)], groups: [hens()] });
/** 75 kg DM: 88 % dry matter, a tenth lost in feeding, a twentieth in store. */
const HAY_A_DAY = 75 / (0.88 * 0.9 * 0.95);
const bull = group("Bull", {
  head: 1, weightKg: 800, intake: { shareOfWeight: 0.02, youngShareOfWeight: 0 }, runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(3) }] },
});

ruleCases("demand-met", {
  keeps: [
    // 50 kg/ha stand whatever happens; a day takes 287.5
    { name: "the last day's grass, just enough", farm: at(337.5), rows: { Cows: "A" }, charges: [] },
    // 3 positions of 0.03 ha; 7 x 1.5 x 1.15 = 12.075 kg: 134.2 kg/ha
    { name: "birds' ground just feeds their week", farm: henGround(185), rows: { Hens: "A*7" }, charges: [] },
    { name: "pigs are not fed by their strip", farm: { ...at(100), groups: [pigs()] }, rows: { Pigs: "A*3" }, charges: [] },
    {
      name: "hay in the yard: 99.7 kg a day at 0.15", farm: at(2000), rows: { Cows: "yard A yard" },
      charges: [
        { group: "Cows", cell: null, days: [1, 1], money: HAY_A_DAY * 0.15, found: "1 day in the yard, 100 kg of hay" },
        { group: "Cows", cell: null, days: [3, 3], money: HAY_A_DAY * 0.15, found: "1 day in the yard, 100 kg of hay" },
      ],
    },
    {
      // the bull's 16 kg DM a day are in the cows' hay
      name: "a companion's hay is its host's", farm: { ...at(2000), groups: [cows(), bull] }, rows: { Cows: "yard*3", Bull: "yard*3" },
      charges: [{ group: "Cows", cell: null, days: [1, 3], money: ((HAY_A_DAY * 91) / 75) * 0.15 * 3, found: "3 days in the yard, 363 kg of hay" }],
    },
  ],
  breaks: [
    {
      name: "half a kilogram a hectare too little", farm: at(337), rows: { Cows: "A" },
      breaches: [{ group: "Cows", cell: "A", days: [1, 1], found: "87 kg DM eaten and trodden, 86 standing", allowed: "no more than stands" }],
    },
    {
      name: "the next day nothing is left", farm: at(337.5), rows: { Cows: "A*3" },
      breaches: [{ group: "Cows", cell: "A", days: [2, 3], found: "87 kg DM eaten and trodden, 0 standing", allowed: "no more than stands" }],
    },
    {
      name: "birds' ground does not feed their week", farm: henGround(184), rows: { Hens: "A*7" },
      breaches: [{ group: "Hens", cell: "A", days: [1, 7], found: "13 kg DM eaten and trodden, 12 standing", allowed: "no more than stands" }],
    },
  ],
});
