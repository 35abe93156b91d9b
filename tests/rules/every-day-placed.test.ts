import { cell } from "../fixtures/tiny-farm.js";
import { cows, pigs } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const farm = { days: 5, cells: [cell("A"), cell("B")], groups: [cows()] };
const threeDays = { ...farm, groups: [cows({ here: [{ firstDay: day(1), lastDay: day(3) }] })] };
const wholeSeason = "days of the season, first to last";

ruleCases("every-day-placed", {
  keeps: [
    { name: "a cell or the yard each day", farm, rows: { Cows: "A A B yard A" } },
    { name: "no place from the day after the last one here", farm: threeDays, rows: { Cows: "A A A" } },
    { name: "the same place typed twice is one place", farm, rows: { Cows: ["A*5", "A*2"] } },
    { name: "any yard of the farm will do", farm: { ...farm, more: { yards: [{ name: "Barn", costPerDay: 0, room: null, open: [] }] } }, rows: { Cows: "A*4 yard:Barn" } },
    {
      name: "a companion without a line of its own stands with its host", rows: { Cows: "A*5", Pigs: ". . A A A" },
      farm: { ...farm, groups: [cows(), pigs({ runsWith: { with: "Cows", days: [{ firstDay: day(1), lastDay: day(2) }] } })] },
    },
  ],
  breaks: [
    {
      name: "a day and two days in a row without a place", farm, rows: { Cows: "A . B . ." },
      breaches: [
        { group: "Cows", cell: null, days: [2, 2], found: "no place", allowed: "1 place" },
        { group: "Cows", cell: null, days: [4, 5], found: "no place", allowed: "1 place" },
      ],
    },
    {
      name: "two places on a day", farm, rows: { Cows: ["A*5", ". B B"] },
      breaches: [{ group: "Cows", cell: null, days: [2, 3], found: "2 places: in A, in B", allowed: "1 place" }],
    },
    {
      name: "the first day after the last one here", farm: threeDays, rows: { Cows: "A*4" },
      breaches: [{ group: "Cows", cell: null, days: [4, 4], found: "in A while away", allowed: "no place while away" }],
    },
    {
      name: "groups, cells and yards the farm does not have", farm, rows: { Cows: "A*4 Z", Geese: "A", Ducks: "yard:Nowhere" },
      breaches: [
        { group: null, cell: null, days: [1, 1], found: 'group "Ducks"', allowed: "a group of the farm" },
        { group: null, cell: null, days: [1, 1], found: 'place "Nowhere"', allowed: "one cell or yard of the farm" },
        { group: null, cell: null, days: [1, 1], found: 'group "Geese"', allowed: "a group of the farm" },
        { group: "Cows", cell: null, days: [5, 5], found: 'place "Z"', allowed: "one cell or yard of the farm" },
        { group: "Cows", cell: null, days: [5, 5], found: "no place", allowed: "1 place" },
      ],
    },
    {
      name: "days that do not exist, run backwards or lie outside the season", farm, rows: { Cows: "A*5" },
      typed: [
        { group: "Cows", cell: "A", yard: null, firstDay: "2027-02-30", lastDay: day(2) },
        { group: "Cows", cell: "A", yard: null, firstDay: day(4), lastDay: day(3) },
        { group: "Cows", cell: "A", yard: null, firstDay: day(5), lastDay: day(9) },
      ],
      breaches: [
        { group: "Cows", cell: null, days: [1, 1], found: 'from "2027-02-30" to "2027-05-02"', allowed: wholeSeason },
        { group: "Cows", cell: null, days: [4, 4], found: "2027-05-04 to 2027-05-03", allowed: wholeSeason },
        { group: "Cows", cell: null, days: [5, 5], found: "2027-05-05 to 2027-05-09", allowed: wholeSeason },
      ],
    },
    {
      name: "neither cell nor yard, or both", farm, rows: { Cows: "A*5" },
      typed: [
        { group: "Cows", cell: null, yard: null, firstDay: day(1), lastDay: day(1) },
        { group: "Cows", cell: "A", yard: "Yard", firstDay: day(2), lastDay: day(2) },
      ],
      breaches: [
        { group: "Cows", cell: null, days: [1, 1], found: 'place ""', allowed: "one cell or yard of the farm" },
        { group: "Cows", cell: null, days: [2, 2], found: 'place "A"', allowed: "one cell or yard of the farm" },
      ],
    },
    {
      name: "a cut of a cell the farm does not have", farm, rows: { Cows: "A*5" }, cuts: ["Z hay 2"],
      breaches: [{ group: null, cell: null, days: [2, 2], found: 'a cut of "Z"', allowed: "a cell of the farm" }],
    },
  ],
});
