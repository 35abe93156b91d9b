import type { Draft, Run } from "../../src/programme/draft.js";
import { YARD } from "../../src/season/season.js";
import type { Chance } from "../oracle/chance.js";

/** A run of random days of a random group to a random place, where nobody else stands; null when chance found none. */
export function randomRun(draft: Draft, chance: Chance): Run | null {
  const { season } = draft;
  const group = chance.whole(0, season.groups.length - 1);
  const from = chance.whole(0, season.days - 1);
  const to = Math.min(season.days - 1, from + chance.whole(0, chance.luck(0.7) ? 6 : 30));
  const place = chance.luck(0.25) ? YARD : chance.whole(0, season.cells.length - 1);
  const run = { group, from, to, place };
  return draft.free(run) ? run : null;
}

/** Puts random runs into a draft, however many rules they break; and some cuts. */
export function scramble(draft: Draft, chance: Chance, runs: number): void {
  for (let i = 0; i < runs; i++) {
    const run = randomRun(draft, chance);
    if (run) draft.apply([run]);
    if (chance.luck(0.05)) draft.apply([], randomCuts(draft, chance));
  }
}

export function randomCuts(draft: Draft, chance: Chance): { cell: number; cuts: readonly number[] } {
  const days = Array.from({ length: chance.whole(0, 2) }, () => chance.whole(0, draft.season.days - 1));
  return { cell: chance.whole(0, draft.season.cells.length - 1), cuts: [...new Set(days)].sort((a, b) => a - b) };
}

/** Everything that can be seen of a draft, as plain text. */
export function seen(draft: Draft): string {
  return JSON.stringify({
    cost: draft.cost, over: draft.over, changed: draft.changed, hayFed: draft.hayFed, place: draft.place.map((days) => [...days]), occupant: [...draft.occupant],
    cuts: draft.cuts, used: draft.used.map((row) => [...row]),
    states: draft.states.map((s) => ({ ...s, charges: [...s.charges], grass: [...s.grass], lastOf: [...s.lastOf], nitrogenByYear: [...s.nitrogenByYear] })),
  });
}

