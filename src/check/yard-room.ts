import type { Scenario, Yard } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { farmDay, findingsOf, type Findings, type Judged } from "./findings.js";
import { isYard, yardOf } from "./placing.js";
import type { Replay } from "./replay.js";
import { daysIn } from "./season-days.js";
import { counted, daysText, over, plain } from "./words.js";

/** Head in each yard, its open dates, and the price of a day there besides feed. */
export function checkYardRoom(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "yard-room", replay.days);
  for (const yard of scenario.yards) {
    const at = replay.yards.indexOf(yard.name);
    const head = new Float64Array(replay.days.count);
    for (const { places, alone } of replay.groups) {
      places.forEach((place, t) => {
        if (isYard(place) && yardOf(place) === at) head[t]! += alone.head[t]!;
      });
    }
    head.forEach((sum, t) => {
      if (yard.room === null || sum <= yard.room) return;
      findings.breach(farmDay(t), { found: `${counted(over(sum), "head", "head")} in ${yard.name}`, allowed: `at most ${plain(yard.room)} in ${yard.name}`, by: sum });
    });
    groupDays(replay, yard, at, findings);
  }
  return findings.judged();
}

function groupDays(replay: Replay, yard: Yard, at: number, findings: Findings): void {
  const open = daysIn(replay.days, yard.open);
  for (const { group, places, hosts } of replay.groups) {
    places.forEach((place, t) => {
      if (!isYard(place) || yardOf(place) !== at || hosts[t]! >= 0) return;
      const where = { group, cell: null, first: t, last: t };
      if (!open[t]) findings.breach(where, { found: `in ${yard.name} while it is shut`, allowed: `${yard.name} on its open dates` });
      findings.charge(where, { money: yard.costPerDay, found: (days) => `${daysText(days)} in ${yard.name}`, allowed: `no day in ${yard.name}` });
    });
  }
}
