import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Findings, type Judged } from "./findings.js";
import { yardHayKg } from "./hay-fed.js";
import { isYard } from "./placing.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { daysText, over, plain, shortOf } from "./words.js";

/** What is eaten and trodden stands in the cell; days in a yard are fed in hay and charged. */
export function checkDemandMet(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "demand-met", replay.days);
  for (const { cell, grazed, lots } of replay.cells) {
    for (const { group, day, wantedKg, standingKg } of grazed) {
      judge(findings, { group: scenario.groups[group]!, cell, first: day, last: day }, wantedKg, standingKg, cell.areaHa);
    }
    for (const { stay, first, last, wantedKg, standingKg, areaHa } of lots) {
      judge(findings, { group: scenario.groups[stay.group]!, cell, first, last }, wantedKg, standingKg, areaHa);
    }
  }
  hayCharges(scenario, replay, findings);
  return findings.judged();
}

function judge(findings: Findings, where: Parameters<Findings["breach"]>[0], wantedKg: number, standingKg: number, areaHa: number): void {
  if (wantedKg - standingKg <= TOLERANCE * areaHa) return;
  findings.breach(where, {
    found: `${plain(over(wantedKg))} kg DM eaten and trodden, ${plain(shortOf(standingKg))} standing`,
    allowed: "no more than stands", by: wantedKg - standingKg,
  });
}

function hayCharges(scenario: Scenario, replay: Replay, findings: Findings): void {
  for (const season of replay.groups) {
    for (let t = 0; t < replay.days.count; t++) {
      if (season.hosts[t]! >= 0 || !isYard(season.places[t]!)) continue;
      const kg = yardHayKg(scenario, season, t);
      findings.charge({ group: season.group, cell: null, first: t, last: t }, {
        money: kg * scenario.prices.hayPerKg, amount: kg, allowed: "no hay",
        found: (days, sum) => `${daysText(days)} in the yard, ${plain(sum)} kg of hay`,
      });
    }
  }
}
