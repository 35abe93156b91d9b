import { YARD, type Season } from "../season/season.js";
import type { Draft, Patience, Run } from "./draft.js";

/**
 * The plain rule of thumb, kept day by day: when a stay is up, take the longest-rested cell that is ready; birds go
 * behind their leader if they can, pigs to ground that wants opening. What finds no cell stays in the yard.
 * The draft must stand in the yard throughout; it then holds the hand rule's plan.
 */
export function handRule(draft: Draft): void {
  const { season } = draft;
  const until = season.groups.map(() => -1);
  const order = season.groups.map((_, g) => g).sort((a, b) => rank(season, a) - rank(season, b) || a - b);
  for (let t = 0; t < season.days; t++) {
    for (const g of order) {
      if (until[g] >= t || !season.groups[g].out[t]) continue;
      const stay = nextStay(draft, g, t);
      if (!stay) continue;
      draft.apply([stay]);
      until[g] = stay.to;
    }
  }
}

const rank = (season: Season, g: number): number => (season.groups[g].grazer ? 0 : season.groups[g].pig ? 1 : 2);

/** No money makes up for a broken rule. */
const STRICT: Patience = { penalty: 1e9, worse: 1e6 };

/** The stay by rule of thumb, or null when no cell is ready or nobody can move the group. */
function nextStay(draft: Draft, g: number, t: number): Run | null {
  const lengths = stayLengths(draft.season, g, t);
  for (const cell of byPreference(draft, g, t)) {
    for (const length of lengths) {
      const run = { group: g, from: t, to: t + length - 1, place: cell };
      if (!draft.free(run)) continue;
      const over = draft.over;
      const undo = draft.attempt([run], null, STRICT);
      if (!undo) continue;
      const kept = draft.over <= over + 1e-9;
      undo();
      if (kept) return run;
    }
  }
  return null;
}

/** Lengths to try, the usual one first: usual days of grazers, weeks of birds, full strips of pigs. */
function stayLengths(season: Season, g: number, t: number): number[] {
  const group = season.groups[g];
  let left = 0;
  while (t + left < season.days && group.out[t + left] && !(left > 0 && group.arrives[t + left])) left++;
  const usual = group.grazer ? [3, 4, 2, 5, 1] : group.pig ? [56, 49, 42, 35, 28, 21, 14, 7] : [7, 4, 3, 10, 14, 6, 5, 2, 1];
  return [...new Set([...usual.map((n) => Math.min(n, left))])].filter((n) => n > 0);
}

function byPreference(draft: Draft, g: number, t: number): number[] {
  const { season } = draft;
  const { mayEnter, leader, pig, grazer } = season.groups[g];
  const score = (c: number): number => {
    const state = draft.states[c];
    if (pig) return season.scenario.cells[c].wants.includes("opening") ? 0 : 1;
    if (!grazer && leader >= 0) return lastDayBefore(draft, leader, c, t) >= t - 4 ? 0 : 1;
    void state;
    return 0;
  };
  const here = t > 0 ? draft.place[g][t - 1] : YARD;
  return season.cells
    .map((_, c) => ({ c, score: score(c), last: lastUse(draft, c, t, grazer) }))
    .filter(({ c }) => mayEnter[c] && c !== here)
    .sort((a, b) => a.score - b.score || a.last - b.last || a.c - b.c)
    .map(({ c }) => c);
}

/** Latest day before `t` on which grazers (or anybody, for birds and pigs) stood in a cell. */
function lastUse(draft: Draft, c: number, t: number, grazersOnly: boolean): number {
  const { season } = draft;
  for (let day = t - 1; day >= 0; day--) {
    const g = draft.occupant[c * season.days + day];
    if (g >= 0 && (!grazersOnly || season.groups[g].grazer)) return day;
  }
  return season.cells[c].lastGrazed ?? -1000;
}

function lastDayBefore(draft: Draft, g: number, c: number, t: number): number {
  for (let day = t - 1; day >= 0; day--) if (draft.occupant[c * draft.season.days + day] === g) return day;
  return -1000;
}
