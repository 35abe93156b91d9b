import type { Scenario } from "../farm/scenario.js";
import type { Placing } from "./placing.js";
import type { DayRange } from "./season-days.js";

/** A group's days in a row in one cell, days in company with a host left out. Positions in the farm's lists. */
export interface CellStay extends DayRange {
  readonly group: number;
  readonly cell: number;
  readonly days: number;
}

/** All stays in cells, by first day, then group in the farm's order. */
export function cellStays(scenario: Scenario, { places, hosts }: Placing): CellStay[] {
  const stays: CellStay[] = [];
  for (let group = 0; group < scenario.groups.length; group++) {
    const at = (t: number) => (hosts[group]![t]! >= 0 ? -1 : (places[group]![t] ?? -1));
    const count = places[group]!.length;
    for (let first = 0; first < count; ) {
      const cell = at(first);
      let last = first;
      while (last + 1 < count && at(last + 1) === cell) last++;
      if (cell >= 0) stays.push({ group, cell, first, last, days: last - first + 1 });
      first = last + 1;
    }
  }
  return stays.sort((a, b) => a.first - b.first || a.group - b.group);
}
