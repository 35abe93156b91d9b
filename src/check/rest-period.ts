import { figureOf, isGrazer, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { lastUseBefore, restBetween } from "./earlier.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { daysText, over, plain } from "./words.js";

/** Days between a grazing stay and the grazing before it in the same cell, by whichever grazers. */
export function checkRestPeriod(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "rest-period", replay.days);
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    if (!isGrazer(group.kind)) continue;
    const previous = lastUseBefore(scenario, replay.days, replay.cells[stay.cell]!, stay.first, isGrazer);
    if (previous === null) continue;
    const figure = (key: string) => figureOf(scenario, "rest-period", key, scenario.cells[stay.cell]!.field, group.name) ?? 0;
    const rest = restBetween(previous, stay.first);
    const where = stayWhere(scenario, stay);
    if (rest < figure("floor")) {
      findings.breach(where, { found: `${daysText(rest)} of rest`, allowed: `at least ${daysText(figure("floor"))} of rest` });
    }
    const usual = usualRest(replay.days.daysOfYear[stay.first]!, figure);
    findings.charge(where, {
      money: Math.max(0, usual - rest) * figure("price"),
      found: `${daysText(rest)} of rest, ${plain(over(usual))} usual`, allowed: `usually ${daysText(over(usual))} of rest`,
    });
  }
  return findings.judged();
}

/** The usual rest before a day of the year: the flush's, then a straight line to midsummer's. */
function usualRest(dayOfYear: number, figure: (key: string) => number): number {
  const from = figure("flush-until");
  const to = figure("midsummer-from");
  if (dayOfYear <= from) return figure("flush");
  if (dayOfYear >= to) return figure("midsummer");
  return figure("flush") + ((figure("midsummer") - figure("flush")) * (dayOfYear - from)) / (to - from);
}
