import { cell } from "../fixtures/tiny-farm.js";
import { pigs } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

/** 0.08 ha hold four strips of 0.02 ha, seven days each. */
const fresh = { days: 40, cells: [cell("A", { areaHa: 0.08 })], groups: [pigs()] };
const halfUsed = (lastDay: string, by: "pigs" | "layers" = "pigs") => ({ ...fresh, cells: [cell("A", { areaHa: 0.08, past: [{ by, lastDay, share: 0.5 }] })] });
const breach = (days: [number, number], found: string, left: string) => ({ group: "Pigs", cell: "A", days, found: `${found} ha wanted`, allowed: `at most ${left} ha rested from pigs` });

ruleCases("pig-rest", {
  keeps: [
    { name: "as many strips as the cell has room", farm: fresh, rows: { Pigs: "A*28 yard*12" } },
    { name: "two strips beside the half used last", farm: halfUsed(day(-100)), rows: { Pigs: "A*14 yard*26" } },
    { name: "three on the first day after that half's rest of 180 days", farm: halfUsed(day(-180)), rows: { Pigs: "A*15 yard*25" } },
    { name: "birds' ground is no pigs' ground", farm: halfUsed(day(-3), "layers"), rows: { Pigs: "A*28 yard*12" } },
  ],
  breaks: [
    { name: "a day that starts a fifth strip", farm: fresh, rows: { Pigs: "A*29 yard*11" }, breaches: [breach([1, 29], "0.1", "0.08")] },
    { name: "a day that starts a third strip beside the used half", farm: halfUsed(day(-100)), rows: { Pigs: "A*15 yard*25" }, breaches: [breach([1, 15], "0.06", "0.04")] },
    { name: "the last day of that half's rest", farm: halfUsed(day(-179)), rows: { Pigs: "A*15 yard*25" }, breaches: [breach([1, 15], "0.06", "0.04")] },
    { name: "back on the season's own ground", farm: fresh, rows: { Pigs: "A*22 yard*3 A yard*14" }, breaches: [breach([26, 26], "0.02", "0")] },
  ],
});
