import { cell } from "../fixtures/tiny-farm.js";
import { hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

/** Eight pigs on 0.02 ha: 400 pig-days/ha each day. */
const strips = (days: number) => ({ days: 14, cells: [cell("A")], groups: [pigs({}, { days })] });
const breach = (days: [number, number], found: number) => ({ group: "Pigs", cell: "A", days, found: `${found} pig-days/ha`, allowed: "at most 3600 pig-days/ha" });
const left = (days: [number, number], on: number, wished: number) => (
  { group: "Pigs", cell: "A", days, money: 4, found: `${on} days on the last strip, ${wished} days wished` }
);

ruleCases("pig-pressure", {
  keeps: [
    { name: "nine days on a strip, just the most", farm: strips(9), rows: { Pigs: "A*14" }, charges: [left([1, 14], 5, 9)] },
    { name: "a last strip left on the day it is open", farm: { ...strips(7), days: 14 }, rows: { Pigs: "A*14" } },
    { name: "out after nine days of a strip's ten", farm: strips(10), rows: { Pigs: "A*9 yard*5" } },
    { name: "no limit set", farm: { ...strips(14), rules: { "pig-pressure": { figures: { most: null } } } }, rows: { Pigs: "A*14" } },
    { name: "birds", farm: { ...strips(9), groups: [hens({ head: 2000 })] }, rows: { Hens: "A*14" } },
    { name: "off", farm: { ...strips(14), rules: { "pig-pressure": { use: "off" } } }, rows: { Pigs: "A*14" } },
  ],
  breaks: [
    { name: "ten days on a strip", farm: strips(10), rows: { Pigs: "A*14" }, breaches: [breach([1, 14], 4000)], charges: [left([1, 14], 4, 10)] },
    { name: "out after ten days of a strip's twelve", farm: strips(12), rows: { Pigs: "A*10 yard*4" }, breaches: [breach([1, 10], 4000)] },
    { name: "a pig more", farm: { ...strips(9), groups: [pigs({ head: 9 }, { days: 9 })] }, rows: { Pigs: "A*14" }, breaches: [breach([1, 14], 4050)], charges: [left([1, 14], 5, 9)] },
  ],
});
