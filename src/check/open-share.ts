import { figureOf, type Scenario } from "../farm/scenario.js";
import { findingsOf, type Judged } from "./findings.js";
import { grazes } from "./parties.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { plain, shortOf } from "./words.js";

/** Days of grazing behind a back fence on too small a share of the cell, where the shut ground is of the kind asked for. */
export function openShare(
  scenario: Scenario, replay: Replay, rule: "after-pigs" | "worked-ground", whose: string, asked: (shut: number) => boolean,
): Judged {
  const findings = findingsOf(scenario, rule, replay.days);
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    if (!grazes(group)) continue;
    const { cell, open, shut } = replay.cells[stay.cell]!;
    const least = figureOf(scenario, "worked-ground", "least-open", cell.field, group.name) ?? 0;
    for (let t = stay.first; t <= stay.last; t++) {
      const share = (open[t]! / cell.areaHa) * 100;
      if (!shut[t] || !asked(shut[t]!) || share >= least - TOLERANCE) continue;
      findings.breach(
        { group, cell, first: t, last: t },
        { found: `${plain(shortOf(share))} % open, ${whose} ground shut`, allowed: `at least ${plain(least, 1)} % open`, by: least - share },
      );
    }
  }
  return findings.judged();
}
