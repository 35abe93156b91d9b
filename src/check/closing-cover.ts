import { figureOf, isGrazer, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Findings, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { coverSet, coverShort, daysText, plain } from "./words.js";

/** Cover after the last day, and grazing on wet ground shortly before it. */
export function checkClosingCover(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "closing-cover", replay.days);
  const end = replay.days.count;
  for (const { cell, cover, open, inHand } of replay.cells) {
    if (!inHand[end - 1]) continue;
    const figure = (key: string) => figureOf(scenario, "closing-cover", key, cell.field, null) ?? 0;
    findings.charge({ group: null, cell, first: end - 1, last: end - 1 }, {
      money: (Math.max(0, figure("wish") - cover[end]!) / 1000) * open[end]! * figure("price"),
      found: `${coverShort(cover[end]!)} at the end, ${plain(figure("wish"))} wished`, allowed: `at least ${coverSet(figure("wish"))}`,
    });
  }
  wetGround(scenario, replay, findings);
  return findings.judged();
}

function wetGround(scenario: Scenario, replay: Replay, findings: Findings): void {
  const end = replay.days.count;
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    const cell = scenario.cells[stay.cell]!;
    if (!isGrazer(group.kind) || !cell.wetGround) continue;
    const figure = (key: string) => figureOf(scenario, "closing-cover", key, cell.field, group.name) ?? 0;
    const first = Math.max(stay.first, end - figure("wet-days"));
    const days = stay.last - first + 1;
    if (days <= 0) continue;
    findings.charge({ group, cell, first, last: stay.last }, {
      money: days * figure("wet-price"), found: `${daysText(days)} on wet ground late in the season`, allowed: "none",
    });
  }
}
