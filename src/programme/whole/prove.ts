import type { Scenario } from "../../farm/scenario.js";
import { buildSeason } from "../../season/build-season.js";
import { SeasonBound } from "../bound/bound.js";
import { cellSimulator } from "../cell-simulator.js";
import { Draft } from "../draft.js";
import { snapshot, type Snapshot } from "../snapshot.js";
import type { PricingSolver } from "../solver.js";
import { ProofTree, type Proof, type ProofLimits, type ProofWatch } from "./tree.js";
import { WholeBound } from "./whole-bound.js";

/** A valid plan of a small farm, to be proven the best there is, or made better. */
export interface ProveJob {
  readonly kind: "prove";
  readonly scenario: Scenario;
  readonly from: Snapshot;
  /** Most steps of the bound's ascent. */
  readonly steps: number;
}

export interface Proved {
  readonly plan: Snapshot;
  readonly proof: Proof;
}

/** Cells x groups x days of the largest farm that is tried. */
const MOST_PLACES = 800;
const MOST_STEPS = 20_000;

/** The job that tries to prove a plan the best there is, in so many steps x cells x groups x days; null where the farm is too large for it. */
export function proveJob(scenario: Scenario, from: Snapshot, work: number): ProveJob | null {
  const places = scenario.cells.length * from.place.reduce((sum, days) => sum + days.length, 0);
  if (places === 0 || places > MOST_PLACES || from.over > 0) return null;
  return { kind: "prove", scenario, from, steps: Math.min(MOST_STEPS, Math.round(work / places)) };
}

/** Steps of cover levels in logit: coarse, since cards are lived exactly. */
const LEVELS = 0.06;

/** Splits and lists until no better plan is left, or steps are spent. */
export async function prove(job: ProveJob, solver: PricingSolver, watch: ProofWatch, limits: Omit<ProofLimits, "steps"> = LIMITS): Promise<Proved> {
  const season = buildSeason(job.scenario);
  const draft = new Draft(season, cellSimulator(season));
  draft.load(job.from.place, job.from.cuts);
  const whole = new WholeBound(new SeasonBound(season, draft.simulator, draft.tables, LEVELS));
  const proof = await new ProofTree(draft, whole, solver, { ...limits, steps: job.steps }, watch).prove(whole.zero());
  return { plan: snapshot(draft), proof };
}

const LIMITS = { cards: 3000, listing: 8000, choice: 9000, nodes: 500, guardSeconds: 20 };
