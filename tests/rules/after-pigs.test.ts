import { cell } from "../fixtures/tiny-farm.js";
import { cows, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

const back = { "after-pigs": { figures: { back: 5, reseeded: 8 } } };
/** One strip of a week is shut of a cell of 0.1 ha until five days have gone: days 8 to 12. */
const shut = (areaHa: number) => ({ days: 16, cells: [cell("A", { areaHa: 0.1 })], groups: [cows(), pigs({}, { areaHa })], rules: back });
const breach = (days: [number, number], found: string) => ({ group: "Cows", cell: "A", days, found: `${found} % open, pigs' ground shut`, allowed: "at least 25 % open" });

ruleCases("after-pigs", {
  keeps: [
    { name: "a quarter of the cell is open", farm: shut(0.075), rows: { Pigs: "A*7 yard*9", Cows: "yard*7 A*5 yard*4" } },
    { name: "the first day on which all is open again", farm: shut(0.08), rows: { Pigs: "A*7 yard*9", Cows: "yard*12 A*4" } },
    { name: "off", farm: { ...shut(0.08), rules: { "after-pigs": { ...back["after-pigs"], use: "off" } } }, rows: { Pigs: "A*7 yard*9", Cows: "yard*7 A yard*8" } },
    {
      name: "birds' ground is judged elsewhere", farm: { ...shut(0), groups: [cows(), hens({}, { areaHa: 0.08, days: 7 })] }, rows: { Hens: "A*7 yard*9", Cows: "yard*7 A yard*8" },
    },
  ],
  breaks: [
    { name: "the last day on which it is shut", farm: shut(0.08), rows: { Pigs: "A*7 yard*9", Cows: "yard*11 A*5" }, breaches: [breach([12, 12], "20")] },
    { name: "all days on too little ground", farm: shut(0.0755), rows: { Pigs: "A*7 yard*9", Cows: "yard*7 A*9" }, breaches: [breach([8, 12], "24")] },
    {
      name: "reseeded ground is shut longer", farm: { ...shut(0.08), rules: { "after-pigs": { figures: { ...back["after-pigs"].figures, reseed: 1 } } } },
      rows: { Pigs: "A*7 yard*9", Cows: "yard*14 A*2" }, breaches: [breach([15, 15], "20")],
    },
    {
      // hens' week of 0.01 ha is shut with the pigs' 0.07 ha until the last of both is ready, on day 14 + 21
      name: "pigs' and birds' ground come back together", farm: { ...shut(0.07), days: 36, groups: [cows(), pigs({}, { areaHa: 0.07 }), hens({}, { areaHa: 0.01, days: 7 })] },
      rows: { Pigs: "A*7 yard*29", Hens: "yard*7 A*7 yard*22", Cows: "yard*34 A*2" }, breaches: [breach([35, 35], "20")],
    },
  ],
});
