import type { Hay } from "../../src/farm/scenario.js";
import { bare, cows, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

/** 75 kg DM: 88 % dry matter, a tenth lost in feeding, a twentieth in store. */
const HAY_A_DAY = 75 / (0.88 * 0.9 * 0.95);
/** Hay of 0.3 ha from 3,500 down to 1,800 kg DM/ha, a fifth lost in making. */
const HAY_MADE = (1700 * 0.3 * 0.8) / 0.88;
const store = (more: Partial<Hay>): Hay => ({ inStoreKg: 1000, winterNeedKg: 0, dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05, ...more });
const farm = (hay: Hay, cells = [bare("A", 3500), bare("B", 3500)]) => ({ days: 5, cells, groups: [cows()], more: { hay } });
const mown = (on: number, hectares: number, found: string) => ({ group: null, cell: null, days: [on, on] as [number, number], money: hectares * 180, found });
const short = (kg: number, found: string) => ({ group: null, cell: null, days: [1, 5] as [number, number], money: kg * 0.15, found });
const cut = (found: string, allowed: string, cell = "A") => ({ group: null, cell, days: [3, 3] as [number, number], found, allowed });
const bull = cows({
  name: "Bull", head: 1, weightKg: 800, intake: { shareOfWeight: 0.02, youngShareOfWeight: 0 }, runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(5) }] },
});
const yard = { Cows: "yard*5" };

ruleCases("hay-stock", {
  keeps: [
    { name: "just the winter's need left", farm: farm(store({ winterNeedKg: 1000 - 5 * HAY_A_DAY })), rows: yard },
    {
      name: "a cut feeds the winter; the mower is paid for 0.4 ha at 180", farm: farm(store({ winterNeedKg: 1000 - 5 * HAY_A_DAY + HAY_MADE })), rows: yard, cuts: ["A hay 3"],
      charges: [mown(3, 0.4, "0.3 ha mown, paid as 0.4 ha")],
    },
    {
      // the bull's 16 kg DM a day are fed once
      name: "a companion's hay counts once", rows: { Cows: "yard*5", Bull: "yard*5" },
      farm: { ...farm(store({ winterNeedKg: 1000 - (5 * HAY_A_DAY * 91) / 75 })), groups: [cows(), bull] },
    },
    { name: "two cells on one day", farm: farm(store({})), rows: yard, cuts: ["A hay 3", "B hay 3"], charges: [mown(3, 0.6, "0.6 ha mown")] },
    { name: "a topping makes no hay", farm: farm(store({ winterNeedKg: 1000 - 5 * HAY_A_DAY })), rows: yard, cuts: ["A topping 3"], charges: [mown(3, 0.4, "0.3 ha mown, paid as 0.4 ha")] },
    {
      name: "the owner's own cut of a closed cell is made as it stands", rows: yard, cuts: ["A hay 3"], charges: [mown(3, 0.4, "0.3 ha mown, paid as 0.4 ha")],
      farm: farm(store({}), [bare("A", 2000, { closed: [{ firstDay: day(1), lastDay: day(3), reason: "hay" }] })]),
    },
    { name: "off", farm: { ...farm(store({ winterNeedKg: 5000 })), rules: { "hay-stock": { use: "off" } } }, rows: yard, cuts: ["A hay 3"], charges: [] },
  ],
  breaks: [
    { name: "100 kg short of the winter's, at half of 0.15", farm: farm(store({ winterNeedKg: 1100 - 5 * HAY_A_DAY })), rows: yard, charges: [short(100, "100 kg of hay short of the winter's 602")] },
    {
      name: "a kilogram a hectare too little to cut", farm: farm(store({}), [bare("A", 3499)]), rows: yard, cuts: ["A hay 3"],
      breaches: [cut("3490 kg DM/ha at a cut", "at least 3500 kg DM/ha")], charges: [mown(3, 0.4, "0.3 ha mown, paid as 0.4 ha")],
    },
    {
      name: "where the mower cannot go", farm: farm(store({}), [bare("A", 3500, { mow: false })]), rows: yard, cuts: ["A hay 3"],
      breaches: [cut("a cut where the mower cannot go", "cells that may be mown")], charges: [mown(3, 0.4, "0.3 ha mown, paid as 0.4 ha")],
    },
    {
      name: "on the day the cows come into the cell", farm: farm(store({}), [bare("A", 4500)]), rows: { Cows: "yard*2 A yard*2" }, cuts: ["A hay 3"],
      breaches: [cut("a cut with Cows in the cell", "no group in the cell")], charges: [mown(3, 0.4, "0.3 ha mown, paid as 0.4 ha")],
    },
    {
      name: "with birds' ground shut: 0.27 ha are mown", farm: { ...farm(store({})), groups: [hens()], rules: { "clean-ground": { figures: { "hay-after-birds": 0 } } } }, rows: { Hens: "A*2 yard*3" }, cuts: ["A hay 3"],
      breaches: [cut("a cut with ground shut", "all of the cell open")], charges: [mown(3, 0.4, "0.27 ha mown, paid as 0.4 ha")],
    },
  ],
});
