import { cell } from "../fixtures/tiny-farm.js";
import { cows, hens, pigs } from "./animals.js";
import { ruleCases } from "./rule-cases.js";

const farm = (firstDay: string, groups = [pigs()], shade = false) => ({ days: 6, firstDay, cells: [cell("A", { shade })], groups });
const charge = (days: [number, number], money: number, found: string, group = "Pigs") => ({ group, cell: "A", days, money, found: `${found} without shade` });

ruleCases("shade", {
  keeps: [
    { name: "May is not hot", farm: farm("2027-05-26"), rows: { Pigs: "A*6" } },
    { name: "September is not hot", farm: farm("2027-09-01"), rows: { Pigs: "A*6" } },
    { name: "a cell with shade", farm: farm("2027-07-01", [pigs()], true), rows: { Pigs: "A*6" } },
    { name: "grazers cost nothing unless set", farm: farm("2027-07-01", [cows()]), rows: { Cows: "A*6" } },
    { name: "birds have their house", farm: farm("2027-07-01", [hens()]), rows: { Hens: "A*6" } },
  ],
  breaks: [
    { name: "from the first of June", farm: farm("2027-05-27"), rows: { Pigs: "A*6" }, charges: [charge([6, 6], 0.5, "1 day")] },
    { name: "to the end of August", farm: farm("2027-08-29"), rows: { Pigs: "A*6" }, charges: [charge([1, 3], 1.5, "3 days")] },
    { name: "grazers at their own price", farm: { ...farm("2027-07-01", [cows()]), rules: { shade: { figures: { "grazers-price": 2 } } } }, rows: { Cows: "A*2 yard*4" }, charges: [charge([1, 2], 4, "2 days", "Cows")] },
    {
      name: "months over the year's end", farm: { ...farm("2028-02-27"), rules: { shade: { figures: { "first-month": 12, "last-month": 2 } } } }, rows: { Pigs: "A*6" },
      charges: [charge([1, 3], 1.5, "3 days")],
    },
    {
      name: "made hard", farm: { ...farm("2027-05-27"), rules: { shade: { use: "hard" } } }, rows: { Pigs: "A*6" },
      breaches: [{ group: "Pigs", cell: "A", days: [6, 6], found: "1 day without shade", allowed: "shade in the hot months" }],
    },
  ],
});
