import { figureOf, isGrazer, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { daysText } from "./words.js";

/** Days of pigs and grazers without shade in the hot months, which may run over the year's end. */
export function checkShade(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "shade", replay.days);
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    const cell = scenario.cells[stay.cell]!;
    const pigs = group.kind === "pigs";
    if (cell.shade || (!pigs && !isGrazer(group.kind))) continue;
    const figure = (key: string) => figureOf(scenario, "shade", key, cell.field, group.name) ?? 0;
    const price = figure(pigs ? "pigs-price" : "grazers-price");
    for (let t = stay.first; t <= stay.last; t++) {
      if (!isHot(replay.days.months[t]! + 1, figure("first-month"), figure("last-month"))) continue;
      findings.charge({ group, cell, first: t, last: t }, {
        money: price, found: (days) => `${daysText(days)} without shade`, allowed: "shade in the hot months",
      });
    }
  }
  return findings.judged();
}

function isHot(month: number, first: number, last: number): boolean {
  return first <= last ? first <= month && month <= last : month >= first || month <= last;
}
