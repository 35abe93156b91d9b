import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { coverSet, coverShort } from "./words.js";

/** Cover left after each day's grazing. Strips of birds and pigs leave none to judge. */
export function checkResidualCover(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "residual-cover", replay.days);
  for (const { cell, grazed } of replay.cells) {
    for (const { group: g, day, leftKgPerHa } of grazed) {
      const group = scenario.groups[g]!;
      const least = figureOf(scenario, "residual-cover", "grazers", cell.field, group.name) ?? 0;
      if (leftKgPerHa >= least - TOLERANCE) continue;
      findings.breach(
        { group, cell, first: day, last: day },
        { found: `${coverShort(leftKgPerHa)} left`, allowed: `at least ${coverSet(least)} left`, by: least - leftKgPerHa },
      );
    }
  }
  return findings.judged();
}
