import { cell, group } from "../fixtures/tiny-farm.js";
import { cows, ewes } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const farm = { days: 6, cells: [cell("A"), cell("B")], groups: [cows(), ewes()] };
const bull = group("Bull", { head: 1, weightKg: 900, runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(3) }] } });
const withBull = { ...farm, groups: [cows(), bull] };

ruleCases("one-group-per-cell", {
  keeps: [
    { name: "each in its own cell, one in on the day after the other is out", farm, rows: { Cows: "A*3 B*3", Ewes: "B*3 A*3" } },
    { name: "two groups in one yard", farm, rows: { Cows: "yard*6", Ewes: "yard*6" } },
    { name: "a bull with the cows on the days he runs with them", farm: withBull, rows: { Cows: "A*2 B*2 A*2", Bull: "A*2 B yard*3" } },
  ],
  breaks: [
    {
      name: "one day together", farm, rows: { Cows: "A*4 B*2", Ewes: "B*3 A*3" },
      breaches: [{ group: "Ewes", cell: "A", days: [4, 4], found: "shares with Cows", allowed: "1 group" }],
    },
    {
      name: "the first day on which the bull no longer runs with the cows", farm: withBull, rows: { Cows: "A*2 B*2 A*2", Bull: "A*2 B*2 yard*2" },
      breaches: [{ group: "Bull", cell: "B", days: [4, 4], found: "shares with Cows", allowed: "1 group" }],
    },
    {
      name: "the bull elsewhere on days on which he runs with the cows", farm: withBull, rows: { Cows: "A*2 B*2 A*2", Bull: "A yard . yard*3" },
      breaches: [
        { group: "Bull", cell: "A", days: [2, 2], found: "in the yard Yard", allowed: "runs with Cows" },
        { group: "Bull", cell: "B", days: [3, 3], found: "no place", allowed: "runs with Cows" },
      ],
    },
  ],
});
