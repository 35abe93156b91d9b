import { defaultFigures } from "../../src/farm/figures.js";
import { bare, cows, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

// cows take 86.25 kg a day of 0.3 ha: 287.5 kg/ha. From 2,600: 2,312.5, 2,025, 1,737.5, 1,450, 1,162.5
const farm = { days: 6, cells: [bare("A", 2600)], groups: [cows()] };
const breach = (days: [number, number], found: number, least = 1500) => ({
  group: "Cows", cell: "A", days, found: `${found} kg DM/ha left`, allowed: `at least ${least} kg DM/ha left`,
});

ruleCases("residual-cover", {
  keeps: [
    { name: "out on the last day that leaves enough", farm, rows: { Cows: "A*3 yard*3" } },
    { name: "a residual of one's own, left exactly", farm: { ...farm, rules: { "residual-cover": { figures: { grazers: 1450 } } } }, rows: { Cows: "A*4 yard*2" } },
    { name: "no residual on strips of birds and pigs", farm: { ...farm, cells: [bare("A", 1400), bare("B", 1400)], groups: [hens(), pigs()] }, rows: { Hens: "A*6", Pigs: "B*6" } },
    { name: "off", farm: { ...farm, rules: { "residual-cover": { use: "off" } } }, rows: { Cows: "A*6" } },
  ],
  breaks: [
    { name: "a day too long", farm, rows: { Cows: "A*4 yard*2" }, breaches: [breach([4, 4], 1450)] },
    { name: "two days too long, told by the worse", farm, rows: { Cows: "A*5 yard" }, breaches: [breach([4, 5], 1160)] },
    {
      name: "a field's own residual", rows: { Cows: "A*3 yard*3" }, breaches: [breach([3, 3], 1730, 1738)],
      farm: { ...farm, more: { rules: { ...ownResidual(1738) } } },
    },
  ],
});

function ownResidual(grazers: number) {
  return { farm: defaultFigures(), fields: { Field: { "residual-cover": { figures: { grazers } } } }, groups: {} };
}
