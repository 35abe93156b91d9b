import { cell } from "../fixtures/tiny-farm.js";
import { cows, ewes } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

// five cows of 600 kg over two cells of 0.3 ha: 5,000 kg/ha
const farm = { days: 4, cells: [cell("A"), cell("B")], groups: [cows()], rules: { "rate-ceiling": { figures: { most: 5000 } } } };
const breach = (days: [number, number], found: number) => ({ group: null, cell: null, days, found: `${found} kg/ha of live weight`, allowed: "at most 5000 kg/ha" });

ruleCases("rate-ceiling", {
  keeps: [
    { name: "just the most", farm, rows: { Cows: "A*2 B*2" } },
    { name: "more, but in the yard", farm: { ...farm, groups: [cows({ head: 9 })] }, rows: { Cows: "yard*4" } },
    { name: "no limit unless set", farm: { ...farm, groups: [cows({ head: 9 })], rules: {} }, rows: { Cows: "A*4" } },
  ],
  breaks: [
    { name: "a kilogram a cow more: 5,008.3", farm: { ...farm, groups: [cows({ weightKg: 601 })] }, rows: { Cows: "A*2 yard*2" }, breaches: [breach([1, 2], 5010)] },
    // the ewes' 1,400 kg more: 7,333.3
    { name: "all groups that are out", farm: { ...farm, groups: [cows(), ewes()] }, rows: { Cows: "A*4", Ewes: "yard B*2 yard" }, breaches: [breach([2, 3], 7340)] },
    {
      name: "from the day a cell is no longer in hand", farm: { ...farm, cells: [cell("A"), cell("B", { ours: { firstDay: day(1), lastDay: day(2) } })] },
      rows: { Cows: "A*4" }, breaches: [breach([3, 4], 10000)],
    },
  ],
});
