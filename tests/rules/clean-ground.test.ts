import type { PastUse } from "../../src/farm/scenario.js";
import { cell, group } from "../fixtures/tiny-farm.js";
import { cows, ewes, hens, pigs } from "./animals.js";
import { day } from "./grid.js";
import { ruleCases } from "./rule-cases.js";

const turkeys = hens({ name: "Turkeys", kind: "turkeys" });
const does = group("Does", { kind: "goats", animalClass: "doe", head: 6, weightKg: 60 });
const after = (groups: ReturnType<typeof cows>[], past: PastUse[] = [], days = 5) => ({ days, cells: [cell("A", { areaHa: 3, past })], groups });
const use = (by: PastUse["by"], lastDay: string, share = 1): PastUse => ({ by, lastDay, share });
const hay = { "hay-stock": { figures: { "cut-from": 2500 } } };

ruleCases("clean-ground", {
  keeps: [
    // 1,095 days of rest before day 1
    { name: "turkeys three years after hens", farm: after([turkeys], [use("layers", day(-1095), 0.1)]), rows: { Turkeys: "A*5" } },
    { name: "sheep on ground clean of worms", farm: after([ewes()], [use("goats", day(-60))]), rows: { Ewes: "A*5" } },
    { name: "cattle after sheep", farm: after([cows()], [use("sheep", day(-3))]), rows: { Cows: "A*5" } },
    { name: "young pigs where pigs had less than half of the cell", farm: after([pigs()], [use("pigs", "2026-12-31", 0.49)]), rows: { Pigs: "A*5" } },
    { name: "young pigs two years after pigs", farm: after([pigs()], [use("pigs", "2025-12-31")]), rows: { Pigs: "A*5" } },
    { name: "grown pigs in the year after pigs", farm: after([pigs({ animalClass: "sow" })], [use("pigs", "2026-12-31")]), rows: { Pigs: "A*5" } },
    { name: "the same with the figure at 0", farm: { ...after([pigs()], [use("pigs", "2026-12-31")]), rules: { "clean-ground": { figures: { "young-pigs-next-year": 0 } } } }, rows: { Pigs: "A*5" } },
    { name: "hay where birds were last year", farm: { ...after([cows()], [use("layers", "2026-12-31")]), rules: hay }, rows: { Cows: "yard*5" }, cuts: ["A hay 3"] },
    {
      name: "hay in the new year, birds in the old", farm: { ...after([hens()]), firstDay: "2027-12-30", rules: hay }, rows: { Hens: "A*2 yard*3" }, cuts: ["A hay 3"],
    },
    { name: "hay before birds come", farm: { ...after([hens()]), rules: hay }, rows: { Hens: "yard*3 A*2" }, cuts: ["A hay 3"] },
    { name: "a topping where birds were", farm: { ...after([hens()]), rules: hay }, rows: { Hens: "A*2 yard*3" }, cuts: ["A topping 3"] },
  ],
  breaks: [
    {
      name: "turkeys a day too soon after hens", farm: after([turkeys], [use("layers", day(-1094), 0.1)]), rows: { Turkeys: "A*5" },
      breaches: [{ group: "Turkeys", cell: "A", days: [1, 5], found: "1094 days after laying hens", allowed: "at least 1095 days after laying hens" }],
    },
    {
      name: "turkeys after this season's table chickens", farm: after([turkeys, hens({ name: "Broilers", kind: "broilers" })]), rows: { Broilers: "A*2 yard*3", Turkeys: "yard*4 A" },
      breaches: [{ group: "Turkeys", cell: "A", days: [5, 5], found: "2 days after table chickens", allowed: "at least 1095 days after table chickens" }],
    },
    {
      name: "sheep a day short of clean ground, at 0.2", farm: after([ewes()], [use("goats", day(-59))]), rows: { Ewes: "A*5" },
      charges: [{ group: "Ewes", cell: "A", days: [1, 5], money: 0.2, found: "59 days after sheep or goats, 60 days clean of worms" }],
    },
    {
      name: "goats three days after the season's own sheep", farm: after([ewes(), does]), rows: { Ewes: "A yard*4", Does: "yard*4 A" },
      charges: [{ group: "Does", cell: "A", days: [5, 5], money: 57 * 0.2, found: "3 days after sheep or goats, 60 days clean of worms" }],
    },
    {
      name: "made hard, worms are a breach", farm: { ...after([ewes()], [use("sheep", day(-59))]), rules: { "clean-ground": { use: "hard" } } }, rows: { Ewes: "A*5" },
      breaches: [{ group: "Ewes", cell: "A", days: [1, 5], found: "59 days after sheep or goats, 60 days clean of worms", allowed: "at least 60 days after sheep or goats" }],
    },
    {
      name: "young pigs on half the cell in the year after", farm: after([pigs()], [use("pigs", "2026-01-01", 0.5)]), rows: { Pigs: "A*5" },
      breaches: [{ group: "Pigs", cell: "A", days: [1, 5], found: "young pigs where pigs stood in 2026", allowed: "no young pigs in the year after pigs" }],
    },
    {
      name: "hay where birds were on the first of January", farm: { ...after([cows()], [use("geese", "2027-01-01", 0.2)]), rules: hay }, rows: { Cows: "yard*5" }, cuts: ["A hay 3"],
      breaches: [{ group: null, cell: "A", days: [3, 3], found: "hay from ground that birds used this year", allowed: "no hay after birds in the same year" }],
    },
    {
      name: "hay on the evening of the day birds come", farm: { ...after([hens()]), rules: hay }, rows: { Hens: "yard*2 A*3" }, cuts: ["A hay 3"],
      breaches: [{ group: null, cell: "A", days: [3, 3], found: "hay from ground that birds used this year", allowed: "no hay after birds in the same year" }],
    },
    {
      name: "hay the day after birds went", farm: { ...after([hens()]), rules: hay }, rows: { Hens: "A*2 yard*3" }, cuts: ["A hay 3"],
      breaches: [{ group: null, cell: "A", days: [3, 3], found: "hay from ground that birds used this year", allowed: "no hay after birds in the same year" }],
    },
  ],
});
