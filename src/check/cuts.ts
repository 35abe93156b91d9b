import type { Cell, Scenario } from "../farm/scenario.js";
import { isIsoDate } from "../quantity/calendar.js";
import type { Plan } from "../plan/plan.js";
import { positionOf, type SeasonDays } from "./season-days.js";

/** A cut on the evening of a day. */
export interface PlannedCut {
  readonly cut: "hay" | "topping";
  /** Whether the owner fixed it, by a hay closure or a hold. */
  readonly owners: boolean;
  /** Whether the plan lists it. */
  readonly listed: boolean;
}

/** Cuts by cell in the farm's order and day: the plan's, and those the owner fixed. */
export function plannedCuts(scenario: Scenario, plan: Plan, days: SeasonDays): Map<number, PlannedCut>[] {
  const cells = new Map(scenario.cells.map((cell, c) => [cell.name, c]));
  const cuts = scenario.cells.map((cell) => ownersCuts(scenario, cell, days));
  for (const { cell, day, cut } of plan.cuts) {
    const ofCell = cuts[cells.get(cell) ?? -1];
    const t = isIsoDate(day) ? positionOf(days, day) : -1;
    if (!ofCell || t < 0 || t >= days.count) continue;
    const before = ofCell.get(t);
    if (!before) ofCell.set(t, { cut, owners: false, listed: true });
    else if (before.owners) ofCell.set(t, { ...before, listed: before.listed || before.cut === cut });
    else if (cut === "hay") ofCell.set(t, { ...before, cut });
  }
  return cuts;
}

function ownersCuts(scenario: Scenario, cell: Cell, days: SeasonDays): Map<number, PlannedCut> {
  const cuts = new Map<number, PlannedCut>();
  const fix = (day: string, cut: "hay" | "topping") => {
    const t = positionOf(days, day);
    if (t >= 0 && t < days.count) cuts.set(t, { cut, owners: true, listed: false });
  };
  if (cell.mow) for (const closure of cell.closed) if (closure.reason === "hay") fix(closure.lastDay, "hay");
  for (const hold of scenario.holds) if (hold.cut !== null && hold.cell === cell.name) fix(hold.days.lastDay, hold.cut);
  return cuts;
}
