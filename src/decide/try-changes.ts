import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { Job } from "../programme/jobs.js";
import { placesOf } from "../programme/places-of.js";
import { planOf } from "../programme/plan-of.js";
import type { Snapshot } from "../programme/snapshot.js";
import type { Threads } from "../programme/threads.js";
import { buildSeason } from "../season/build-season.js";
import type { Effort, Steps } from "./effort.js";
import { inLanes, LANES } from "./lanes.js";
import { lessenBreaking } from "./least-broken.js";
import { judged, startOf, type Planned, type Progress, type Services } from "./plan-season.js";
import { Race } from "./race.js";
import { refusalOf } from "./refusal.js";
import { standingIn } from "./ways-out/prober.js";

/** A farm to be tried: as it is, or with a change laid over it. */
export interface TrialFarm {
  readonly title: string;
  readonly scenario: Scenario;
}

/** A farm as tried, with the best plan found for it. */
export interface Trial extends TrialFarm {
  readonly planned: Planned;
  /** Costs at which its own searches, from different seeds, ended; those that broke no rule. */
  readonly searched: readonly number[];
}

/** How hard all farms are looked at; every one the same. */
export interface TryEffort {
  readonly name: Effort["name"];
  readonly seed: number;
  readonly capSeconds: number | null;
  /** Steps of its own in place of the name's. */
  readonly steps?: TrySteps;
}

export interface TrySteps {
  /** Searches from different seeds, and the steps of each. */
  readonly seeds: number;
  readonly search: number;
  /** Steps of polishing the best of them, as many of polishing another farm's plan on this one, and as many of the better once more. */
  readonly polish: number;
  /** Windows after the last polish. */
  readonly windows: boolean;
  /** Steps of the ascent of the bound of the farm as it is; 0 for none. */
  readonly bound: number;
}

const STEPS: Record<Effort["name"], TrySteps> = {
  quick: { seeds: 1, search: 300_000, polish: 150_000, windows: false, bound: 0 },
  usual: { seeds: 2, search: 1_100_000, polish: 400_000, windows: false, bound: 25 },
  long: { seeds: 4, search: 6_000_000, polish: 2_000_000, windows: true, bound: 170 },
};

export function tryStepsOf(effort: TryEffort): TrySteps {
  return effort.steps ?? STEPS[effort.name];
}

/** Share of the seconds, where they are capped, for the searches; the rest is for trying plans on the other farms. */
const SEARCH_SHARE = 0.75;

/** One farm's searches under way. */
interface Runner extends TrialFarm {
  readonly byHand: Snapshot;
  readonly from: Snapshot;
  readonly race: Race;
  /** What its own searches ended with, in whatever order they did. */
  readonly searched: Snapshot[];
  readonly patience: Patience;
}

/** Ends a farm's jobs when the owner asks, or when its share of the seconds is spent. */
class Patience {
  until = Infinity;

  constructor(private readonly now: () => number, private readonly stop: { readonly asked: boolean }) {}

  get asked(): boolean {
    return this.stop.asked || this.now() >= this.until;
  }
}

/** How the owner watches, and ends, the trying. */
export interface TryWatch {
  readonly progress: (farm: number, progress: Progress) => void;
  readonly stop: { readonly asked: boolean };
}

/**
 * Plans a farm as it is (the first) and with changes, so that they can be compared: (1) the same searches for each, from
 * its hand rule's plan or a plan given; (2) where rules are still broken, what lessens that; (3) the best plan of any
 * other farm is tried on each, polished beside its own; (4) last, whatever plan of another farm is cheaper as it stands is taken, so
 * that a change which only gives more (time, kit, ground that asks for nothing) is never dearer than none, however the
 * searches went;
 * (5) the check judges; (6) a farm that has no plan is told what gives and the ways out.
 *
 * @param given a plan to start all from; null for none
 */
export async function tryChanges(farms: readonly TrialFarm[], given: Plan | null, { threads }: Pick<Services, "threads">, effort: TryEffort, watch: TryWatch): Promise<readonly Trial[]> {
  const steps = tryStepsOf(effort);
  const began = threads.now();
  const runners = farms.map((farm, i) => runnerOf(farm, given, threads, effort, (progress) => watch.progress(i, progress), watch.stop));
  await searchAll(runners, steps, effort, threads.now);
  for (const { patience } of runners) patience.until = began + (effort.capSeconds ?? Infinity);
  exchange(runners);
  for (const runner of runners) await lessened(runner, roadEffort(effort));
  await polishAll(runners, steps, effort);
  while (exchange(runners));
  const trials: Trial[] = [];
  for (const [i, runner] of runners.entries()) trials.push(await ended(runner, threads, roadEffort(effort), (progress) => watch.progress(i, progress)));
  return trials;
}

function runnerOf(
  { title, scenario }: TrialFarm, given: Plan | null, threads: Threads, effort: TryEffort, onProgress: (progress: Progress) => void, stop: { readonly asked: boolean },
): Runner {
  const { byHand, from } = startOf(scenario, { base: given && { plan: given, price: 0 } });
  const searched: Snapshot[] = [];
  const patience = new Patience(threads.now, stop);
  const race = new Race(hearing(threads, searched), { ...roadEffort(effort), capSeconds: null }, patience, onProgress);
  race.offer(from);
  return { title, scenario, byHand, from, race, searched, patience };
}

