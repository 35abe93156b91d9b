import { bare, cows, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const onGround = (cover: number, days = 5) => ({ days, cells: [bare("A", cover)], groups: [hens()] });
const grass = (cover: number, days: number) => ({ days, cells: [bare("A", cover)], groups: [cows()] });
const hard = { "upper-cover": { use: "hard" as const } };

ruleCases("upper-cover", {
  keeps: [
    { name: "birds on grass as wished", farm: onGround(2300), rows: { Hens: "A*5" } },
    {
      name: "birds at the barrier, 0.7 t/ha above the wish at 4", farm: onGround(3000), rows: { Hens: "A*5" },
      charges: [{ group: "Hens", cell: "A", days: [1, 5], money: 2.8, found: "3000 kg DM/ha on new ground, 2300 wished" }],
    },
    { name: "birds in a yard", farm: onGround(2900), rows: { Hens: "yard*5" } },
    { name: "long grass before the first weekly walk", farm: grass(3500, 7), rows: { Cows: "yard*7" } },
    { name: "grass just not long on the walk", farm: grass(3000, 8), rows: { Cows: "yard*8" } },
    {
      name: "long grass in a closed cell", farm: { ...grass(3500, 8), cells: [bare("A", 3500, { closed: [{ firstDay: day(8), lastDay: day(8), reason: "nesting" }] })] },
      rows: { Cows: "yard*8" },
    },
    {
      name: "long grass not in hand", farm: { ...grass(3500, 8), cells: [bare("A", 3500, { ours: { firstDay: day(1), lastDay: day(7) } })] }, rows: { Cows: "yard*8" },
    },
    { name: "off", farm: { ...onGround(3500, 8), rules: { "upper-cover": { use: "off" } } }, rows: { Hens: "A*8" } },
  ],
  breaks: [
    {
      name: "birds a kilogram over the barrier, and charged", farm: onGround(3001), rows: { Hens: "A*5" },
      breaches: [{ group: "Hens", cell: "A", days: [1, 5], found: "3010 kg DM/ha on new ground", allowed: "at most 3000 kg DM/ha" }],
      charges: [{ group: "Hens", cell: "A", days: [1, 5], money: 2.804, found: "3010 kg DM/ha on new ground, 2300 wished" }],
    },
    {
      name: "each week's ground of a stay is charged", farm: onGround(2550, 10), rows: { Hens: "A*10" },
      charges: [
        { group: "Hens", cell: "A", days: [1, 7], money: 1, found: "2550 kg DM/ha on new ground, 2300 wished" },
        { group: "Hens", cell: "A", days: [8, 10], money: 1, found: "2550 kg DM/ha on new ground, 2300 wished" },
      ],
    },
    {
      name: "long grass on the first weekly walk, 0.5 t/ha on 0.3 ha at 1", farm: grass(3500, 8), rows: { Cows: "yard*8" },
      charges: [{ group: null, cell: "A", days: [8, 8], money: 0.15, found: "3500 kg DM/ha, long from 3000" }],
    },
    {
      name: "made hard, what was charged is a breach", farm: { ...grass(3001, 8), rules: hard }, rows: { Cows: "yard*8" },
      breaches: [{ group: null, cell: "A", days: [8, 8], found: "3010 kg DM/ha, long from 3000", allowed: "at most 3000 kg DM/ha" }],
    },
  ],
});
