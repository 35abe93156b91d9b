import type { Cell } from "../../src/farm/scenario.js";
import { cell, group } from "../fixtures/tiny-farm.js";
import { cows, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const farm = (more: Partial<Cell>) => ({ days: 5, cells: [cell("A", more), cell("B", more)], groups: [cows()] });
const charge = (last: number, money: number, found: string) => ({ group: "Cows", cell: "A", days: [1, last] as [number, number], money, found });
/** Ten minutes a day at 14 an hour. */
const carting = (days: number) => charge(days, (days * 10 * 14) / 60, `${days} days of carting water`);
const litres = (most: number) => ({ water: { figures: { "carted-most": most } } });
const bull = group("Bull", { head: 1, waterLPerHeadDay: 50, runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(1) }] } });

ruleCases("water", {
  keeps: [
    { name: "a walk that costs nothing", farm: farm({ waterWalkM: 60 }), rows: { Cows: "A*5" }, charges: [] },
    { name: "the longest walk: 340 m more at 0.5 the hundred, four days", farm: farm({ waterWalkM: 400 }), rows: { Cows: "A*4 yard" }, charges: [charge(4, 6.8, "4 days of 400 m to water, 60 free")] },
    { name: "carted, without a limit", farm: farm({ water: "carted" }), rows: { Cows: "A*3 yard*2" }, charges: [carting(3)] },
    // 5 x 60 L
    { name: "carted, just the most", farm: { ...farm({ water: "carted" }), rules: litres(300) }, rows: { Cows: "A*2 yard*3" }, charges: [carting(2)] },
    { name: "no water in the cell, but the group in the yard", farm: farm({ water: "none" }), rows: { Cows: "yard*5" }, charges: [] },
    { name: "off", farm: { ...farm({ water: "none", waterWalkM: 900 }), rules: { water: { use: "off" } } }, rows: { Cows: "A*5" }, charges: [] },
  ],
  breaks: [
    { name: "no water", farm: farm({ water: "none" }), rows: { Cows: "A*2 yard*3" }, breaches: [{ group: "Cows", cell: "A", days: [1, 2], found: "no water", allowed: "water, or ground it can be carted to" }] },
    { name: "a metre too far", farm: farm({ waterWalkM: 401 }), rows: { Cows: "A*2 yard*3" }, breaches: [{ group: "Cows", cell: "A", days: [1, 2], found: "401 m to water", allowed: "at most 400 m" }] },
    {
      name: "a litre more than can be carted", farm: { ...farm({ water: "carted" }), rules: litres(299) }, rows: { Cows: "A*2 yard*3" },
      breaches: [{ group: null, cell: null, days: [1, 2], found: "300 L carted", allowed: "at most 299 L" }],
    },
    {
      name: "the bull's 50 L on the day he runs with them", farm: { ...farm({ water: "carted" }), groups: [cows(), bull], rules: litres(300) }, rows: { Cows: "A*3 yard*2", Bull: "A yard*4" },
      breaches: [{ group: null, cell: null, days: [1, 1], found: "350 L carted", allowed: "at most 300 L" }],
    },
    {
      name: "two groups' water together: 300 and 15 L", farm: { ...farm({ water: "carted" }), groups: [cows(), hens()], rules: litres(300) }, rows: { Cows: "A*5", Hens: "yard*3 B yard" },
      breaches: [{ group: null, cell: null, days: [4, 4], found: "315 L carted", allowed: "at most 300 L" }],
    },
  ],
});
