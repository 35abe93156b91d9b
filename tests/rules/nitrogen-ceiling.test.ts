import { cell } from "../fixtures/tiny-farm.js";
import { cows } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

/** Five cows dropping 0.3 kg a day in all: 1 kg/ha a day on 0.3 ha. */
const light = cows({ nitrogenKgPerHeadDay: 0.06 });
/** 17 kg a day in all, on a holding of 0.3 ha that may have 170 kg/ha: 51 kg. */
const heavy = cows({ nitrogenKgPerHeadDay: 3.4 });
const before = (kgPerHa: number, on: string) => ({ days: 6, cells: [cell("A", { pastNitrogen: [{ day: on, kgPerHa }] })], groups: [light] });
const charge = (last: number, money: number, found: number) => ({ group: null, cell: "A", days: [1, last] as [number, number], money, found: `${found} kg N/ha in twelve months, 250 at most` });
const holding = (days: [number, number], money: number, found: number, year: number) => ({ group: null, cell: null, days, money, found: `${found} kg N/ha on the holding in ${year}, 170 at most` });

ruleCases("nitrogen-ceiling", {
  keeps: [
    { name: "three days up to the most", farm: before(247, day(-100)), rows: { Cows: "A*3 yard*3" } },
    { name: "the first day whose twelve months leave out what was laid down", farm: before(250, day(-362)), rows: { Cows: "yard*2 A*4" } },
    { name: "three days up to the holding's most", farm: { days: 6, cells: [cell("A")], groups: [heavy] }, rows: { Cows: "A*3 yard*3" } },
    // new year's eve is day 3: 51 kg in each year
    { name: "each calendar year apart", farm: { days: 6, firstDay: "2027-12-29", cells: [cell("A")], groups: [heavy], rules: { "nitrogen-ceiling": { figures: { cell: 1000 } } } }, rows: { Cows: "A*6" } },
    { name: "off", farm: { ...before(400, day(-1)), rules: { "nitrogen-ceiling": { use: "off" } } }, rows: { Cows: "A*6" } },
  ],
  breaks: [
    { name: "a fourth day: 1 kg/ha over on 0.3 ha at 1", farm: before(247, day(-100)), rows: { Cows: "A*4 yard*2" }, charges: [charge(4, 0.3, 260)] },
    { name: "the last day whose twelve months hold what was laid down", farm: before(250, day(-362)), rows: { Cows: "yard A yard*4" }, charges: [charge(2, 0.3, 260)] },
    { name: "a fourth day on the holding: 17 kg over at 1", farm: { days: 6, cells: [cell("A")], groups: [heavy] }, rows: { Cows: "yard*2 A*4" }, charges: [holding([1, 6], 17, 230, 2027)] },
    {
      name: "made hard, on a cell", farm: { ...before(250, day(-100)), rules: { "nitrogen-ceiling": { use: "hard" } } }, rows: { Cows: "A yard*5" },
      breaches: [{ group: null, cell: "A", days: [1, 1], found: "260 kg N/ha in twelve months, 250 at most", allowed: "at most 250 kg N/ha in twelve months" }],
    },
    {
      name: "made hard, on the holding", farm: { days: 6, cells: [cell("A")], groups: [heavy], rules: { "nitrogen-ceiling": { use: "hard" } } }, rows: { Cows: "A*4 yard*2" },
      breaches: [{ group: null, cell: null, days: [1, 6], found: "230 kg N/ha on the holding in 2027, 170 at most", allowed: "at most 170 kg N/ha on the holding" }],
    },
  ],
});
