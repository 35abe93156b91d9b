import { figureOf, isGrazer, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { daysText, plain } from "./words.js";

/** Days of each grazing stay; where next to nothing grows on its first day, no stay is too long. */
export function checkStayLimit(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "stay-limit", replay.days);
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    const cell = scenario.cells[stay.cell]!;
    if (!isGrazer(group.kind)) continue;
    const figure = (key: string) => figureOf(scenario, "stay-limit", key, cell.field, group.name);
    if (cell.growthByMonth[replay.days.months[stay.first]!]! <= (figure("nil-growth") ?? -1)) continue;
    const where = stayWhere(scenario, stay);
    const limit = figure("limit") ?? Infinity;
    const usual = figure(group.kind) ?? Infinity;
    if (stay.days > limit) findings.breach(where, { found: `a stay of ${daysText(stay.days)}`, allowed: `at most ${daysText(limit)}` });
    findings.charge(where, {
      money: Math.max(0, stay.days - usual) * (figure("price") ?? 0),
      found: `a stay of ${daysText(stay.days)}, ${plain(usual, 1)} usual`, allowed: `usually ${daysText(usual)}`,
    });
  }
  return findings.judged();
}
