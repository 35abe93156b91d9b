import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { Threads } from "../programme/threads.js";
import type { Effort } from "./effort.js";
import { givesOf, type Gives } from "./gives.js";
import type { Race } from "./race.js";
import { findWaysOut, type WayOut } from "./ways-out/find-ways-out.js";
import type { Clash } from "./ways-out/lifted-holds.js";
import { Prober } from "./ways-out/prober.js";

export type { Gives } from "./gives.js";
export type { WayOut } from "./ways-out/find-ways-out.js";

/** Why there is no plan, told by the one that breaks least, and what would make one possible. */
export interface Refusal {
  /** Every rule that has to give in that plan, where, when and by how much: the check's own breaches, by stay. */
  readonly gives: readonly Gives[];
  /** Days re-done at a time, one group at a time and over all the season, without a lesser breaking; 0 where some were left out. */
  readonly provenDays: number;
  readonly clash: Clash | null;
  /** The cheapest single changes found, each planned. */
  readonly waysOut: readonly WayOut[];
  /** Others that work, dearer as far as was looked. */
  readonly otherWays: readonly WayOut[];
}

/** What gives in a plan that was refused, and the ways out of it; looked for until the owner's stop or cap. */
export async function refusalOf(
  scenario: Scenario, { plan, report }: { readonly plan: Plan; readonly report: Report }, race: Race, threads: Threads, effort: Effort,
  stop: { readonly asked: boolean }, onProgress: (p: { seconds: number; cost: number; bound: number; looks: number }) => void,
): Promise<Refusal> {
  const gives = givesOf(plan, report.breaches);
  const provenDays = race.lessened?.provenDays ?? 0;
  if (!race.best || race.over) return { gives, provenDays, clash: null, waysOut: [], otherWays: [] };
  const ended = { get asked() { return stop.asked || race.over; } };
  const prober = new Prober(threads, effort, ended, race.best, (looks) => onProgress({ seconds: race.seconds, cost: Infinity, bound: race.lowest, looks }));
  const { clash, ways, others } = await findWaysOut(scenario, report.breaches, prober, effort);
  return { gives, provenDays, clash, waysOut: ways, otherWays: others };
}
