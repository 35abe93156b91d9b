import { checkPlan } from "../../check/check-plan.js";
import type { Scenario } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import { cellSimulator } from "../../programme/cell-simulator.js";
import { Draft } from "../../programme/draft.js";
import { handRule } from "../../programme/hand-rule.js";
import { placesOf } from "../../programme/places-of.js";
import { planOf } from "../../programme/plan-of.js";
import { snapshot } from "../../programme/snapshot.js";
import type { Threads } from "../../programme/threads.js";
import { AWAY, type Season } from "../../season/season.js";
import { inLanes } from "../lanes.js";
import { planNear, type NearPlan } from "../plan-near.js";
import { FIGURES, type Figure, type Turn } from "./figures.js";
import { walkYear } from "./walk.js";
import { walkedPlan } from "./walked-plan.js";
import { steadyYear } from "./year.js";

/** What changes when one figure is turned and the season is planned again from the plan there is. */
export interface Flip {
  readonly turn: Turn;
  /** False when no plan that keeps every rule was found. */
  readonly planned: boolean;
  /** Beside the same planning with the figure as it is. */
  readonly costMore: number;
  readonly hayMoreKg: number;
  readonly movesMore: number;
  /** Days of a group on which it stands elsewhere, and all days of groups. */
  readonly daysElsewhere: number;
  readonly days: number;
  /** Money that keeping to the plan there is costs more than the one made for the figure; null where keeping to it breaks rules. */
  readonly keptCostsMore: number | null;
}

export interface FigureFlips {
  readonly key: string;
  readonly words: string;
  readonly assumed: boolean;
  readonly flips: readonly Flip[];
}

/** Steps of one planning; its price of a day elsewhere only keeps the search by the plan. */
const NEAR = { steps: 200_000, keep: 0.01, searchOnly: true } as const;

/**
 * Turns each figure to half and double and plans the season again from the plan there is, two at a time: what flips, the
 * figure that matters most first. Short searches: what they find is near the plan, not the best there is.
 *
 * @returns null where the owner stopped it before it was done
 */
export async function whatFlips(
  scenario: Scenario, plan: Plan, threads: Threads, asked: { readonly seed: number; readonly steps?: number }, stop: { readonly asked: boolean },
): Promise<readonly FigureFlips[] | null> {
  const near = { ...NEAR, seed: asked.seed, steps: asked.steps ?? NEAR.steps };
  const turns = FIGURES.flatMap((figure) => [0.5, 2].map((times) => ({ figure, turned: figure.turned(scenario, times) })));
  const known = turns.flatMap(({ figure, turned }) => (turned ? [{ figure, turned }] : []));
  const [base, ...planned] = await inLanes([scenario, ...known.map(({ turned }) => turned.scenario)].map((farm) => () => again(farm, plan, threads, near, stop)));
  if (stop.asked || !base) return null;
  const flips = known.map(({ figure, turned }, i) => ({ figure, flip: flipOf(turned.turn, planned[i], base) }));
  const figures = FIGURES.map((figure) => figureFlips(scenario, figure, flips.filter((one) => one.figure === figure).map(({ flip }) => flip)));
  return figures.filter((figure) => figure.flips.length > 0).sort((a, b) => weightOf(b) - weightOf(a));
}

interface Again {
  readonly season: Season;
  readonly near: NearPlan;
  readonly kept: { readonly cost: number; readonly broken: boolean };
}

/** The plan there is, kept to as far as the farm allows; then planned again from there. */
async function again(farm: Scenario, plan: Plan, threads: Threads, near: Parameters<typeof planNear>[3], stop: { readonly asked: boolean }): Promise<Again> {
  const walked = walkedPlan(farm, plan);
  const kept = planOf(walked.season, walkYear(walked, farm, steadyYear(walked.season, 1)));
  const { cost, breaches } = checkPlan(farm, kept);
  const found = await planNear(farm, kept, threads, near, stop);
  // A short search may not mend what the year broke; that there is no plan is said only where none is found from a plan by eye either.
  const again = found.valid || stop.asked ? found : await planNear(farm, byEye(walked.season), threads, near, stop);
  return { season: walked.season, near: again.valid ? again : found, kept: { cost, broken: breaches.length > 0 } };
}

function byEye(season: Season): Plan {
  const draft = new Draft(season, cellSimulator(season));
  handRule(draft);
  return planOf(season, snapshot(draft));
}

function flipOf(turn: Turn, { season, near, kept }: Again, base: Again): Flip {
  const [place, other] = [placesOf(season, near.plan).place, placesOf(base.season, base.near.plan).place];
  const { measures } = near.report;
  let [days, elsewhere] = [0, 0];
  place.forEach((own, g) => own.forEach((at, t) => {
    if (at === AWAY) return;
    days++;
    if (at !== other[g][t]) elsewhere++;
  }));
  return {
    turn, planned: near.valid,
    costMore: near.cost - base.near.cost, hayMoreKg: measures.hayFedKg - base.near.report.measures.hayFedKg, movesMore: measures.moves - base.near.report.measures.moves,
    daysElsewhere: elsewhere, days, keptCostsMore: kept.broken ? null : Math.max(0, kept.cost - near.cost),
  };
}

function figureFlips({ assumed }: Scenario, figure: Figure, flips: readonly Flip[]): FigureFlips {
  return { key: figure.key, words: figure.words, assumed: assumed.some((row) => figure.assumed.test(row.key)), flips };
}

/** No plan at all weighs most, more than any money; then what it costs, one way or the other, not to have known the figure. */
function weightOf({ flips }: FigureFlips): number {
  return Math.max(...flips.map((flip) => (flip.planned ? Math.max(Math.abs(flip.costMore), flip.keptCostsMore ?? 0) : Number.MAX_VALUE)));
}
