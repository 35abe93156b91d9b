import { hayMadeKg } from "../../science/hay.js";
import type { CellState } from "../cell-state.js";
import type { CellContext } from "./context.js";
import { advance, grow, morning } from "./days.js";

/** Cuts on the evening of `day`, to which the state is advanced. */
export function cut(context: CellContext, s: CellState, day: number, byOwner: boolean, makesHay: boolean): void {
  const { season, hooks, ground } = context;
  // Mown once is mown, whoever asks again.
  if (s.cuts.length > 0 && s.cuts[s.cuts.length - 2] === day) return;
  if (s.day > day) {
    // Nobody mows under feet, be it the owner's cut or the planner's.
    for (const hook of hooks.mow) hook(s, day, byOwner, makesHay);
    s.over += 10;
    s.cuts.push(day, s.open);
    return;
  }
  advance(context, s, day);
  grow(context, s, day + 1);
  for (const hook of hooks.mow) hook(s, day, byOwner, makesHay);
  const stubble = ground.stubble(s.cell, -1);
  if (makesHay) s.hayMade += hayMadeKg(s.cover, stubble, s.open, ground.makingLoss(s.cell, -1) / 100, season.scenario.hay.dryMatter);
  s.cuts.push(day, s.open);
  if (s.cover > stubble) s.cover = stubble;
  morning(context, s);
}
