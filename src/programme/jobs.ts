import type { Scenario } from "../farm/scenario.js";
import { buildSeason } from "../season/build-season.js";
import { raiseBound } from "./bound/ascent.js";
import { SeasonBound } from "./bound/bound.js";
import { cellSimulator } from "./cell-simulator.js";
import { Draft, type Keep } from "./draft.js";
import { pathTables } from "./path-tables.js";
import { HALVES } from "./rules/index.js";
import { anneal, type Spell } from "./search.js";
import { betterThan, snapshot, type Snapshot } from "./snapshot.js";
import type { PricingSolver } from "./solver.js";
import type { Trouble } from "./trouble.js";
import { verifiedSolver } from "./verified-solver.js";
import { lessen, type Lessened } from "./window/lessen.js";
import { allPasses, grazersPasses, mend, type Mended } from "./window/mend.js";

/** One seed's search from a given plan. */
export interface SearchJob {
  readonly kind: "search";
  readonly scenario: Scenario;
  readonly from: Snapshot;
  readonly keep: Keep | null;
  readonly steps: number;
  readonly seed: number;
  /** Rounds of polishing, each with windows over the grazers after it. */
  readonly polishes: number;
  /** Only whether there is a valid plan is asked: the first one ends the search. */
  readonly untilValid?: boolean;
  /** Without windows after each spell: enough to see about what a plan costs. */
  readonly searchOnly?: boolean;
}

/** The season's bound, coarse first, then fine. */
export interface BoundJob {
  readonly kind: "bound";
  readonly scenario: Scenario;
  readonly steps: number;
}

/** A plan mended window by window, from a given plan. */
export interface MendJob {
  readonly kind: "mend";
  readonly scenario: Scenario;
  readonly from: Snapshot;
  readonly keep: Keep | null;
  readonly rounds: number;
}

/** A plan that breaks rules, re-done window by window so that it breaks less. */
export interface LessenJob {
  readonly kind: "lessen";
  readonly scenario: Scenario;
  readonly from: Snapshot;
  /** Groups whose days are freed, one at a time. */
  readonly groups: readonly number[];
  readonly rounds: number;
}

export type Job = SearchJob | BoundJob | MendJob | LessenJob;

export type JobNews =
  | { readonly kind: "plan"; readonly plan: Snapshot }
  | { readonly kind: "bound"; readonly value: number }
  | { readonly kind: "mended"; readonly plan: Snapshot; readonly mended: Mended }
  | { readonly kind: "lessened"; readonly plan: Snapshot; readonly lessened: Lessened };

export interface JobWatch {
  stop(): boolean;
  news(news: JobNews): void;
  /** A step that came to nothing; the job goes on without it. */
  trouble?(trouble: Trouble): void;
}

/** Does a job to its end, or until it is stopped; the last news is the answer. Runs in any thread. */
export async function runJob(job: Job, watch: JobWatch, unverified: PricingSolver): Promise<JobNews> {
  const solver = verifiedSolver(unverified, (trouble) => watch.trouble?.(trouble));
  if (job.kind === "mend") return runMend(job, watch, solver);
  if (job.kind === "lessen") return runLessen(job, watch, solver);
  return job.kind === "search" ? runSearch(job, watch, solver) : runBound(job, watch);
}

function draftOf(scenario: Scenario, from: Snapshot, keep: Keep | null): Draft {
  const season = buildSeason(scenario);
  const draft = new Draft(season, cellSimulator(season), HALVES, keep);
  draft.load(from.place, from.cuts);
  return draft;
}

async function runMend(job: MendJob, watch: JobWatch, solver: PricingSolver): Promise<JobNews> {
  const draft = draftOf(job.scenario, job.from, job.keep);
  const mended = await mend(draft, allPasses(draft), solver, job.rounds, { stop: watch.stop, better: () => watch.news({ kind: "plan", plan: snapshot(draft) }) });
  return { kind: "mended", plan: snapshot(draft), mended };
}

async function runLessen(job: LessenJob, watch: JobWatch, solver: PricingSolver): Promise<JobNews> {
  const draft = draftOf(job.scenario, job.from, null);
  const lessened = await lessen(draft, job.groups, solver, job.rounds, { stop: watch.stop, better: () => watch.news({ kind: "plan", plan: snapshot(draft) }) });
  return { kind: "lessened", plan: snapshot(draft), lessened };
}

/** Share of a search's steps that go into the first, hot spell; the rest polishes what it found. */
const HOT_SHARE = 0.4;

/** A hot spell, then polishes from the best plan so far, each mended window by window. */
async function runSearch(job: SearchJob, watch: JobWatch, solver: PricingSolver): Promise<JobNews> {
  const draft = draftOf(job.scenario, job.from, job.keep);
  const hot = hotness(draft);
  let best = job.from;
  const stop = (): boolean => watch.stop() || (job.untilValid === true && best.over === 0);
  const take = (plan: Snapshot): void => {
    if (!betterThan(plan, best)) return;
    best = plan;
    watch.news({ kind: "plan", plan });
  };
  const spell = async (own: Spell, seed: number): Promise<void> => {
    draft.load(best.place, best.cuts);
    const found = anneal(draft, own, seed, { stop, better: take });
    take(found);
    if (found.over > 0 || job.searchOnly || stop()) return;
    draft.load(found.place, found.cuts);
    await mend(draft, grazersPasses(draft), solver, 1, { stop: watch.stop, better: () => take(snapshot(draft)) });
  };
  await spell({ steps: Math.round(job.steps * HOT_SHARE), hot, cold: hot / 20, lightPenalty: hot * 5, heavyPenalty: hot * 20 }, job.seed);
  const polish: Spell = { steps: Math.round((job.steps * (1 - HOT_SHARE)) / job.polishes), hot: hot * 0.4, cold: hot / 40, lightPenalty: hot * 10, heavyPenalty: hot * 20 };
  for (let i = 0; i < job.polishes && !stop(); i++) await spell(polish, job.seed * 1000 + i + 1);
  return { kind: "plan", plan: best };
}

/** Heat at which a search starts: about what a day in the yard costs, so that one is no wall. */
function hotness(draft: Draft): number {
  const { season, tables } = draft;
  let most = 1;
  season.groups.forEach((group, g) => {
    group.present.forEach((present, t) => (present ? (most = Math.max(most, tables.standMoney[g][t * tables.width])) : 0));
  });
  return Math.min(60, Math.max(8, most));
}

function runBound(job: BoundJob, watch: JobWatch): JobNews {
  const season = buildSeason(job.scenario);
  const simulator = cellSimulator(season);
  const tables = pathTables(season, HALVES);
  let value = -Infinity;
  const better = (bound: number): void => {
    if (bound <= value) return;
    value = bound;
    watch.news({ kind: "bound", value });
  };
  const seen = { stop: watch.stop, better };
  const coarse = raiseBound(new SeasonBound(season, simulator, tables, COARSE), Math.round(job.steps * 0.7), seen);
  if (!watch.stop()) raiseBound(new SeasonBound(season, simulator, tables, FINE), Math.round(job.steps * 0.3), seen, coarse.prices, { first: 0.01, last: 0.001 });
  return { kind: "bound", value };
}

/** Steps of cover levels in logit: coarse to climb, fine to finish. */
const COARSE = 0.06;
const FINE = 0.02;
