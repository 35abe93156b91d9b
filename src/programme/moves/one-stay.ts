import { AWAY, YARD } from "../../season/season.js";
import type { Run } from "../draft.js";
import { fitEnd, someCell, someDay, someGroup, someLength } from "./draws.js";
import { move, type Proposer } from "./move.js";
import { stayEnd, stayStart } from "./stays.js";

/** Moves the day between two stays of a group. */
export const shiftBoundary: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0) return null;
  const end = stayEnd(draft, g, t);
  if (end + 1 >= sense.season.days || draft.place[g][end + 1] === AWAY) return null;
  const own = draft.place[g];
  const by = 1 + random.below(3);
  if (random.unit() < 0.5) {
    const next = sense.nextOk[g][Math.min(end + 1 + by, sense.season.days)];
    const to = Math.min(next - 1, stayEnd(draft, g, end + 1));
    return move({ group: g, from: end + 1, to, place: own[t] });
  }
  let from = end + 1 - by;
  const start = stayStart(draft, g, end);
  while (from > start && !sense.season.groups[g].moveOk[from]) from--;
  return from < start ? null : move({ group: g, from, to: end, place: own[end + 1] });
};

/** Sends a whole stay elsewhere. */
export const replaceStay: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0) return null;
  const from = stayStart(draft, g, t);
  const to = stayEnd(draft, g, t);
  const place = random.unit() < 0.04 ? YARD : someCell(draft, sense, g, random, from, to);
  return place === draft.place[g][t] ? null : move({ group: g, from, to, place });
};

/** Lays a fresh run over whatever the group did. */
export const layRun: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const day = someDay(draft, g, random);
  if (day < 0) return null;
  const from = sense.nextOk[g][day];
  if (from >= sense.season.days || draft.place[g][from] === AWAY) return null;
  const to = fitEnd(sense, draft, g, from, someLength(sense.season, g, random));
  if (to < from) return null;
  const place = random.unit() < 0.05 ? YARD : someCell(draft, sense, g, random, from, to);
  return move({ group: g, from, to, place });
};

/** Fills a spell in the yard, or the front of it. */
export const leaveYard: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0 || draft.place[g][t] !== YARD) return null;
  const start = stayStart(draft, g, t);
  const end = stayEnd(draft, g, t);
  const from = random.unit() < 0.6 ? start : sense.nextOk[g][t];
  if (from > end) return null;
  const to = random.unit() < 0.4 ? end : Math.min(end, fitEnd(sense, draft, g, from, someLength(sense.season, g, random)));
  return to < from ? null : move({ group: g, from, to, place: someCell(draft, sense, g, random, from, to) });
};

/** Gives a stay's days to the stays before and after it. */
export const dissolve: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0) return null;
  const start = stayStart(draft, g, t);
  const end = stayEnd(draft, g, t);
  const own = draft.place[g];
  const before = start > 0 ? own[start - 1] : AWAY;
  const after = end + 1 < sense.season.days ? own[end + 1] : AWAY;
  if (before === AWAY && after === AWAY) return null;
  if (before === AWAY) return move({ group: g, from: start, to: end, place: after });
  if (after === AWAY) return move({ group: g, from: start, to: end, place: before });
  const middle = Math.min(sense.nextOk[g][start + random.below(end - start + 2)], end + 1);
  const runs: Run[] = [];
  if (middle > start) runs.push({ group: g, from: start, to: middle - 1, place: before });
  if (middle <= end) runs.push({ group: g, from: middle, to: end, place: after });
  return move(...runs);
};

/** Sends a follower to a cell that its leader has just left. */
export const follow: Proposer = (draft, sense, random) => {
  if (sense.followers.length === 0) return null;
  const g = sense.followers[random.below(sense.followers.length)];
  const { leader } = sense.season.groups[g];
  const t = someDay(draft, leader, random);
  if (t < 0 || draft.place[leader][t] < 0) return null;
  const from = sense.nextOk[g][Math.min(stayEnd(draft, leader, t) + 2 + random.below(2), sense.season.days)];
  if (from >= sense.season.days || draft.place[g][from] === AWAY) return null;
  const to = fitEnd(sense, draft, g, from, 2 + random.below(9));
  return to < from ? null : move({ group: g, from, to, place: draft.place[leader][t] });
};
