import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { farmDay, findingsOf, stayWhere, type Findings, type Judged } from "./findings.js";
import { labourMoney } from "./labour-money.js";
import type { Replay } from "./replay.js";
import type { CellStay } from "./stays.js";
import { TOLERANCE } from "./tolerance.js";
import { daysText, over, plain } from "./words.js";

/** Water in the cell or within a walk, or carted at a price and within what can be carted. */
export function checkWater(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "water", replay.days);
  for (const stay of replay.stays) ofStay(scenario, stay, findings);
  carted(scenario, replay, findings);
  return findings.judged();
}

function ofStay(scenario: Scenario, stay: CellStay, findings: Findings): void {
  const where = stayWhere(scenario, stay);
  const { water, waterWalkM, field } = scenario.cells[stay.cell]!;
  const figure = (key: string) => figureOf(scenario, "water", key, field, scenario.groups[stay.group]!.name);
  const free = figure("walk-free") ?? Infinity;
  const most = figure("walk-most") ?? Infinity;
  if (water === "none") findings.breach(where, { found: "no water", allowed: "water, or ground it can be carted to" });
  if (waterWalkM > most) findings.breach(where, { found: `${plain(over(waterWalkM))} m to water`, allowed: `at most ${plain(most)} m` });
  findings.charge(where, {
    money: (Math.max(0, waterWalkM - free) / 100) * (figure("walk-price") ?? 0) * stay.days,
    found: `${daysText(stay.days)} of ${plain(waterWalkM)} m to water, ${plain(free)} free`, allowed: `at most ${plain(free)} m`,
  });
  if (water !== "carted") return;
  findings.charge(where, {
    money: labourMoney(scenario, figure("cart-minutes") ?? 0) * stay.days, found: `${daysText(stay.days)} of carting water`, allowed: "no carting",
  });
}

function carted(scenario: Scenario, { days, stays, groups }: Replay, findings: Findings): void {
  const most = figureOf(scenario, "water", "carted-most", null, null);
  if (most === null) return;
  const litres = new Float64Array(days.count);
  for (const stay of stays) {
    if (scenario.cells[stay.cell]!.water !== "carted") continue;
    for (let t = stay.first; t <= stay.last; t++) litres[t]! += groups[stay.group]!.party.waterL[t]!;
  }
  litres.forEach((sum, t) => {
    if (sum > most + TOLERANCE) findings.breach(farmDay(t), { found: `${plain(over(sum))} L carted`, allowed: `at most ${plain(most)} L`, by: sum });
  });
}
