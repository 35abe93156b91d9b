import { cell } from "../fixtures/tiny-farm.js";
import { cows, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

/** 0.12 ha hold four positions of 0.03 ha, three days each. */
const fresh = { days: 30, cells: [cell("A", { areaHa: 0.12 })], groups: [hens()] };
const quarterUsed = (lastDay: string) => ({ ...fresh, cells: [cell("A", { areaHa: 0.12, past: [{ by: "layers" as const, lastDay, share: 0.25 }] })] });
const breach = (days: [number, number], found: string, left: string) => ({ group: "Hens", cell: "A", days, found: `${found} ha wanted`, allowed: `at most ${left} ha rested from birds` });

ruleCases("poultry-rest", {
  keeps: [
    { name: "as many positions as the cell has room", farm: fresh, rows: { Hens: "A*12 yard*18" } },
    { name: "three positions beside the quarter used last year", farm: quarterUsed(day(-100)), rows: { Hens: "A*9 yard*21" } },
    { name: "four on the first day after that quarter's rest of 270 days", farm: quarterUsed(day(-270)), rows: { Hens: "A*10 yard*20" } },
    { name: "no rest asked for", farm: { ...fresh, rules: { "poultry-rest": { figures: { layers: 0 } } } }, rows: { Hens: "A*12 yard A*12 yard*5" } },
    { name: "ground that cows used", farm: { ...fresh, groups: [cows(), hens()] }, rows: { Cows: "A yard*29", Hens: "yard*2 A*12 yard*16" } },
    { name: "off", farm: { ...quarterUsed(day(-100)), rules: { "poultry-rest": { use: "off" } } }, rows: { Hens: "A*12 yard*18" } },
  ],
  breaks: [
    { name: "a day that starts a fifth position", farm: fresh, rows: { Hens: "A*13 yard*17" }, breaches: [breach([1, 13], "0.15", "0.12")] },
    { name: "a day that starts a fourth position beside the used quarter", farm: quarterUsed(day(-100)), rows: { Hens: "A*10 yard*20" }, breaches: [breach([1, 10], "0.12", "0.09")] },
    { name: "the last day of that quarter's rest", farm: quarterUsed(day(-269)), rows: { Hens: "A*10 yard*20" }, breaches: [breach([1, 10], "0.12", "0.09")] },
    {
      name: "the season's own earlier stay", farm: fresh, rows: { Hens: "A*7 yard*3 A*4 yard*16" }, breaches: [breach([11, 14], "0.06", "0.03")],
    },
    {
      name: "table chickens' longer rest", rows: { Hens: "A*10 yard*20" }, breaches: [breach([1, 10], "0.12", "0.09")],
      farm: { ...fresh, cells: [cell("A", { areaHa: 0.12, past: [{ by: "broilers", lastDay: day(-300), share: 0.25 }] })] },
    },
  ],
});
