import { cell } from "../fixtures/tiny-farm.js";
import { cows, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

// the field lies 100 m from the yard: 10 + 100 / (50 / 2) = 14 min a haul
const farm = (areaHa: number) => ({ days: 9, cells: [cell("A", { areaHa }), cell("B"), cell("C", { field: "Far" })], groups: [hens()] });
const haul = (on: number, cellName: string, minutes: number, extra = 0) => ({
  group: "Hens", cell: cellName, days: [on, on] as [number, number], money: (minutes * 14) / 60 + extra, found: `a haul of ${minutes} min`,
});
const breach = (days: [number, number], wanted: string, open: string) => ({
  group: "Hens", cell: "A", days, found: `${wanted} ha of fresh ground wanted`, allowed: `at most ${open} ha open`,
});

ruleCases("pen-steps", {
  keeps: [
    { name: "two positions of 0.03 ha on 0.08 ha", farm: farm(0.08), rows: { Hens: "A*6 yard*3" }, charges: [haul(1, "A", 14)] },
    { name: "three positions fit exactly", farm: farm(0.09), rows: { Hens: "A*9" }, charges: [haul(1, "A", 14)] },
    { name: "from cell to cell in a field, no haul", farm: farm(0.08), rows: { Hens: "A*3 B*6" }, charges: [haul(1, "A", 14)] },
    {
      // the far field lies 200 m off: 18 min
      name: "into another field and back from the yard, each with its price", farm: { ...farm(0.08), more: { prices: { currency: "GBP", hayPerKg: 0.15, labourPerHour: 14, mowingPerHa: 180, haul: 5 } } },
      rows: { Hens: "A*3 C*3 yard A*2" }, charges: [haul(1, "A", 14, 5), haul(4, "C", 18, 5), haul(8, "A", 14, 5)],
    },
    { name: "hauls of cows and of pigs without a pen are charged to people", farm: { ...farm(0.3), groups: [cows(), pigs()] }, rows: { Cows: "A*9", Pigs: "B*9" }, charges: [] },
    { name: "off", farm: { ...farm(0.08), rules: { "pen-steps": { use: "off" } } }, rows: { Hens: "A*9" }, charges: [] },
  ],
  breaks: [
    { name: "a seventh day starts a third position", farm: farm(0.08), rows: { Hens: "A*7 yard*2" }, breaches: [breach([1, 7], "0.09", "0.08")] },
    {
      // days 8 and 9 hold no start; a stay of ten days would start its fourth on day 10
      name: "the second week of a stay finds what the first has left", farm: { ...farm(0.1), days: 11 }, rows: { Hens: "A*10 yard" }, breaches: [breach([8, 10], "0.03", "0.01")],
    },
    {
      name: "ground of an earlier stay is still shut", farm: { ...farm(0.1), days: 20 }, rows: { Hens: "A*9 yard*5 A*6" }, breaches: [breach([15, 20], "0.06", "0.01")],
    },
  ],
});
