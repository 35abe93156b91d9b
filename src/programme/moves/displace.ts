import type { Draft, Run } from "../draft.js";
import type { Random } from "../random.js";
import { someCell } from "./draws.js";
import { move, type Proposer } from "./move.js";
import { layRun, replaceStay, shiftBoundary } from "./one-stay.js";
import type { MoveSense } from "./sense.js";
import { stayEnd, stayStart } from "./stays.js";

/** Most stays of others that make way at once. */
const MOST = 3;

/** Sends a group where others stand, and each of those elsewhere. */
export const displace: Proposer = (draft, sense, random) => {
  const pick = random.below(3);
  const found = (pick === 0 ? layRun : pick === 1 ? replaceStay : shiftBoundary)(draft, sense, random);
  const run = found?.runs[0];
  if (!run || run.place < 0) return null;
  const others: Run[] = [];
  for (let t = run.from; t <= run.to; t++) {
    const g = draft.occupant[run.place * sense.season.days + t];
    if (g < 0 || g === run.group) continue;
    if (others.length === MOST) return null;
    const away = elsewhere(draft, sense, random, g, t, run.place);
    if (!away) return null;
    others.push(away);
    t = away.to;
  }
  return others.length > 0 ? move(...others, run) : null;
};

/** Another cell for the stay that holds a day, one that nobody uses; null when the chance found none. */
function elsewhere(draft: Draft, sense: MoveSense, random: Random, g: number, t: number, but: number): Run | null {
  const from = stayStart(draft, g, t);
  const to = stayEnd(draft, g, t);
  if (sense.cellsOf[g].length === 0) return null;
  for (let tries = 0; tries < 4; tries++) {
    const run = { group: g, from, to, place: someCell(draft, sense, g, random, from, to) };
    if (run.place !== but && draft.free(run)) return run;
  }
  return null;
}
