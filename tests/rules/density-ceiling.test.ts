import { cell, group } from "../fixtures/tiny-farm.js";
import { cows, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

// five cows of 600 kg on 0.3 ha: 10,000 kg/ha
const most = (kg: number | null) => ({ "density-ceiling": { figures: { most: kg } } });
const farm = { days: 6, cells: [cell("A")], groups: [cows()], rules: most(10000) };
const calves = cows({ young: { head: 5, weightKg: 60, gainKgPerDay: 0 } });
const bull = group("Bull", { head: 1, weightKg: 900, runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(3) }] } });
const breach = (days: [number, number], found: number) => ({ group: "Cows", cell: "A", days, found: `${found} kg/ha of live weight`, allowed: "at most 10000 kg/ha" });

ruleCases("density-ceiling", {
  keeps: [
    { name: "just the most", farm, rows: { Cows: "A*6" } },
    { name: "no limit unless set", farm: { ...farm, groups: [cows({ head: 50 })], rules: {} }, rows: { Cows: "A*6" } },
    { name: "birds", farm: { ...farm, groups: [hens({ head: 6000 })] }, rows: { Hens: "A*6" } },
    { name: "off", farm: { ...farm, groups: [calves], rules: { "density-ceiling": { use: "off", figures: { most: 10000 } } } }, rows: { Cows: "A*6" } },
  ],
  breaks: [
    { name: "a kilogram a cow more: 10,016.7", farm: { ...farm, groups: [cows({ weightKg: 601 })] }, rows: { Cows: "A*2 yard*4" }, breaches: [breach([1, 2], 10020)] },
    { name: "calves count: 3,300 kg", farm: { ...farm, groups: [calves] }, rows: { Cows: "A*6" }, breaches: [breach([1, 6], 11000)] },
    { name: "from the day on which they have grown, told by the last", farm: { ...farm, groups: [cows({ weightKg: 597, gainKgPerDay: 1 })] }, rows: { Cows: "A*6" }, breaches: [breach([5, 6], 10040)] },
    { name: "a bull on the days he runs with them: 3,900 kg", farm: { ...farm, groups: [cows(), bull] }, rows: { Cows: "A*6", Bull: "A*3 yard*3" }, breaches: [breach([1, 3], 13000)] },
  ],
});
