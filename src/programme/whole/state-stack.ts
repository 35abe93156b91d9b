import type { CellSimulator } from "../cell-simulator.js";
import type { CellState } from "../cell-state.js";

/** States to live on with, one for each depth of a walk, used again and again. */
export class StateStack {
  private readonly states: CellState[] = [];

  constructor(private readonly simulator: CellSimulator, private readonly cell: number) {}

  fresh(): CellState {
    const state = this.at(0);
    this.simulator.reset(state);
    return state;
  }

  /** A copy of a state in the place of a depth. */
  copy(from: CellState, depth: number): CellState {
    const to = this.at(depth);
    const { lots, lastOf, worked, nitrogenByYear, deposits, cuts, grass, charges } = to;
    Object.assign(to, from);
    lastOf.set(from.lastOf);
    nitrogenByYear.set(from.nitrogenByYear);
    grass.set(from.grass);
    charges.set(from.charges);
    to.lastOf = lastOf;
    to.nitrogenByYear = nitrogenByYear;
    to.grass = grass;
    to.charges = charges;
    to.lots = refill(lots, from.lots);
    to.worked = refill(worked, from.worked);
    to.deposits = refill(deposits, from.deposits);
    to.cuts = refill(cuts, from.cuts);
    return to;
  }

  private at(depth: number): CellState {
    while (this.states.length <= depth) this.states.push(this.simulator.fresh(this.cell));
    return this.states[depth];
  }
}

/** Lots and uses are written once and never changed: the list alone is copied. */
function refill<T>(to: T[], from: readonly T[]): T[] {
  to.length = from.length;
  for (let i = 0; i < from.length; i++) to[i] = from[i];
  return to;
}
