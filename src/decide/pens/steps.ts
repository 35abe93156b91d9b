import { addDays, type IsoDate } from "../../quantity/calendar.js";
import type { PenInCell } from "./pens-of-farm.js";

/** Days on one position of a cell's run. */
export interface PenStep {
  /** As it is numbered on the ground, from 1. */
  readonly number: number;
  readonly firstDay: IsoDate;
  readonly lastDay: IsoDate;
  /** Lane in walking order, from 1, and how far along it the position begins, m; null where the cell's shape is not known. */
  readonly lane: { readonly number: number; readonly alongM: number } | null;
}

/** Every position that a plan's stays stand on in a cell, by day; a run that is through begins again at its first. */
export function stepsIn({ taken, positions, layout }: PenInCell, daysEach: number): readonly PenStep[] {
  return (taken?.stays ?? []).flatMap(({ firstDay, lastDay, firstPosition, lastPosition }) =>
    Array.from({ length: lastPosition - firstPosition + 1 }, (_, i) => {
      const from = addDays(firstDay, i * daysEach);
      const until = addDays(from, daysEach - 1);
      const number = ((firstPosition + i - 1) % Math.max(1, positions)) + 1;
      return { number, firstDay: from, lastDay: until < lastDay ? until : lastDay, lane: layout.asIf ? null : laneOf(layout, number) };
    }));
}

/**
 * Where a position lies as the run is walked: its number on the ground, lane from 1, and m along that to where it begins; a run that is through
 * begins again at its first. Null where none fits.
 */
export function positionIn(layout: PenInCell["layout"], number: number): { readonly position: number; readonly number: number; readonly alongM: number } | null {
  const position = ((number - 1) % Math.max(1, layout.positions)) + 1;
  const lane = laneOf(layout, position);
  return lane && { position, ...lane };
}

function laneOf({ lanes, each, alongM }: PenInCell["layout"], position: number): PenStep["lane"] {
  let before = 0;
  for (const [i, { rectangles }] of lanes.entries()) {
    const rectangle = (position - 1) * each;
    if (rectangle < before + rectangles) return { number: i + 1, alongM: (rectangle - before) * alongM };
    before += rectangles;
  }
  return null;
}
