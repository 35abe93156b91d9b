import type { Scenario } from "../farm/scenario.js";
import { buildSeason } from "../season/build-season.js";
import { cellSimulator } from "./cell-simulator.js";
import { Draft, type Keep } from "./draft.js";
import { HALVES } from "./rules/index.js";
import { anneal, type Spell, type Watch } from "./search.js";
import { betterThan, snapshot, type Snapshot } from "./snapshot.js";
import type { PricingSolver } from "./solver.js";
import { grazersPasses, mend } from "./window/mend.js";

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
  /** Without windows after each polish: enough to see about what a plan costs. */
  readonly searchOnly?: boolean;
  /** Share of the usual heat of a polish, 1 unless given: with less, a plan changed in one place is mended round it and not stirred up elsewhere. */
  readonly heat?: number;
}

/** A draft of a farm that holds a plan. */
export function draftOf(scenario: Scenario, from: Snapshot, keep: Keep | null): Draft {
  const season = buildSeason(scenario);
  const draft = new Draft(season, cellSimulator(season), HALVES, keep);
  draft.load(from.place, from.cuts);
  return draft;
}

/** Spells from heat, then polishes of the best plan so far, each mended window by window. */
export async function runSearch(job: SearchJob, watch: Watch, solver: PricingSolver): Promise<Snapshot> {
  const draft = draftOf(job.scenario, job.from, job.keep);
  let best = job.from;
  const stop = (): boolean => watch.stop() || (job.untilValid === true && best.over === 0);
  const take = (plan: Snapshot): void => {
    if (!betterThan(plan, best)) return;
    best = plan;
    watch.better(plan);
  };
  for (const [i, { spell, mended }] of spellsOf(job, hotness(draft)).entries()) {
    if (stop()) break;
    draft.load(best.place, best.cuts);
    take(anneal(draft, spell, job.seed * 1000 + i, { stop, better: take }));
    if (!mended || best.over > 0 || stop()) continue;
    draft.load(best.place, best.cuts);
    await mend(draft, grazersPasses(draft), solver, 1, { stop: watch.stop, better: () => take(snapshot(draft)) });
  }
  return best;
}

/** Shares of a search's steps: a short spell for a good plan soon, a long one for a better, the rest to polish that. */
const SHORT = 0.2;
const LONG = 0.6;

/** A plan to stay close to is polished all along: heat would only lead away from it. */
function spellsOf({ keep, steps, polishes, searchOnly, heat = 1 }: SearchJob, hot: number): { spell: Spell; mended: boolean }[] {
  const heated = (share: number, heat: number): Spell => ({ steps: Math.round(steps * share), hot: heat, cold: hot / 30, lightPenalty: hot * 4, heavyPenalty: hot * 40 });
  const polish = (share: number): { spell: Spell; mended: boolean } => ({
    spell: { ...heated(share / polishes, (hot / 3) * heat), cold: (hot / 50) * heat, lightPenalty: hot * 8, heavyPenalty: (hot / 3) * 40 }, mended: searchOnly !== true,
  });
  if (keep) return Array.from({ length: polishes }, () => polish(1));
  return [{ spell: heated(SHORT, hot), mended: false }, { spell: heated(LONG, hot), mended: false }, ...Array.from({ length: polishes }, () => polish(1 - SHORT - LONG))];
}

/** Heat at which a search starts: most of what a day in the yard costs, so that one is no wall. */
function hotness(draft: Draft): number {
  const { season, tables } = draft;
  let most = 1;
  season.groups.forEach((group, g) => {
    group.present.forEach((present, t) => (present ? (most = Math.max(most, tables.standMoney[g][t * tables.width])) : 0));
  });
  return Math.min(40, Math.max(6, 0.65 * most));
}
