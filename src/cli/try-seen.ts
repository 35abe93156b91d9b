import type { Comparison } from "../decide/compare-plans.js";
import type { Trial } from "../decide/try-changes.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import type { Effort } from "./options.js";

/** A change as tried, beside the farm as it is; no comparison where one of the two has no plan. */
export interface ChangeSeen {
  readonly trial: Trial;
  readonly comparison: Comparison | null;
}

/** The plan that was started from, judged on the farm as it is. */
export interface GivenSeen {
  readonly cost: number;
  readonly breaches: number;
  /** Days of groups on which the farm as it is, planned from there, stands otherwise. */
  readonly daysOtherwise: number;
}

/** Everything that the words and the object about a trial are made from. */
export interface TrySeen {
  readonly scenario: Scenario;
  readonly asked: { readonly effort: Effort; readonly seed: number };
  readonly laidFirst: readonly string[];
  readonly base: Trial;
  readonly changes: readonly ChangeSeen[];
  readonly given: GivenSeen | null;
  readonly seconds: number;
  readonly files: readonly string[];
  readonly notes: readonly Finding[];
}

/** How far two searches of one farm ended apart at most, money; null where no farm has two. */
export function searchSpread(trials: readonly Trial[]): number | null {
  const spreads = trials.filter(({ searched }) => searched.length > 1).map(({ searched }) => searched.at(-1)! - searched[0]!);
  return spreads.length === 0 ? null : Math.max(...spreads);
}
