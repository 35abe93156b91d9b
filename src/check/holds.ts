import type { Cell, Hold, Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { IsoDate } from "../quantity/calendar.js";
import { findingsOf, type Findings, type Judged } from "./findings.js";
import { placeText, yardPlace } from "./placing.js";
import type { Replay } from "./replay.js";
import { rangeIn } from "./season-days.js";

/** "4 July". */
const dayInWords = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", timeZone: "UTC" });

/** Held days are in the held place, and the cuts that the owner fixed are in the plan. */
export function checkHolds(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "holds", replay.days);
  for (const hold of scenario.holds) heldPlace(scenario, replay, hold, findings);
  for (const { cell, cuts } of replay.cells) {
    for (const { day, cut, owners, listed } of cuts) {
      if (!owners || listed) continue;
      findings.breach({ group: null, cell, first: day, last: day }, { found: "no cut in the plan", allowed: fixedCut(cell, cut, replay.days.dates[day]!) });
    }
  }
  return findings.judged();
}

function heldPlace(scenario: Scenario, replay: Replay, hold: Hold, findings: Findings): void {
  const season = replay.groups.find(({ group }) => group.name === hold.group);
  const range = rangeIn(replay.days, hold.days);
  if (!season || !range) return;
  const held = hold.cell !== null ? scenario.cells.findIndex((cell) => cell.name === hold.cell) : yardPlace(replay.yards.indexOf(hold.yard ?? ""));
  for (let t = range.first; t <= range.last; t++) {
    const place = season.places[t]!;
    if (!season.here[t] || place === held) continue;
    findings.breach(
      { group: season.group, cell: place >= 0 ? scenario.cells[place]! : null, first: t, last: t },
      { found: placeText(scenario, replay.yards, place), allowed: `${placeText(scenario, replay.yards, held)}, as held` },
    );
  }
}

/** Who fixed a cut, in words: the hay closure that ends that day, or a hold. */
function fixedCut(cell: Cell, cut: "hay" | "topping", day: IsoDate): string {
  const closed = cut === "hay" && cell.closed.some(({ reason, lastDay }) => reason === "hay" && lastDay === day);
  return closed ? `${cell.name} is closed for hay to ${dayInWords.format(new Date(day))} and cut that day` : `cut for ${cut}, as held`;
}
