import { cell } from "../fixtures/tiny-farm.js";
import { cows, ewes, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const farm = { days: 12, cells: [cell("A"), cell("B")], groups: [cows(), hens({ follows: "Cows" })] };
const window = "2 to 4 days after Cows";
const charge = (days: [number, number], found: string, cellName = "A") => ({ group: "Hens", cell: cellName, days, money: 3, found: `${found}, ${window} wished` });

ruleCases("follow-window", {
  keeps: [
    { name: "the window's first day, two days after", farm, rows: { Cows: "A*3 B*9", Hens: "yard*4 A*8" } },
    { name: "the window's last day, four days after", farm, rows: { Cows: "A*3 B*9", Hens: "yard*6 A*6" } },
    { name: "the leader's latest stay counts", farm, rows: { Cows: "A yard*5 A yard*5", Hens: "yard*8 A*4" } },
    {
      name: "others in the cell since the leader left", farm: { ...farm, groups: [...farm.groups, ewes()] }, rows: { Cows: "A*3 B*9", Ewes: "yard*3 A*3 yard*6", Hens: "yard*6 A*6" },
    },
    { name: "no follower, no window", farm: { ...farm, groups: [cows(), hens()] }, rows: { Cows: "A*12", Hens: "B*12" } },
    {
      name: "a stay that begins in a housing order", rows: { Cows: "A*12", Hens: "B*12" },
      farm: { ...farm, more: { housingOrders: [{ name: "Order", known: day(1), kinds: ["layers"], firstDay: day(1), lastDay: day(1) }] } },
    },
    { name: "off", farm: { ...farm, rules: { "follow-window": { use: "off" } } }, rows: { Cows: "A*12", Hens: "B*12" } },
  ],
  breaks: [
    { name: "a day before the window", farm, rows: { Cows: "A*3 B*9", Hens: "yard*3 A*9" }, charges: [charge([4, 12], "1 day after Cows")] },
    { name: "a day after the window", farm, rows: { Cows: "A*3 B*9", Hens: "yard*7 A*5" }, charges: [charge([8, 12], "5 days after Cows")] },
    {
      name: "after others, not after the leader", farm: { ...farm, groups: [...farm.groups, ewes()] }, rows: { Cows: "A*3 B*9", Ewes: "yard*3 A*3 yard*6", Hens: "yard*7 A*5" },
      charges: [charge([8, 12], "5 days after Cows")],
    },
    { name: "where the leader has not been", farm, rows: { Cows: "A*12", Hens: "yard*7 B*5" }, charges: [charge([8, 12], "not after Cows", "B")] },
    {
      name: "a stay that begins the day after a housing order", rows: { Cows: "A*12", Hens: "yard B*11" }, charges: [charge([2, 12], "not after Cows", "B")],
      farm: { ...farm, more: { housingOrders: [{ name: "Order", known: day(1), kinds: ["layers"], firstDay: day(1), lastDay: day(1) }] } },
    },
    {
      name: "made hard", farm: { ...farm, rules: { "follow-window": { use: "hard" } } }, rows: { Cows: "A*3 B*9", Hens: "yard*7 A*5" },
      breaches: [{ group: "Hens", cell: "A", days: [8, 12], found: `5 days after Cows, ${window} wished`, allowed: window }],
    },
  ],
});
