import type { Person } from "../../src/farm/scenario.js";
import { cell, group } from "../fixtures/tiny-farm.js";
import { cows, hens, pigs } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

/** One person with so many minutes each day. */
const owner = (minutes: number, more: Partial<Person> = {}): Person => ({
  name: "Owner", tows: true, minutesByWeekday: Array<number>(7).fill(minutes), minutesByDay: {}, away: [], ...more,
});
const farm = (people: Person[], groups = [cows()]) => ({ days: 4, cells: [cell("A"), cell("B"), cell("C", { field: "Far" })], groups, more: { people } });
const charge = (on: number, cellName: string | null, minutes: number, groupName = "Cows") => ({
  group: groupName, cell: cellName, days: [on, on] as [number, number], money: (minutes * 14) / 60, found: `a move of ${minutes} min`,
});
const tooMany = (days: [number, number], found: number, most: number) => ({ group: null, cell: null, days, found: `${found} min`, allowed: `at most ${most} min` });
const tows = (groupName: string, on: number) => ({ group: groupName, cell: null, days: [on, on] as [number, number], found: "nobody at home who tows", allowed: "somebody who tows" });
const bull = group("Bull", { head: 1, runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(4) }] } });
const walker = owner(600, { tows: false });

ruleCases("people", {
  keeps: [
    {
      // round 30, group 5, move 15, fence 30, haul into the field 10 + 100 / 25 = 14
      name: "just the minutes of the day they come on", farm: farm([owner(94)]), rows: { Cows: "A*4" }, charges: [charge(1, "A", 59)],
    },
    { name: "a day without a move", farm: farm([owner(600, { minutesByDay: { [day(2)]: 35 } })]), rows: { Cows: "A*4" }, charges: [charge(1, "A", 59)] },
    {
      name: "next cell, far field (18 min more), the yard", farm: farm([owner(600)]), rows: { Cows: "A B C yard" },
      charges: [charge(1, "A", 59), charge(2, "B", 45), charge(3, "C", 63), charge(4, null, 15)],
    },
    { name: "home from the first cell", farm: farm([owner(600)]), rows: { Cows: "A yard*3" }, charges: [charge(1, "A", 59), charge(2, null, 15)] },
    { name: "coming onto the farm into the yard is no move", farm: farm([owner(35)]), rows: { Cows: "yard*4" }, charges: [] },
    { name: "leaving the farm is no move", farm: farm([owner(600, { minutesByDay: { [day(3)]: 0 } })], [cows({ here: [{ firstDay: day(1), lastDay: day(2) }] })]), rows: { Cows: "A*2" }, charges: [charge(1, "A", 59)] },
    { name: "one that runs with another is no more work", farm: farm([owner(94)], [cows(), bull]), rows: { Cows: "A*4", Bull: "A*4" }, charges: [charge(1, "A", 59)] },
    { name: "the haul of a pen is charged to its steps", farm: farm([owner(600)], [hens()]), rows: { Hens: "A*4" }, charges: [charge(1, "A", 45, "Hens")] },
    {
      name: "the haul of pigs is not, and has its price", farm: { ...farm([owner(600)], [pigs()]), more: { prices: { currency: "GBP", hayPerKg: 0.15, labourPerHour: 14, mowingPerHa: 180, haul: 5 } } },
      rows: { Pigs: "A*4" }, charges: [{ ...charge(1, "A", 59, "Pigs"), money: (59 * 14) / 60 + 5 }],
    },
    { name: "the day before a pen is towed on, nobody needs to tow", farm: farm([walker], [hens()]), rows: { Hens: "A*3 yard" } },
    { name: "off", farm: { ...farm([owner(1)]), rules: { people: { use: "off" } } }, rows: { Cows: "A*4" }, charges: [] },
  ],
  breaks: [
    { name: "a minute short on the day they come on", farm: farm([owner(93)]), rows: { Cows: "A*4" }, breaches: [tooMany([1, 1], 94, 93)] },
    {
      // 30 + 5 + 10 at dusk each day; a step of 30 on the fourth
      name: "dusk each day, and the step on the fourth", farm: farm([owner(600, { minutesByDay: { [day(2)]: 44, [day(4)]: 74 } })], [hens()]), rows: { Hens: "A*4" },
      breaches: [tooMany([2, 2], 45, 44), tooMany([4, 4], 75, 74)],
    },
    { name: "days in a row, told by the worse", farm: farm([owner(40)]), rows: { Cows: "yard A B B" }, breaches: [tooMany([2, 3], 94, 40)] },
    {
      name: "a move that needs two", farm: farm([owner(600), owner(600, { name: "Helper", away: [{ firstDay: day(2), lastDay: day(2) }] })], [cows({ peopleToMove: 2 })]),
      rows: { Cows: "A B*3" }, breaches: [{ group: "Cows", cell: null, days: [2, 2], found: "1 at home for a move", allowed: "at least 2 people" }],
    },
    {
      name: "a move that needs a tow, also into the yard", farm: farm([walker], [cows({ needsTow: true })]), rows: { Cows: "yard A*2 yard" }, breaches: [tows("Cows", 2), tows("Cows", 4)],
    },
    { name: "a pen is towed on the fourth day", farm: farm([walker], [hens()]), rows: { Hens: "A*4" }, breaches: [tows("Hens", 4)] },
  ],
});
