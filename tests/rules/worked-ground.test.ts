import { cell } from "../fixtures/tiny-farm.js";
import { cows, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

const five = { "worked-ground": { figures: { birds: 5 } } };
/** A week's position is shut of a cell of 0.1 ha until five days have gone: days 8 to 12. */
const shut = (areaHa: number) => ({ days: 16, cells: [cell("A", { areaHa: 0.1 })], groups: [cows(), hens({}, { areaHa, days: 7 })], rules: five });
const breach = (days: [number, number], found: string, least = 25) => ({ group: "Cows", cell: "A", days, found: `${found} % open, birds' ground shut`, allowed: `at least ${least} % open` });

ruleCases("worked-ground", {
  keeps: [
    { name: "a quarter of the cell is open", farm: shut(0.075), rows: { Hens: "A*7 yard*9", Cows: "yard*7 A*5 yard*4" } },
    { name: "the first day on which all is open again", farm: shut(0.08), rows: { Hens: "A*7 yard*9", Cows: "yard*12 A*4" } },
    { name: "birds on their own shut ground", farm: shut(0.04), rows: { Hens: "A*14 yard*2", Cows: "yard*16" } },
    { name: "pigs' ground is judged elsewhere", farm: { ...shut(0), groups: [cows(), pigs({}, { areaHa: 0.08 })] }, rows: { Pigs: "A*7 yard*9", Cows: "yard*7 A yard*8" } },
    { name: "off", farm: { ...shut(0.08), rules: { "worked-ground": { ...five["worked-ground"], use: "off" } } }, rows: { Hens: "A*7 yard*9", Cows: "yard*7 A yard*8" } },
  ],
  breaks: [
    { name: "the last day on which it is shut", farm: shut(0.08), rows: { Hens: "A*7 yard*9", Cows: "yard*11 A*5" }, breaches: [breach([12, 12], "20")] },
    { name: "one day on shut ground", farm: shut(0.08), rows: { Hens: "A*7 yard*9", Cows: "yard*7 A yard*8" }, breaches: [breach([8, 8], "20")] },
    { name: "21 days unless set otherwise: the last is day 28", farm: { ...shut(0.08), days: 30, rules: {} }, rows: { Hens: "A*7 yard*23", Cows: "yard*27 A*3" }, breaches: [breach([28, 28], "20")] },
    {
      name: "a larger share asked", farm: { ...shut(0.02), rules: { "worked-ground": { figures: { birds: 5, "least-open": 81 } } } },
      rows: { Hens: "A*7 yard*9", Cows: "yard*7 A*3 yard*6" }, breaches: [breach([8, 10], "80", 81)],
    },
  ],
});
