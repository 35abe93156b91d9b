import type { Yard } from "../../src/farm/scenario.js";
import { cell } from "../fixtures/tiny-farm.js";
import { cows, ewes } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const yard = (more: Partial<Yard> = {}): Yard => ({ name: "Yard", costPerDay: 2, room: null, open: [{ firstDay: day(1), lastDay: day(6) }], ...more });
const farm = (own: Partial<Yard>, groups = [cows()]) => ({ days: 6, cells: [cell("A"), cell("B")], groups, more: { yards: [yard(own), yard({ name: "Barn", costPerDay: 3 })] } });
const both = (room: number) => farm({ room }, [cows(), ewes()]);
const withBull = (room: number | null) => farm({ room }, [cows(), cows({ name: "Bull", head: 1, runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(6) }] } })]);
const charge = (group: string, days: [number, number], money: number, found: string) => ({ group, cell: null, days, money, found });
const full = (days: [number, number], found: number, most: number) => ({ group: null, cell: null, days, found: `${found} head in Yard`, allowed: `at most ${most} in Yard` });

ruleCases("yard-room", {
  keeps: [
    { name: "days at 2, days in another yard at 3", farm: farm({}), rows: { Cows: "yard*2 A*2 yard:Barn*2" }, charges: [charge("Cows", [1, 2], 4, "2 days in Yard"), charge("Cows", [5, 6], 6, "2 days in Barn")] },
    { name: "as many as there is room for", farm: both(25), rows: { Cows: "yard*6", Ewes: "A*3 yard*3" } },
    { name: "the yard's last open day", farm: farm({ open: [{ firstDay: day(1), lastDay: day(3) }] }), rows: { Cows: "yard*3 A*3" } },
    { name: "a companion's day is not charged again", farm: withBull(null), rows: { Cows: "yard*6", Bull: "yard*6" }, charges: [charge("Cows", [1, 6], 12, "6 days in Yard")] },
  ],
  breaks: [
    { name: "one head more than there is room for", farm: both(24), rows: { Cows: "yard*6", Ewes: "A*3 yard*3" }, breaches: [full([4, 6], 25, 24)] },
    { name: "a companion needs its room", farm: withBull(5), rows: { Cows: "yard*2 A*4", Bull: "yard*2 A*4" }, breaches: [full([1, 2], 6, 5)] },
    {
      name: "the day after its last open day", farm: farm({ open: [{ firstDay: day(1), lastDay: day(3) }] }), rows: { Cows: "yard*4 A*2" },
      breaches: [{ group: "Cows", cell: null, days: [4, 4], found: "in Yard while it is shut", allowed: "Yard on its open dates" }],
    },
  ],
});
