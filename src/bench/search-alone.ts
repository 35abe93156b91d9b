import type { Draft } from "../programme/draft.js";
import { anneal, type Spell, type Watch } from "../programme/search.js";
import { betterThan, snapshot, type Snapshot } from "../programme/snapshot.js";

const UNWATCHED: Watch = { stop: () => false, better: () => undefined };
const HEAT = 30;
const POLISHES = 3;

/** The search without windows: a hot spell of four tenths of the steps, then polishes from the best plan so far. */
export function searchAlone(draft: Draft, steps: number, seed: number): Snapshot {
  const hot: Spell = { steps: Math.round(steps * 0.4), hot: HEAT, cold: HEAT / 20, lightPenalty: HEAT * 5, heavyPenalty: HEAT * 20 };
  const polish: Spell = { steps: Math.round((steps * 0.6) / POLISHES), hot: HEAT * 0.4, cold: HEAT / 40, lightPenalty: HEAT * 10, heavyPenalty: HEAT * 20 };
  let best = snapshot(draft);
  [hot, ...Array.from({ length: POLISHES }, () => polish)].forEach((spell, i) => {
    draft.load(best.place, best.cuts);
    const found = anneal(draft, spell, seed * 1000 + i, UNWATCHED);
    if (betterThan(found, best)) best = found;
  });
  return best;
}
