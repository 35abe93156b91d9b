import type { Scenario } from "../farm/scenario.js";
import { buildSeason } from "../season/build-season.js";
import { raiseBound } from "./bound/ascent.js";
import { SeasonBound } from "./bound/bound.js";
import { cellSimulator } from "./cell-simulator.js";
import type { Keep } from "./draft.js";
import { pathTables } from "./path-tables.js";
import { HALVES } from "./rules/index.js";
import { draftOf, runSearch, type SearchJob } from "./search-job.js";
import { snapshot, type Snapshot } from "./snapshot.js";
import type { PricingSolver } from "./solver.js";
import type { Trouble } from "./trouble.js";
import { verifiedSolver } from "./verified-solver.js";
import { prove, type Proved, type ProveJob } from "./whole/prove.js";
import { lessen, type Lessened } from "./window/lessen.js";
import { allPasses, mend, type Mended } from "./window/mend.js";

export type { SearchJob } from "./search-job.js";

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

export type Job = SearchJob | BoundJob | MendJob | LessenJob | ProveJob;

export type JobNews =
  | { readonly kind: "plan"; readonly plan: Snapshot }
  | { readonly kind: "bound"; readonly value: number }
  | { readonly kind: "mended"; readonly plan: Snapshot; readonly mended: Mended }
  | { readonly kind: "lessened"; readonly plan: Snapshot; readonly lessened: Lessened }
  | ({ readonly kind: "proved" } & Proved);

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
  if (job.kind === "prove") return runProve(job, watch, solver);
  if (job.kind === "lessen") return runLessen(job, watch, solver);
  if (job.kind === "bound") return runBound(job, watch);
  return { kind: "plan", plan: await runSearch(job, { stop: watch.stop, better: (plan) => watch.news({ kind: "plan", plan }) }, solver) };
}

async function runProve(job: ProveJob, watch: JobWatch, solver: PricingSolver): Promise<JobNews> {
  const seen = { stop: watch.stop, better: (plan: Snapshot) => watch.news({ kind: "plan", plan }), bound: (value: number) => watch.news({ kind: "bound", value }) };
  return { kind: "proved", ...(await prove(job, solver, seen)) };
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
  const levels = season.cells.length * season.days > HUGE ? LEVELS.huge : LEVELS.usual;
  const coarse = raiseBound(new SeasonBound(season, simulator, tables, levels.coarse), Math.round(job.steps * 0.85), seen);
  if (!watch.stop()) raiseBound(new SeasonBound(season, simulator, tables, levels.fine), Math.round(job.steps * 0.15), seen, coarse.prices, { first: 0.01, last: 0.001 });
  return { kind: "bound", value };
}

/** Steps of cover levels in logit: coarse to climb, fine to finish; wider on farms of more cell-days than `HUGE`. */
const LEVELS = { usual: { coarse: 0.06, fine: 0.02 }, huge: { coarse: 0.15, fine: 0.1 } };
const HUGE = 10_000;
