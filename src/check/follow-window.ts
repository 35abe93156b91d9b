import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, stayWhere, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { daysIn } from "./season-days.js";
import { daysText, plain } from "./words.js";

/** Days between a leader's leaving a cell and its follower's coming; not asked while the follower is ordered in. */
export function checkFollowWindow(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "follow-window", replay.days);
  replay.groups.forEach(({ group, stays }) => {
    if (group.follows === null) return;
    const leader = scenario.groups.findIndex((g) => g.name === group.follows);
    const ordered = daysIn(replay.days, scenario.housingOrders.filter((order) => order.kinds.includes(group.kind)));
    for (const stay of stays) {
      if (ordered[stay.first]) continue;
      const figure = (key: string) => figureOf(scenario, "follow-window", key, scenario.cells[stay.cell]!.field, group.name) ?? 0;
      const left = replay.cells[stay.cell]!.stays.filter((s) => s.group === leader && s.last < stay.first).map((s) => s.last);
      const gap = stay.first - Math.max(-Infinity, ...left);
      if (gap >= figure("first") && gap <= figure("last")) continue;
      const window = `${plain(figure("first"))} to ${daysText(figure("last"))} after ${group.follows}`;
      findings.charge(stayWhere(scenario, stay), {
        money: figure("price"), allowed: window,
        found: left.length > 0 ? `${daysText(gap)} after ${group.follows}, ${window} wished` : `not after ${group.follows}, ${window} wished`,
      });
    }
  });
  return findings.judged();
}
