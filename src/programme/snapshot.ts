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

/** True when a plan breaks less than another, or as little and costs less. */
export function betterThan(plan: Snapshot, other: Snapshot): boolean {
  return plan.over < other.over - 1e-9 || (plan.over <= other.over && plan.cost < other.cost - 1e-9);
}
