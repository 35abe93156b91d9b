import type { Person } from "../../src/farm/scenario.js";
import { cell } from "../fixtures/tiny-farm.js";
import { cows } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const owner: Person = { name: "Owner", tows: true, minutesByWeekday: Array<number>(7).fill(600), minutesByDay: {}, away: [] };
const away: Person = { ...owner, away: [{ firstDay: day(3), lastDay: day(4) }] };
const farm = (people: Person[], lastDay = 5) => ({
  days: 5, cells: [cell("A")], groups: [cows({ here: [{ firstDay: day(1), lastDay: day(lastDay) }] })], more: { people },
});
const nobody = { group: null, cell: null, found: "nobody at home", allowed: "at least 1 person at home" };

ruleCases("looked-at", {
  keeps: [
    { name: "somebody at home each day", farm: farm([owner]), rows: { Cows: "A*5" } },
    { name: "the group leaves on the day before everybody is away", farm: farm([away], 2), rows: { Cows: "A*2" } },
    { name: "a helper at home while the owner is away", farm: farm([away, { ...owner, name: "Helper" }]), rows: { Cows: "A*5" } },
    // 1 May 2027 is a Saturday, so the season's five days are Saturday to Wednesday
    { name: "minutes of a weekday, no more than one", farm: farm([{ ...owner, minutesByWeekday: [1, 1, 1, 0, 0, 1, 1] }]), rows: { Cows: "A*5" } },
  ],
  breaks: [
    { name: "the group is there on the first day everybody is away", farm: farm([away], 3), rows: { Cows: "A*3" }, breaches: [{ ...nobody, days: [3, 3] }] },
    { name: "two days in a row, back on the fifth", farm: farm([away]), rows: { Cows: "A*2 yard*3" }, breaches: [{ ...nobody, days: [3, 4] }] },
    {
      name: "no minutes on Mondays", farm: farm([{ ...owner, minutesByWeekday: [0, 1, 1, 1, 1, 1, 1] }]), rows: { Cows: "A*5" },
      breaches: [{ ...nobody, days: [3, 3] }],
    },
    {
      name: "a day that differs from its weekday", farm: farm([{ ...owner, minutesByDay: { [day(2)]: 0 } }]), rows: { Cows: "A*5" },
      breaches: [{ ...nobody, days: [2, 2] }],
    },
  ],
});
