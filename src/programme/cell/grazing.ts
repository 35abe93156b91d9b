import type { CellState } from "../cell-state.js";
import type { CellContext } from "./context.js";
import { grow, morning } from "./days.js";

/** Open ground that is none, ha: grazing on it breaks rules by a number that can be added up and taken off again. */
const NO_GROUND = 1e-6;

/** Lives a grazing stay day by day, from its first morning to the morning after it. */
export function graze(context: CellContext, s: CellState, g: number, first: number, last: number): void {
  const { season, hooks, ground } = context;
  for (const hook of hooks.graze) hook(s, g, first, last);
  const { taken } = season.groups[g];
  const least = ground.leastStanding(s.cell, g);
  for (let t = first; t <= last; t++) {
    const before = s.cover;
    s.cover -= taken[t] / Math.max(s.open, NO_GROUND);
    for (const hook of hooks.bite) hook(s, g, t);
    // No mouth takes the last of it; nor does it grow by being left.
    if (s.cover < least) s.cover = Math.min(before, least);
    grow(context, s, t + 1);
    morning(context, s);
  }
  s.lastGrazed = last;
  s.grazedThisSeason = true;
}
