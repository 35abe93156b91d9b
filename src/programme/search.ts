import type { Draft } from "./draft.js";
import { moveSense, proposeMove } from "./moves.js";
import { seededRandom } from "./random.js";
import { snapshot, type Snapshot } from "./snapshot.js";

/** One spell of the search: temperature falls from hot to cold, and broken rules weigh more and more. */
export interface Spell {
  readonly steps: number;
  readonly hot: number;
  readonly cold: number;
  readonly lightPenalty: number;
  readonly heavyPenalty: number;
}

/** How a search is watched and ended from outside. Never changes what is found, only whether it goes on. */
export interface Watch {
  /** Asked every thousand steps: true ends the search. */
  stop(): boolean;
  better(plan: Snapshot): void;
}

/** How often, and from what share of a spell on, a search goes back to the best plan it has seen: what strayed into broken rules may not find out. */
const RETURNS = 20;
const RETURNS_FROM = 0.4;

/**
 * Improves a draft by random changes, worse ones taken less and less often; answers the best valid plan seen, or the
 * one that breaks least where none was valid.
 * The same seed and spell give the same plan on every machine.
 */
export function anneal(draft: Draft, spell: Spell, seed: number, watch: Watch): Snapshot {
  const random = seededRandom(seed);
  const sense = moveSense(draft.season);
  let best = snapshot(draft);
  let cost = draft.cost;
  let over = draft.over;
  const every = Math.ceil(spell.steps / RETURNS);
  for (let step = 0; step < spell.steps; step++) {
    const along = step / spell.steps;
    const temperature = spell.hot * (spell.cold / spell.hot) ** along;
    const penalty = spell.lightPenalty * (spell.heavyPenalty / spell.lightPenalty) ** along;
    if (step % 1000 === 0 && watch.stop()) break;
    if (along >= RETURNS_FROM && step % every === 0) {
      draft.load(best.place, best.cuts);
      cost = draft.cost;
      over = draft.over;
    } else if (step % 20_000 === 19_999) draft.refresh();
    const found = proposeMove(draft, sense, random);
    if (!found) continue;
    const mostWorse = -temperature * Math.log(1 - random.unit());
    const undo = draft.attempt(found.runs, found.cut, { penalty, worse: mostWorse });
    if (!undo) continue;
    if (draft.cost - cost + penalty * (draft.over - over) > mostWorse) {
      undo();
      continue;
    }
    cost = draft.cost;
    over = draft.over;
    if (over === 0 ? best.over > 0 || cost < best.cost - 1e-9 : over < best.over - 1e-9) {
      best = snapshot(draft);
      watch.better(best);
    }
  }
  return best;
}
