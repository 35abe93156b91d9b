import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Judged } from "./findings.js";
import { haulMoney, hasPen } from "./labour-money.js";
import type { Replay } from "./replay.js";
import { areaOver, areaShort, plain } from "./words.js";

/** Ground may lack this much by rounding, ha. */
const LEAST_HA = 1e-9;

/** Each week's positions fit the open ground; hauls of pens between fields have their price. */
export function checkPenSteps(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "pen-steps", replay.days);
  for (const { cell, lots } of replay.cells) {
    for (const { stay, first, last, wantedHa, openHa } of lots) {
      if (wantedHa - openHa <= LEAST_HA) continue;
      findings.breach(
        { group: scenario.groups[stay.group]!, cell, first, last },
        { found: `${areaOver(wantedHa)} of fresh ground wanted`, allowed: `at most ${areaShort(openHa)} open`, by: wantedHa - openHa },
      );
    }
  }
  for (const move of replay.labour.moves) {
    const group = scenario.groups[move.group]!;
    if (!move.hauled || !hasPen(group)) continue;
    findings.charge({ group, cell: scenario.cells[move.to]!, first: move.day, last: move.day }, {
      money: haulMoney(scenario, move), found: `a haul of ${plain(move.haulMinutes)} min`, allowed: "no haul",
    });
  }
  return findings.judged();
}
