import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { daysText, over, plain } from "./words.js";

/** Pig-days a hectare on the strip where a stay keeps pigs longest, and a last strip left before it is opened. */
export function checkPigPressure(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "pig-pressure", replay.days);
  for (const stay of replay.stays) {
    const { kind, strip, head, name } = scenario.groups[stay.group]!;
    if (kind !== "pigs" || !strip) continue;
    const figure = (key: string) => figureOf(scenario, "pig-pressure", key, scenario.cells[stay.cell]!.field, name);
    const most = figure("most") ?? Infinity;
    const last = stay.days % strip.days;
    const lastPressure = (head * last) / strip.areaHa;
    if (last > 0 && lastPressure < (figure("opened") ?? 0)) {
      findings.charge(stayWhere(scenario, stay), {
        money: figure("unopened-price") ?? 0, allowed: `${daysText(strip.days)} on each strip`, found: `${daysText(last)} on the last strip, ${daysText(strip.days)} wished`,
      });
    }
    const pressure = (head * Math.min(strip.days, stay.days)) / strip.areaHa;
    if (pressure <= most + TOLERANCE) continue;
    findings.breach(stayWhere(scenario, stay), { found: `${plain(over(pressure))} pig-days/ha`, allowed: `at most ${plain(most)} pig-days/ha` });
  }
  return findings.judged();
}
