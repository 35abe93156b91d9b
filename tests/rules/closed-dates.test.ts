import type { Cell } from "../../src/farm/scenario.js";
import { cell } from "../fixtures/tiny-farm.js";
import { cows } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const farm = (more: Partial<Cell>, groups = [cows()]) => ({ days: 8, cells: [cell("A", more), cell("B")], groups });
const nesting = farm({ closed: [{ firstDay: day(3), lastDay: day(5), reason: "nesting" }] });
const rented = farm({ ours: { firstDay: day(3), lastDay: day(6) } });
const out = farm({}, [cows({ out: { firstDay: day(3), lastDay: day(6) } })]);
const breach = (days: [number, number], found: string, allowed: string) => ({ group: "Cows", cell: "A", days, found, allowed });

ruleCases("closed-dates", {
  keeps: [
    { name: "out the day before it closes, back the day after", farm: nesting, rows: { Cows: "A*2 B*3 A*3" } },
    { name: "from the first day in hand to the last", farm: rented, rows: { Cows: "B*2 A*4 B*2" } },
    { name: "from the first day out to the last", farm: out, rows: { Cows: "yard*2 A*4 yard*2" } },
    { name: "a cell that is not for another group", farm: farm({ notFor: ["Ewes"] }), rows: { Cows: "A*8" } },
  ],
  breaks: [
    { name: "in until the first closed day", farm: nesting, rows: { Cows: "A*3 B*5" }, breaches: [breach([3, 3], "closed: nesting", "an open day")] },
    { name: "back on the last closed day", farm: nesting, rows: { Cows: "B*4 A*4" }, breaches: [breach([5, 5], "closed: nesting", "an open day")] },
    {
      name: "a day before it is in hand, a day after", farm: rented, rows: { Cows: "B A*6 B" },
      breaches: [breach([2, 2], "not in hand", "2027-05-03 to 2027-05-06"), breach([7, 7], "not in hand", "2027-05-03 to 2027-05-06")],
    },
    {
      name: "a day before the group goes out, a day after", farm: out, rows: { Cows: "yard A*6 yard" },
      breaches: [breach([2, 2], "out on ground", "out from 2027-05-03 to 2027-05-06"), breach([7, 7], "out on ground", "out from 2027-05-03 to 2027-05-06")],
    },
    { name: "a cell that is not for the group", farm: farm({ notFor: ["Cows"] }), rows: { Cows: "A*2 B*6" }, breaches: [breach([1, 2], "not open to Cows", "a cell that Cows may enter")] },
  ],
});
