/** What one way of planning came to on one farm. Null where a way has no such figure. */
export interface Measured {
  readonly way: string;
  readonly cost: number | null;
  /** Breaches that the check finds in the way's plan. */
  readonly breaches: number | null;
  /** No plan can cost less, as this way proves it. */
  readonly bound: number | null;
  readonly seconds: number;
  readonly firstPlanSeconds: number | null;
  readonly work: string;
  readonly memoryMb: number | null;
  readonly checkMilliseconds: number | null;
  readonly note: string;
  /** Best plan and bound as they came. */
  readonly along: readonly Moment[];
}

export interface Moment {
  readonly seconds: number;
  readonly cost: number;
  readonly bound: number;
}

export interface FarmMeasured {
  readonly farm: string;
  readonly size: string;
  readonly ways: readonly Measured[];
}

export function measured(way: string, more: Partial<Measured>): Measured {
  return { way, cost: null, breaches: null, bound: null, seconds: 0, firstPlanSeconds: null, work: "", memoryMb: null, checkMilliseconds: null, note: "", along: [], ...more };
}
