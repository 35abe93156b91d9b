import { cell } from "../fixtures/tiny-farm.js";
import { bare, cows, ewes, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

/** No first pass: the full entry cover is asked from the first day. */
const full = { "entry-cover": { figures: { "first-pass-days": 0 } } };
const at = (cover: number) => ({ days: 6, cells: [bare("A", cover)], groups: [cows()] });
const breach = (days: [number, number], found: string, least: number) => ({
  group: "Cows", cell: "A", days, found: `${found} kg DM/ha on the first morning`, allowed: `at least ${least} kg DM/ha`,
});

ruleCases("entry-cover", {
  keeps: [
    { name: "just the entry cover", farm: { ...at(2200), rules: full }, rows: { Cows: "A yard*5" }, charges: [] },
    {
      // 0.5 t/ha short x 0.3 ha x 20
      name: "just the first pass's cover, at its price", farm: at(1700), rows: { Cows: "A yard*5" },
      charges: [{ group: "Cows", cell: "A", days: [1, 1], money: 3, found: "1700 kg DM/ha on spring's first pass, 2200 usual" }],
    },
    {
      name: "the last day of spring's first pass", farm: { ...at(2000), rules: { "entry-cover": { figures: { "first-pass-days": 3 } } } },
      rows: { Cows: "yard*2 A*2 yard*2" }, charges: [{ group: "Cows", cell: "A", days: [3, 4], money: 1.2, found: "2000 kg DM/ha on spring's first pass, 2200 usual" }],
    },
    {
      // 2,150 on day 1; logistic at 0.04 a day: 2,199.15 on day 2, 2,248.4 on day 3
      name: "the first morning on which enough has grown", farm: { ...at(0), cells: [cell("A", { coverKgPerHa: 2150 })], rules: full },
      rows: { Cows: "yard*2 A yard*3" }, charges: [],
    },
    { name: "pigs at their own cover", farm: { ...at(1000), groups: [pigs()] }, rows: { Pigs: "A*6" }, charges: [] },
    { name: "birds on bare ground", farm: { ...at(100), groups: [hens()] }, rows: { Hens: "A*6" }, charges: [] },
    {
      name: "a stay goes on below the entry cover", farm: { ...at(2200), rules: full }, rows: { Cows: "A*2 yard*4" }, charges: [],
    },
  ],
  breaks: [
    { name: "a kilogram under the entry cover", farm: { ...at(2199), rules: full }, rows: { Cows: "A yard*5" }, breaches: [breach([1, 1], "2190", 2200)] },
    {
      name: "a kilogram under the first pass's cover, and charged", farm: at(1699), rows: { Cows: "A*2 yard*4" }, breaches: [breach([1, 2], "1690", 1700)],
      charges: [{ group: "Cows", cell: "A", days: [1, 2], money: 0.501 * 0.3 * 20, found: "1690 kg DM/ha on spring's first pass, 2200 usual" }],
    },
    {
      name: "the first day after spring's first pass", farm: { ...at(2000), rules: { "entry-cover": { figures: { "first-pass-days": 3 } } } },
      rows: { Cows: "yard*3 A*2 yard" }, breaches: [breach([4, 5], "2000", 2200)], charges: [],
    },
    {
      name: "the last morning before enough has grown", farm: { ...at(0), cells: [cell("A", { coverKgPerHa: 2150 })], rules: full },
      rows: { Cows: "yard A yard*4" }, breaches: [breach([2, 2], "2190", 2200)],
    },
    {
      // the ewes' day takes 20 x 70 x 2.5 % x 1.15 = 40.25 kg of 0.3 ha: 134.2 kg/ha, 2,165.8 left
      name: "another group's second pass is no first pass", farm: { ...at(2300), groups: [cows(), ewes()] }, rows: { Ewes: "A yard*5", Cows: "yard A yard*4" },
      breaches: [breach([2, 2], "2160", 2200)], charges: [],
    },
    {
      name: "a kilogram under the pigs' cover", farm: { ...at(999), groups: [pigs()] }, rows: { Pigs: "A*6" },
      breaches: [{ ...breach([1, 6], "990", 1000), group: "Pigs" }],
    },
  ],
});
