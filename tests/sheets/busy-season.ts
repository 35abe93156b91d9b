import type { Group } from "../../src/farm/scenario.js";
import { addDays } from "../../src/quantity/calendar.js";
import type { Charge } from "../../src/rules/rule.js";
import type { Sheet } from "../../src/sheets/made.js";
import { lifelike } from "../fixtures/lifelike.js";
import { group } from "../fixtures/tiny-farm.js";

const BULL_FROM = "2027-07-01";
const BULL_TO = "2027-08-31";

/** 18 cells and 205 days as a full plan has them: five groups, one beside the cows in summer, three yards in use, and more prices than any sheet holds. */
export function busySeason(): Sheet {
  const { scenario, plan, report, made } = lifelike();
  const { firstDay, lastDay } = scenario.season;
  const bull: Group = {
    ...group("Bull", { letter: "Cb", animalClass: "bull", head: 1, yard: "Bull pen", here: [scenario.season] }),
    runsWith: { with: "Cows", days: [{ firstDay: BULL_FROM, lastDay: BULL_TO }] },
  };
  const [cows, ...others] = scenario.groups;
  const beside = plan.stays.filter((stay) => stay.group === "Cows" && stay.firstDay >= BULL_FROM && stay.lastDay <= BULL_TO).map((stay) => ({ ...stay, group: "Bull" }));
  const inPen = [[firstDay, addDays(beside[0]!.firstDay, -1)], [addDays(beside.at(-1)!.lastDay, 1), lastDay]] as const;
  const penned = inPen.map(([from, to]) => ({ group: "Bull", cell: null, yard: "Bull pen", firstDay: from, lastDay: to }));
  const charges = [...report.charges, ...wants(scenario.cells.map((cell) => cell.name)), ...longGrass(scenario.cells.map((cell) => cell.name))];
  return {
    scenario: { ...scenario, groups: [cows!, bull, ...others], yards: [...scenario.yards, { name: "Bull pen", costPerDay: 1, room: null, open: [scenario.season] }] },
    plan: { ...plan, stays: [...plan.stays, ...beside, ...penned] },
    report: { ...report, charges, cost: charges.reduce((sum, charge) => sum + charge.money, 0) }, made,
  };
}

/** Six cells that want ground opened; four of them alike. */
function wants(cells: readonly string[]): readonly Charge[] {
  return cells.slice(0, 6).map((cell, i) => ({
    rule: "ground-wants", group: null, cell, firstDay: "2027-04-10", lastDay: "2027-10-31", money: 14 - i, found: i < 4 ? "0 % opened, all of it wished" : `${i} % opened, all of it wished`,
  }));
}

/** Long grass on walk days: in every cell five weeks on end. */
function longGrass(cells: readonly string[]): readonly Charge[] {
  return cells.flatMap((cell, i) => [0, 7, 14, 21, 28].map((days): Charge => ({
    rule: "upper-cover", group: null, cell, firstDay: addDays("2027-04-17", 7 * i + days), lastDay: addDays("2027-04-17", 7 * i + days), money: 0.3 + 0.02 * i, found: `${3000 + days} kg DM/ha, long from 3000`,
  })));
}
