import type { CutChange, Draft, Run } from "../draft.js";
import type { Random } from "../random.js";
import type { MoveSense } from "./sense.js";

/** A change to try: runs in order, and at most one cell's cuts. */
export interface Move {
  readonly runs: readonly Run[];
  readonly cut: CutChange | null;
}

/** Draws one kind of change; null when the chance found none. */
export type Proposer = (draft: Draft, sense: MoveSense, random: Random) => Move | null;

export const move = (...runs: Run[]): Move => ({ runs, cut: null });
