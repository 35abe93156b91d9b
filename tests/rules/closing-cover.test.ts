import { bare, cows, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const closing = (cover: number) => ({ days: 10, cells: [bare("A", cover)], groups: [cows()] });
const wet = { days: 10, cells: [bare("A", 3000, { wetGround: true, areaHa: 3 })], groups: [cows()], rules: { "closing-cover": { figures: { "wet-days": 3 } } } };

ruleCases("closing-cover", {
  keeps: [
    { name: "just the cover wished", farm: closing(2000), rows: { Cows: "yard*10" } },
    { name: "a cell no longer in hand", farm: { ...closing(0), cells: [bare("A", 1500, { ours: { firstDay: day(1), lastDay: day(9) } })] }, rows: { Cows: "yard*10" } },
    { name: "off wet ground in good time", farm: wet, rows: { Cows: "yard*4 A*3 yard*3" } },
    { name: "dry ground to the end", farm: { ...wet, cells: [bare("A", 3000, { areaHa: 3 })] }, rows: { Cows: "yard*7 A*3" } },
    { name: "birds on wet ground", farm: { ...wet, groups: [hens()] }, rows: { Hens: "yard*7 A*3" } },
  ],
  breaks: [
    {
      name: "0.1 t/ha short on 0.3 ha at 40", farm: closing(1900), rows: { Cows: "yard*10" },
      charges: [{ group: null, cell: "A", days: [10, 10], money: 1.2, found: "1900 kg DM/ha at the end, 2000 wished" }],
    },
    {
      name: "the cover after the last day's grazing counts: 287.5 kg/ha less", farm: closing(2200), rows: { Cows: "yard*9 A" },
      charges: [{ group: null, cell: "A", days: [10, 10], money: 0.0875 * 0.3 * 40, found: "1910 kg DM/ha at the end, 2000 wished" }],
    },
    {
      name: "the first day on which wet ground is better left", farm: wet, rows: { Cows: "yard*4 A*4 yard*2" },
      charges: [{ group: "Cows", cell: "A", days: [8, 8], money: 1, found: "1 day on wet ground late in the season" }],
    },
    {
      name: "each day on it", farm: wet, rows: { Cows: "yard*4 A*6" },
      charges: [{ group: "Cows", cell: "A", days: [8, 10], money: 3, found: "3 days on wet ground late in the season" }],
    },
  ],
});
