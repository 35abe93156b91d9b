import { cell } from "../fixtures/tiny-farm.js";
import { cows } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

/** A standstill on days 3 to 5 of eight, and cows on the farm from one day to another. */
const farm = (first: number, last: number) => ({
  days: 8, cells: [cell("A")], groups: [cows({ here: [{ firstDay: day(first), lastDay: day(last) }] })],
  more: { standstills: [{ name: "Standstill", firstDay: day(3), lastDay: day(5) }] },
});
const toTheEnd = { ...farm(1, 8), more: { standstills: [{ name: "Standstill", firstDay: day(7), lastDay: day(9) }] } };
const breach = (on: number, found: string) => ({ group: "Cows", cell: null, days: [on, on] as [number, number], found, allowed: "nothing on or off in a standstill" });

ruleCases("standstill", {
  keeps: [
    { name: "comes the day before", farm: farm(2, 8), rows: { Cows: ". A*7" } },
    { name: "comes the day after", farm: farm(6, 8), rows: { Cows: ".*5 A*3" } },
    { name: "leaves after it", farm: farm(1, 6), rows: { Cows: "A*6" } },
    { name: "moves on the farm go on", farm: farm(1, 8), rows: { Cows: "A*3 yard A*4" } },
    { name: "the season's end is no leaving", farm: toTheEnd, rows: { Cows: "A*8" } },
  ],
  breaks: [
    { name: "comes on its first day", farm: farm(3, 8), rows: { Cows: ".*2 A*6" }, breaches: [breach(3, "comes onto the farm")] },
    { name: "comes on its last day", farm: farm(5, 8), rows: { Cows: ".*4 A*4" }, breaches: [breach(5, "comes onto the farm")] },
    { name: "leaves on its last day", farm: farm(1, 5), rows: { Cows: "A*5" }, breaches: [breach(5, "leaves the farm")] },
  ],
});
