import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Judged } from "./findings.js";
import { grazes } from "./parties.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { over, plain } from "./words.js";

/** Live weight of grazers on the open ground of their cell, each day. */
export function checkDensityCeiling(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "density-ceiling", replay.days);
  for (const stay of replay.stays) {
    const { group, party } = replay.groups[stay.group]!;
    const { cell, open } = replay.cells[stay.cell]!;
    const most = figureOf(scenario, "density-ceiling", "most", cell.field, group.name);
    if (most === null || !grazes(group)) continue;
    for (let t = stay.first; t <= stay.last; t++) {
      const density = party.weightKg[t]! / open[t]!;
      if (density <= most + TOLERANCE) continue;
      const found = open[t]! > 0 ? `${plain(over(density, 10))} kg/ha of live weight` : "live weight on no open ground";
      findings.breach({ group, cell, first: t, last: t }, { found, allowed: `at most ${plain(most)} kg/ha`, by: density });
    }
  }
  return findings.judged();
}
