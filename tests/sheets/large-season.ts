import type { Kind } from "../../src/farm/scenario.js";
import type { Plan } from "../../src/plan/plan.js";
import { orderedPlan } from "../../src/plan/standings.js";
import { addDays } from "../../src/quantity/calendar.js";
import { madeDates, type Sheet } from "../../src/sheets/made.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { TINY_MADE, TINY_REPORT } from "../golden/tiny-season.js";

const FIRST = "2027-01-04";
const DAYS = 400;

/** Eight groups, three of them second ones of a kind; names as long as they may be, in other letters, and made to break out of the page. */
const GROUPS: readonly (readonly [name: string, letter: string, kind: Kind])[] = [
  ["Suckler cows with their spring calves and last year's heifers", "C", "cattle"], ["Молодняк крупного рогатого скота", "Cy", "cattle"],
  ["<script>alert(1)</script>", "S", "sheep"], ["Ewe lambs & \"tups\"", "Sy", "sheep"], ["Gäns' & Øænder", "E", "geese"], ["Ziegen im Oberdorf", "G", "goats"],
  ["Hens", "L", "layers"], ["Young hens", "Ly", "layers"],
];

/** 400 days, 40 cells in five fields, eight groups: more than one sheet holds any way. */
export function largeSeason(): Sheet {
  const cells = Array.from({ length: 40 }, (_, i) => cell(`${"ABCDE"[Math.floor(i / 8)]!}${(i % 8) + 1}`, { field: ["Home", "Обратная сторона", "Far field beyond the second brook and the old mill", "<b>Top</b>", "E"][Math.floor(i / 8)]! }));
  const groups = GROUPS.map(([name, letter, kind]) => group(name, { kind, letter, animalClass: "" }));
  const scenario = tinyFarm({ days: DAYS, firstDay: FIRST, cells, groups, more: { farm: "Long Riggs & High Riggs, with the ground over the water <i>" } });
  const stays = groups.flatMap((one, i) => Array.from({ length: Math.floor(DAYS / 5) }, (_, k) => ({
    group: one.name, cell: cells[(i * 5 + k * 3) % 40]!.name, yard: null, firstDay: addDays(FIRST, 5 * k), lastDay: addDays(FIRST, 5 * k + 4),
  })));
  const plan: Plan = orderedPlan(stays, [], scenario);
  return { scenario, plan, report: { ...TINY_REPORT, firstDay: FIRST, cells: [], charges: [] }, made: { ...TINY_MADE, ...madeDates("2027-02-01") } };
}
