import type { Plan } from "../plan/plan.js";

/** How much planning is done, counted in steps, so that the same effort gives the same plan on every machine. */
export interface Effort {
  readonly name: "quick" | "usual" | "long";
  readonly seed: number;
  /** Seconds after which planning ends with the best it has; null for no cap. */
  readonly capSeconds: number | null;
  /** Steps of its own in place of the name's. */
  readonly steps?: Steps;
  /** A plan to start from and stay close to, and the price of each group-day that differs from it. */
  readonly base?: { readonly plan: Plan; readonly price: number } | null;
}

export interface Steps {
  /** Searches from different seeds, and the steps of each. */
  readonly seeds: number;
  readonly search: number;
  /** Polishes of each search, windows after each. */
  readonly polishes: number;
  /** Steps of the bound's ascent. */
  readonly bound: number;
  /** Rounds of windows over the whole season. */
  readonly windowRounds: number;
}

const STEPS: Record<Effort["name"], Steps> = {
  quick: { seeds: 1, search: 500_000, polishes: 1, bound: 40, windowRounds: 0 },
  usual: { seeds: 2, search: 2_500_000, polishes: 1, bound: 170, windowRounds: 0 },
  long: { seeds: 8, search: 10_000_000, polishes: 2, bound: 1_200, windowRounds: 2 },
};

export function stepsOf(effort: Effort): Steps {
  return effort.steps ?? STEPS[effort.name];
}