/** Threads that note what each search from heat ends with. */
function hearing(threads: Threads, searched: Snapshot[]): Threads {
  return {
    ...threads,
    start(job, heard) {
      const running = threads.start(job, heard);
      if (job.kind === "search" && !job.keep) void running.done.then(({ news }) => news?.kind === "plan" && searched.push(news.plan));
      return running;
    },
  };
}

/** The same searches for every farm: first seeds first, so that farms and not seeds are under way side by side. Windows come with the polishes. */
async function searchAll(runners: readonly Runner[], steps: TrySteps, effort: TryEffort, now: () => number): Promise<void> {
  const jobs = Array.from({ length: steps.seeds }, (_, i) => runners.map((runner): [Runner, Job] => [runner, searchJob(runner, steps.search, effort.seed * 100 + i)])).flat();
  const share = effort.capSeconds === null ? Infinity : (effort.capSeconds * SEARCH_SHARE * LANES) / jobs.length;
  await inLanes(jobs.map(([{ race, patience }, job]) => () => {
    patience.until = now() + share;
    return race.run([job]);
  }));
}

function searchJob({ scenario, from }: Runner, steps: number, seed: number): Job {
  return { kind: "search", scenario, from, keep: null, steps, polishes: 1, seed, searchOnly: true };
}

async function lessened({ scenario, race }: Runner, effort: Effort): Promise<void> {
  if (race.best && race.best.over > 0) await lessenBreaking(scenario, race, effort);
}

/** Takes over, as they stand, the plans of other farms that break less or are cheaper here; true where one was. */
function exchange(runners: readonly Runner[]): boolean {
  const plans = runners.map(bestPlan);
  const before = runners.map(({ race }) => race.best);
  runners.forEach((runner, i) => othersHere(runner, plans.filter((_, j) => j !== i)).forEach((plan) => runner.race.offer(plan)));
  return runners.some(({ race }, i) => race.best !== before[i]);
}

/**
 * Polishes on every farm its own best plan and, of the other farms' plans, the one that does best here, the bound beside that; then, where
 * windows are asked for, the better of the two once more, with windows.
 */
async function polishAll(runners: readonly Runner[], steps: TrySteps, effort: TryEffort): Promise<void> {
  const plans = runners.map(bestPlan);
  const seed = effort.seed * 100 + POLISH_SEED;
  const polishes = runners.flatMap((runner, i): [Runner, Job][] => {
    const [nearest] = othersHere(runner, plans.filter((_, j) => j !== i)).sort((a, b) => a.over - b.over || a.cost - b.cost);
    return [runner.race.best, nearest].flatMap((from) => (from ? [[runner, polishJob(runner.scenario, from, steps.polish, seed, true)]] : []));
  });
  const bound = runners.slice(0, steps.bound > 0 ? 1 : 0).map((runner): [Runner, Job] => [runner, { kind: "bound", scenario: runner.scenario, steps: steps.bound }]);
  await inLanes([...bound, ...polishes].map(([{ race }, job]) => () => race.run([job])));
  if (steps.windows) await inLanes(runners.map(({ scenario, race }) => () => race.run(race.best ? [polishJob(scenario, race.best, steps.polish, seed + 1, false)] : [])));
}

/** A plan to stay close to is polished, not searched from heat; here closeness has no price. */
function polishJob(scenario: Scenario, from: Snapshot, steps: number, seed: number, searchOnly: boolean): Job {
  return { kind: "search", scenario, from, keep: { place: from.place, price: 0 }, steps, polishes: 1, seed, searchOnly };
}

/** Apart from the seeds of the searches. */
const POLISH_SEED = 90;

function bestPlan({ scenario, race }: Runner): Plan {
  if (!race.best) throw new Error("a farm has its hand rule's plan at least");
  return planOf(buildSeason(scenario), race.best);
}

function othersHere({ scenario }: Runner, plans: readonly Plan[]): Snapshot[] {
  const season = buildSeason(scenario);
  return plans.map((plan) => standingIn(scenario, { ...placesOf(season, plan), cost: 0, over: 0 }));
}

/** A trial's effort as the rest of the road counts it. */
function roadEffort(effort: TryEffort): Effort & { readonly steps: Steps } {
  const { seeds, search, bound } = tryStepsOf(effort);
  return { name: effort.name, seed: effort.seed, capSeconds: null, steps: { seeds, search, polishes: 1, bound, windowRounds: 0 } };
}

async function ended({ title, scenario, byHand, race, searched, patience }: Runner, threads: Threads, effort: Effort, onProgress: (progress: Progress) => void): Promise<Trial> {
  const planned = judged(scenario, byHand, race);
  const costs = searched.filter(({ over }) => over === 0).map(({ cost }) => cost).sort((a, b) => a - b);
  const refusal = planned.kind === "plan" ? null : await refusalOf(scenario, planned, race, threads, effort, patience, onProgress);
  return { title, scenario, planned: { ...planned, refusal }, searched: costs };
}
