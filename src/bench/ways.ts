import { checkPlan } from "../check/check-plan.js";
import { planningServices } from "../cli/services.js";
import { stepsOf, type Effort } from "../decide/effort.js";
import { planSeason } from "../decide/plan-season.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { cellSimulator } from "../programme/cell-simulator.js";
import { Draft } from "../programme/draft.js";
import { handRule } from "../programme/hand-rule.js";
import { runJob } from "../programme/jobs.js";
import { planOf } from "../programme/plan-of.js";
import { snapshot, type Snapshot } from "../programme/snapshot.js";
import type { Solver } from "../programme/solver.js";
import { buildSeason } from "../season/build-season.js";
import { highsSolver } from "../solvers/highs.js";
import { javascriptLpSolver } from "../solvers/javascript-lp-solver.js";
import { dayIndexed } from "./day-indexed.js";
import { measured, type Measured, type Moment } from "./measured.js";
import { searchAlone } from "./search-alone.js";

export interface Settings {
  readonly effort: Effort["name"];
  /** Seconds that the windows and each solver of the day-indexed programme have; nothing else is timed. */
  readonly seconds: number;
}

type Way = (scenario: Scenario, settings: Settings) => Promise<readonly Measured[]>;

/** All ways, in the order of the table. Each is measured in a process of its own. */
export const WAYS: Readonly<Record<string, Way>> = {
  hand: handAlone, search: searchThenWindows, road: wholeRoad, bound: boundAlone,
  highs: dayIndexedBy(highsSolver(), 250_000), javascript: dayIndexedBy(javascriptLpSolver(), 600),
};

const SEED = 1;
const now = (): number => performance.now() / 1000;
const memoryMb = (): number => process.resourceUsage().maxRSS / 1024;

/** Cost and breaches of a plan by the check. */
function judged(scenario: Scenario, plan: Plan): { readonly cost: number; readonly breaches: number } {
  const report = checkPlan(scenario, plan);
  return { cost: report.cost, breaches: report.breaches.length };
}

/** A draft that holds the hand rule's plan. */
export function draftByHand(scenario: Scenario): Draft {
  const season = buildSeason(scenario);
  const draft = new Draft(season, cellSimulator(season));
  handRule(draft);
  return draft;
}

function handAlone(scenario: Scenario): Promise<readonly Measured[]> {
  const began = now();
  const draft = draftByHand(scenario);
  const seconds = now() - began;
  const found = judged(scenario, planOf(draft.season, snapshot(draft)));
  return Promise.resolve([measured("hand rule", { ...found, seconds, firstPlanSeconds: found.breaches === 0 ? seconds : null, memoryMb: memoryMb() })]);
}

async function searchThenWindows(scenario: Scenario, { effort, seconds }: Settings): Promise<readonly Measured[]> {
  const steps = stepsOf({ name: effort, seed: SEED, capSeconds: null }).search;
  const began = now();
  const draft = draftByHand(scenario);
  const found = searchAlone(draft, steps, SEED);
  const first = measured("search alone", { ...judged(scenario, planOf(draft.season, found)), seconds: now() - began, work: `${words(steps)} steps`, memoryMb: memoryMb() });
  return [first, await windowsFrom(scenario, draft, found, seconds)];
}

async function windowsFrom(scenario: Scenario, draft: Draft, from: Snapshot, seconds: number): Promise<Measured> {
  const began = now();
  const stop = (): boolean => now() - began > seconds;
  const answer = await runJob({ kind: "mend", scenario, from, keep: null, rounds: 1 }, { stop, news: () => undefined }, highsSolver());
  const spent = now() - began;
  if (answer.kind !== "mended") throw new Error("mending answers with what it mended");
  const { windows, better } = answer.mended;
  const note = spent > seconds ? `ended after ${seconds} s` : "";
  return measured("windows after it", { ...judged(scenario, planOf(draft.season, answer.plan)), seconds: spent, work: `${windows} windows, ${better} better`, memoryMb: memoryMb(), note });
}

async function wholeRoad(scenario: Scenario, { effort }: Settings): Promise<readonly Measured[]> {
  const along: Moment[] = [];
  const planned = await planSeason(scenario, planningServices(), { name: effort, seed: SEED, capSeconds: null }, (moment) => along.push({ ...moment }), { asked: false });
  const byHand = judged(scenario, planned.handRulePlan);
  return [measured("whole road", {
    cost: planned.cost, breaches: planned.report.breaches.length, bound: planned.bound, seconds: planned.seconds, work: `${words(planned.steps)} steps`, memoryMb: memoryMb(),
    firstPlanSeconds: byHand.breaches === 0 ? (along[0]?.seconds ?? null) : null, checkMilliseconds: checkMilliseconds(scenario, planned.plan), along,
  })];
}

/** Checks in a row; the middle one counts. */
const CHECKS = 20;

function checkMilliseconds(scenario: Scenario, plan: Plan): number {
  const times = Array.from({ length: CHECKS }, () => {
    const began = performance.now();
    checkPlan(scenario, plan);
    return performance.now() - began;
  }).sort((a, b) => a - b);
  return (times[CHECKS / 2 - 1] + times[CHECKS / 2]) / 2;
}

async function boundAlone(scenario: Scenario, { effort }: Settings): Promise<readonly Measured[]> {
  const { bound: steps } = stepsOf({ name: effort, seed: SEED, capSeconds: null });
  const began = now();
  const answer = await runJob({ kind: "bound", scenario, steps }, { stop: () => false, news: () => undefined }, highsSolver());
  if (answer.kind !== "bound") throw new Error("the bound answers with a bound");
  return [measured("bound alone", { bound: answer.value, seconds: now() - began, work: `${words(steps)} steps`, memoryMb: memoryMb() })];
}

/** The whole season in one programme by one solver, unless it has more columns than the solver can hold. */
function dayIndexedBy(solver: Solver, mostColumns: number): Way {
  return async (scenario, { seconds: guardSeconds }) => {
    const way = `day by day, ${solver.name}`;
    const season = buildSeason(scenario);
    const began = now();
    const { model, places } = dayIndexed(season);
    const size = `${words(model.columns)} columns, ${words(model.rows.length)} rows`;
    if (model.columns > mostColumns) return [measured(way, { work: size, note: "not tried: too many columns" })];
    const solved = await solver.solve(model, { nodes: MOST_NODES, gap: 0.01, start: null, guardSeconds });
    const taken = { seconds: now() - began, memoryMb: memoryMb(), work: size };
    if (solved.kind === "failed") return [measured(way, { ...taken, note: `broke down: ${solved.why}` })];
    if (solved.kind === "infeasible" || solved.kind === "unbounded") return [measured(way, { ...taken, note: solved.kind })];
    const plan = solved.columns && planOf(season, { place: places(solved.columns), cuts: season.cells.map(() => []) });
    const found = plan ? judged(scenario, plan) : { cost: null, breaches: null };
    const note = `${solved.value === null ? "no plan" : `${solved.value.toFixed(2)} by its own account`}, ${solved.kind === "optimal" ? "its best" : `ended after ${guardSeconds} s`}`;
    return [measured(way, { ...taken, ...found, bound: solved.bound > 0 && Number.isFinite(solved.bound) ? solved.bound : null, work: `${size}, ${words(solved.nodes)} nodes`, note })];
  };
}

const MOST_NODES = 2 ** 31 - 1;

/** "250,000". */
function words(amount: number): string {
  return amount.toLocaleString("en-GB");
}
