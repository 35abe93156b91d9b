import { figureOf, isBird, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Findings, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { isWalkDay } from "./walks.js";
import { coverOver, coverSet, plain } from "./words.js";

/** Birds on short ground, week by week of a stay; and grass grown too long, on each weekly walk. */
export function checkUpperCover(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "upper-cover", replay.days);
  replay.cells.forEach((_, c) => {
    birdsGround(scenario, replay, c, findings);
    longGrass(scenario, replay, c, findings);
  });
  return findings.judged();
}

function birdsGround(scenario: Scenario, replay: Replay, c: number, findings: Findings): void {
  const { cell, lots } = replay.cells[c]!;
  for (const { stay, first, last, coverKgPerHa, areaHa } of lots) {
    const group = scenario.groups[stay.group]!;
    if (!isBird(group.kind) || areaHa <= 0) continue;
    const figure = (key: string) => figureOf(scenario, "upper-cover", key, cell.field, group.name) ?? 0;
    const where = { group, cell, first, last };
    const found = `${coverOver(coverKgPerHa)} on new ground`;
    if (coverKgPerHa > figure("birds-barrier") + TOLERANCE) {
      findings.breach(where, { found, allowed: `at most ${coverSet(figure("birds-barrier"))}`, by: coverKgPerHa });
    }
    const above = Math.max(0, coverKgPerHa - figure("birds-wished"));
    findings.charge(where, {
      money: (above / 1000) * figure("birds-price"), found: `${found}, ${plain(figure("birds-wished"))} wished`,
      allowed: `at most ${coverSet(figure("birds-wished"))}`,
    });
  }
}

function longGrass(scenario: Scenario, replay: Replay, c: number, findings: Findings): void {
  const { cell, cover, open, inHand, closed } = replay.cells[c]!;
  const long = figureOf(scenario, "upper-cover", "long", cell.field, null) ?? Infinity;
  const price = figureOf(scenario, "upper-cover", "long-price", cell.field, null) ?? 0;
  for (let t = 0; t < replay.days.count; t++) {
    if (!isWalkDay(t) || !inHand[t] || closed[t] || cover[t]! <= long) continue;
    findings.charge({ group: null, cell, first: t, last: t }, {
      money: ((cover[t]! - long) / 1000) * open[t]! * price,
      found: `${coverOver(cover[t]!)}, long from ${plain(long)}`, allowed: `at most ${coverSet(long)}`,
    });
  }
}
