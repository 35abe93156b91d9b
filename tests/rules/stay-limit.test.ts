import { cell } from "../fixtures/tiny-farm.js";
import { cows, ewes, hens } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

const farm = { days: 10, cells: [cell("A", { areaHa: 3 })], groups: [cows()] };
const growing = (kg: number) => ({ ...farm, cells: [cell("A", { areaHa: 3, growthByMonth: Array<number>(12).fill(kg) })] });
const charge = (last: number, money: number, usual = 3) => ({ group: "Cows", cell: "A", days: [1, last] as [number, number], money, found: `a stay of ${last} days, ${usual} usual` });

ruleCases("stay-limit", {
  keeps: [
    { name: "the usual stay", farm, rows: { Cows: "A*3 yard*7" } },
    { name: "the longest stay, four days over the usual at 3", farm, rows: { Cows: "A*7 yard*3" }, charges: [charge(7, 32)] },
    { name: "sheep's own usual stay", farm: { ...farm, groups: [ewes()] }, rows: { Ewes: "A*4 yard*6" } },
    { name: "no stay is too long where next to nothing grows", farm: growing(5), rows: { Cows: "A*10" } },
    { name: "birds have no limit", farm: { ...farm, groups: [hens()] }, rows: { Hens: "A*10" } },
    { name: "a day out parts two stays", farm, rows: { Cows: "A*3 yard A*3 yard*3" } },
  ],
  breaks: [
    { name: "a day over the usual", farm, rows: { Cows: "A*4 yard*6" }, charges: [charge(4, 8)] },
    {
      name: "a day over the limit", farm, rows: { Cows: "A*8 yard*2" }, charges: [charge(8, 40)],
      breaches: [{ group: "Cows", cell: "A", days: [1, 8], found: "a stay of 8 days", allowed: "at most 7 days" }],
    },
    {
      name: "a little growth and the limit holds", farm: growing(5.1), rows: { Cows: "A*8 yard*2" }, charges: [charge(8, 40)],
      breaches: [{ group: "Cows", cell: "A", days: [1, 8], found: "a stay of 8 days", allowed: "at most 7 days" }],
    },
    {
      name: "made hard, the usual stay is the limit", farm: { ...farm, rules: { "stay-limit": { use: "hard" } } }, rows: { Cows: "A*4 yard*6" },
      breaches: [{ group: "Cows", cell: "A", days: [1, 4], found: "a stay of 4 days, 3 usual", allowed: "usually 3 days" }],
    },
  ],
});
