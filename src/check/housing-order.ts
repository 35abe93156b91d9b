import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { daysIn } from "./season-days.js";

/** No group of a kind that is ordered in stands in a cell while the order runs. */
export function checkHousingOrder(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "housing-order", replay.days);
  for (const { group, places } of replay.groups) {
    const ordered = daysIn(replay.days, scenario.housingOrders.filter((order) => order.kinds.includes(group.kind)));
    places.forEach((place, t) => {
      if (place < 0 || !ordered[t]) return;
      findings.breach({ group, cell: scenario.cells[place]!, first: t, last: t }, { found: "out on ground", allowed: "in the yard while housed by order" });
    });
  }
  return findings.judged();
}
