import type { Cell, Group, Scenario } from "../farm/scenario.js";
import { spanHolds } from "../quantity/calendar.js";
import type { Plan } from "../plan/plan.js";
import { findingsOf, type Fault, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";

/** Every day of a stay the cell is open, in hand and one the group may enter, and the group is out on ground. */
export function checkClosedDates(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "closed-dates", replay.days);
  for (const stay of replay.stays) {
    const group = scenario.groups[stay.group]!;
    const cell = scenario.cells[stay.cell]!;
    for (let t = stay.first; t <= stay.last; t++) {
      for (const fault of faultsOn(replay.days.dates[t]!, group, cell)) findings.breach({ group, cell, first: t, last: t }, fault);
    }
  }
  return findings.judged();
}

function faultsOn(date: string, group: Group, cell: Cell): Fault[] {
  const faults: Fault[] = cell.closed
    .filter((closure) => spanHolds(closure, date))
    .map(({ reason }) => ({ found: `closed: ${reason}`, allowed: "an open day" }));
  if (!spanHolds(cell.ours, date)) faults.push({ found: "not in hand", allowed: `${cell.ours.firstDay} to ${cell.ours.lastDay}` });
  if (!group.mayEnter.includes(cell.name)) faults.push({ found: `not open to ${group.name}`, allowed: `a cell that ${group.name} may enter` });
  if (!spanHolds(group.out, date)) faults.push({ found: "out on ground", allowed: `out from ${group.out.firstDay} to ${group.out.lastDay}` });
  return faults;
}
