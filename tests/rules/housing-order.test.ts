import { cell } from "../fixtures/tiny-farm.js";
import { cows, hens } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const order = { name: "Order", known: day(1), kinds: ["layers" as const], firstDay: day(3), lastDay: day(5) };
const farm = { days: 8, cells: [cell("A"), cell("B")], groups: [hens(), cows()], more: { housingOrders: [order] } };
const breach = (days: [number, number]) => ({ group: "Hens", cell: "A", days, found: "out on ground", allowed: "in the yard while housed by order" });

ruleCases("housing-order", {
  keeps: [
    { name: "in from the order's first day to its last; cows are not asked", farm, rows: { Hens: "A*2 yard*3 A*3", Cows: "B*8" } },
    { name: "an order for another kind", farm: { ...farm, more: { housingOrders: [{ ...order, kinds: ["turkeys"] }] } }, rows: { Hens: "A*8", Cows: "B*8" } },
  ],
  breaks: [
    { name: "out on the first day", farm, rows: { Hens: "A*3 yard*5", Cows: "B*8" }, breaches: [breach([3, 3])] },
    { name: "out again on the last day", farm, rows: { Hens: "yard*4 A*4", Cows: "B*8" }, breaches: [breach([5, 5])] },
    { name: "out all the time", farm, rows: { Hens: "A*8", Cows: "B*8" }, breaches: [breach([3, 5])] },
  ],
});
