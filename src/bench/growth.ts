import type { Scenario } from "../farm/scenario.js";
import { runJob } from "../programme/jobs.js";
import { highsSolver } from "../solvers/highs.js";
import { dayIndexed } from "./day-indexed.js";
import { searchAlone } from "./search-alone.js";
import { draftByHand } from "./ways.js";

/** How one size fares with fixed steps. */
export interface Growth {
  readonly size: string;
  readonly handSeconds: number;
  readonly handCost: number;
  readonly cost: number;
  readonly searchSeconds: number;
  readonly bound: number;
  readonly boundSeconds: number;
  /** Columns of the day-indexed programme. */
  readonly columns: number;
  readonly memoryMb: number;
}

/** Sizes as cells/groups/days, one figure grown at a time. */
export const GROWN: readonly { readonly title: string; readonly farms: readonly string[] }[] = [
  { title: "more cells", farms: ["4/2/90", "8/2/90", "16/2/90", "32/2/90", "64/2/90"] },
  { title: "more groups", farms: ["24/1/120", "24/2/120", "24/4/120", "24/6/120", "24/8/120"] },
  { title: "more days", farms: ["12/3/45", "12/3/90", "12/3/180", "12/3/270", "12/3/365"] },
];

export const GROWTH_STEPS = { search: 60_000, bound: 40 };

/** Hand rule, search and bound of one farm with the same few steps for all. */
export async function growthOf(scenario: Scenario, size: string): Promise<Growth> {
  const timed = timer();
  const draft = draftByHand(scenario);
  const handCost = draft.cost;
  const handSeconds = timed();
  const { cost } = searchAlone(draft, GROWTH_STEPS.search, 1);
  const searchSeconds = timed();
  const answer = await runJob({ kind: "bound", scenario, steps: GROWTH_STEPS.bound }, { stop: () => false, news: () => undefined }, highsSolver());
  const boundSeconds = timed();
  const { columns } = dayIndexed(draft.season).model;
  const bound = answer.kind === "bound" ? answer.value : -Infinity;
  return { size, handSeconds, handCost, cost, searchSeconds, bound, boundSeconds, columns, memoryMb: process.resourceUsage().maxRSS / 1024 };
}

/** Seconds since it was last asked. */
function timer(): () => number {
  let before = performance.now();
  return () => {
    const seconds = (performance.now() - before) / 1000;
    before = performance.now();
    return seconds;
  };
}
