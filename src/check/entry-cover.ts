import { figureOf, isBird, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import { grazes } from "./parties.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { coverSet, coverShort, plain } from "./words.js";

/** Cover on the first morning of each grazing stay, lower at a price on spring's first pass; pigs theirs, birds none. */
export function checkEntryCover(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "entry-cover", replay.days);
  const grazedBefore = new Set<number>();
  for (const stay of replay.stays) {
    const where = stayWhere(scenario, stay);
    const group = scenario.groups[stay.group]!;
    const figure = (key: string) => figureOf(scenario, "entry-cover", key, scenario.cells[stay.cell]!.field, group.name) ?? 0;
    const stands = replay.cells[stay.cell]!.cover[stay.first]!;
    const grazing = grazes(group);
    const firstPass = grazing && !grazedBefore.has(stay.cell) && stay.first < figure("first-pass-days");
    if (grazing) grazedBefore.add(stay.cell);
    if (isBird(group.kind)) continue;
    const least = group.kind === "pigs" ? figure("pigs") : firstPass ? figure("first-pass") : figure("grazers");
    if (stands < least - TOLERANCE) {
      findings.breach(where, { found: `${coverShort(stands)} on the first morning`, allowed: `at least ${coverSet(least)}` });
    }
    if (!firstPass || group.kind === "pigs") continue;
    const shortTonnes = (Math.max(0, figure("grazers") - stands) / 1000) * replay.cells[stay.cell]!.open[stay.first]!;
    findings.charge(where, {
      money: shortTonnes * figure("first-pass-price"),
      found: `${coverShort(stands)} on spring's first pass, ${plain(figure("grazers"))} usual`, allowed: `at least ${coverSet(figure("grazers"))}`,
    });
  }
  return findings.judged();
}
