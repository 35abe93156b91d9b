import type { Draft } from "./draft.js";

/** A draft's places and cuts, set aside. */
export interface Snapshot {
  readonly place: readonly Int16Array[];
  readonly cuts: readonly (readonly number[])[];
  readonly cost: number;
  readonly over: number;
}

export function snapshot(draft: Draft): Snapshot {
  return { place: draft.place.map((days) => days.slice()), cuts: draft.cuts.map((cuts) => [...cuts]), cost: draft.cost, over: draft.over };
}
