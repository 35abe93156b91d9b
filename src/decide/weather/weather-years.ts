import type { Scenario } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import type { Threads } from "../../programme/threads.js";
import type { LivedYear } from "./lived-year.js";
import { walkedPlan, walkThrough } from "./walked-plan.js";
import { drawnYear, steadyYear } from "./year.js";

/** How many years, by which chance. */
export interface YearsAsked {
  readonly years: number;
  readonly seed: number;
}

/** A plan walked through the usual year, in which nothing is late, and through years by chance, in the order drawn. */
export interface YearsLived {
  readonly usual: LivedYear;
  readonly years: readonly LivedYear[];
  /** True when the owner ended it before all years were walked. */
  readonly stopped: boolean;
}

/** Seconds between looks at the owner. */
const LOOK = 0.1;

/**
 * Walks a plan through years by chance. A year depends on the seed and its number alone, so that more years are the same
 * ones and others after them.
 */
export async function walkYears(
  scenario: Scenario, plan: Plan, asked: YearsAsked, threads: Pick<Threads, "now" | "sleep">, onYear: (done: number) => void, stop: { readonly asked: boolean },
): Promise<YearsLived> {
  const walked = walkedPlan(scenario, plan);
  const usual = walkThrough(walked, steadyYear(walked.season, 1));
  const years: LivedYear[] = [];
  let looked = threads.now();
  while (years.length < asked.years && !(stop.asked && years.length > 0)) {
    years.push(walkThrough(walked, drawnYear(walked.season, asked.seed, years.length)));
    if (threads.now() - looked < LOOK) continue;
    onYear(years.length);
    await threads.sleep(0);
    looked = threads.now();
  }
  return { usual, years, stopped: years.length < asked.years };
}
