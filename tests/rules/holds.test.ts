import type { Hold } from "../../src/farm/scenario.js";
import { cell } from "../fixtures/tiny-farm.js";
import { cows } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const hold = (more: Partial<Hold>): Hold => ({ name: "Held", days: { firstDay: day(3), lastDay: day(5) }, group: null, cell: null, yard: null, cut: null, ...more });
const farm = (held: Hold, more: Parameters<typeof cell>[1] = {}) => ({ days: 7, cells: [cell("A", more), cell("B")], groups: [cows()], more: { holds: [held] } });
const inA = farm(hold({ group: "Cows", cell: "A" }));
const housed = farm(hold({ group: "Cows", yard: "Yard" }));
const cutOnFive = farm(hold({ cell: "A", cut: "topping", days: { firstDay: day(5), lastDay: day(5) } }));
const hayToFive = { ...farm(hold({ name: "None", days: { firstDay: day(20), lastDay: day(20) } }), { closed: [{ firstDay: day(2), lastDay: day(5), reason: "hay" }] }) };
const breach = (cellName: string | null, days: [number, number], found: string, allowed: string) => ({ group: "Cows", cell: cellName, days, found, allowed });
const noCut = (kind: string) => ({ group: null, cell: "A", days: [5, 5] as [number, number], found: "no cut in the plan", allowed: `cut for ${kind}, as held` });
const hayNotCut = { ...noCut("hay"), allowed: "A is closed for hay to 5 May and cut that day" };

ruleCases("holds", {
  keeps: [
    { name: "in the held cell from the first held day to the last", farm: inA, rows: { Cows: "B*2 A*3 B*2" } },
    { name: "in the held yard", farm: housed, rows: { Cows: "A*2 yard*3 A*2" } },
    { name: "held days on which the group is away", farm: { ...inA, groups: [cows({ here: [{ firstDay: day(6), lastDay: day(7) }] })] }, rows: { Cows: ".*5 B*2" } },
    { name: "the held cut is in the plan", farm: cutOnFive, rows: { Cows: "B*7" }, cuts: ["A topping 5"] },
    { name: "the cut that ends a hay closure is in the plan", farm: hayToFive, rows: { Cows: "B*7" }, cuts: ["A hay 5"] },
    { name: "a closed cell that cannot be mown is not cut", farm: farm(hold({ days: { firstDay: day(20), lastDay: day(20) } }), { mow: false, closed: [{ firstDay: day(2), lastDay: day(5), reason: "hay" }] }), rows: { Cows: "B*7" } },
  ],
  breaks: [
    { name: "a day late", farm: inA, rows: { Cows: "B*3 A*4" }, breaches: [breach("B", [3, 3], "in B", "in A, as held")] },
    { name: "a day early", farm: inA, rows: { Cows: "A*4 yard*3" }, breaches: [breach(null, [5, 5], "in the yard Yard", "in A, as held")] },
    { name: "out while held in the yard", farm: housed, rows: { Cows: "A*7" }, breaches: [breach("A", [3, 5], "in A", "in the yard Yard, as held")] },
    { name: "the held cut on another day", farm: cutOnFive, rows: { Cows: "B*7" }, cuts: ["A topping 4"], breaches: [noCut("topping")] },
    { name: "the held cut of another kind", farm: cutOnFive, rows: { Cows: "B*7" }, cuts: ["A hay 5"], breaches: [noCut("topping")] },
    { name: "no cut at the end of a hay closure", farm: hayToFive, rows: { Cows: "B*7" }, breaches: [hayNotCut] },
  ],
});
