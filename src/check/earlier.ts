import type { Kind, PastUse, Scenario } from "../farm/scenario.js";
import type { CellSeason } from "./cell-record.js";
import { grazes } from "./parties.js";
import { positionOf, type SeasonDays } from "./season-days.js";
import type { CellStay } from "./stays.js";

/** Days between a use's last day and a later first day, both left out. */
export function restBetween(lastDay: number, firstDay: number): number {
  return firstDay - lastDay - 1;
}

/** The last day, before a day, of uses of a cell by any of these kinds; null when there is none. Negative: before the season. */
export function lastUseBefore(scenario: Scenario, days: SeasonDays, cell: CellSeason, before: number, kinds: (kind: Kind) => boolean): number | null {
  const used = [
    ...cell.stays.filter((stay) => kinds(scenario.groups[stay.group]!.kind)).map((stay) => stay.last),
    ...pastUses(cell, kinds).map((use) => positionOf(days, use.lastDay)),
  ].filter((last) => last < before);
  return used.length > 0 ? Math.max(...used) : null;
}

export function pastUses({ cell }: CellSeason, kinds: (kind: Kind) => boolean): readonly PastUse[] {
  return cell.past.filter((use) => use.by !== "hay" && use.by !== "litter" && kinds(use.by));
}

/** Ground that a strip group's stay takes, ha: whole positions. */
export function groundTaken(scenario: Scenario, stay: CellStay): number {
  const group = scenario.groups[stay.group]!;
  if (grazes(group)) return 0;
  return Math.ceil(stay.days / group.strip!.days) * group.strip!.areaHa;
}

/** Ground used by these kinds before a stay whose rest is not yet over, ha. */
export function groundResting(
  scenario: Scenario, days: SeasonDays, cell: CellSeason, stay: CellStay, kinds: (kind: Kind) => boolean, restAfter: (kind: Kind) => number,
): number {
  const short = (last: number, kind: Kind) => last < stay.first && restBetween(last, stay.first) < restAfter(kind);
  let area = 0;
  for (const earlier of cell.stays) {
    const { kind } = scenario.groups[earlier.group]!;
    if (kinds(kind) && short(earlier.last, kind)) area += groundTaken(scenario, earlier);
  }
  for (const use of pastUses(cell, kinds)) {
    if (short(positionOf(days, use.lastDay), use.by as Kind)) area += use.share * cell.cell.areaHa;
  }
  return area;
}
