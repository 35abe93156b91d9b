import { figureOf, isBird, type Scenario } from "../farm/scenario.js";
import type { CellSeason } from "./cell-record.js";
import { grazes } from "./parties.js";
import { TOLERANCE } from "./tolerance.js";

/** Ground that birds worked in a cell over the season, ha. */
export function workedHa(scenario: Scenario, { lots }: CellSeason): number {
  return lots.reduce((sum, lot) => sum + (isBird(scenario.groups[lot.stay.group]!.kind) ? lot.areaHa : 0), 0);
}

/** Ground that pigs opened, ha: positions held for their full days, where pigs stood thick enough to open it. */
export function openedHa(scenario: Scenario, { cell, stays }: CellSeason): number {
  let sum = 0;
  for (const stay of stays) {
    const group = scenario.groups[stay.group]!;
    if (group.kind !== "pigs" || grazes(group)) continue;
    const { areaHa, days } = group.strip!;
    const opens = figureOf(scenario, "pig-pressure", "opened", cell.field, group.name) ?? Infinity;
    if ((group.head * days) / areaHa >= opens - TOLERANCE) sum += Math.floor(stay.days / days) * areaHa;
  }
  return sum;
}
