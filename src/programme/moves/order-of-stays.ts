import { AWAY } from "../../season/season.js";
import type { Run } from "../draft.js";
import { someDay, someGroup } from "./draws.js";
import { move, type Proposer } from "./move.js";
import { stayEnd, stayStart } from "./stays.js";

/** Two neighbouring stays of a group change order, each keeping its length. */
export const swapNeighbours: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0) return null;
  const start = stayStart(draft, g, t);
  const end = stayEnd(draft, g, t);
  if (end + 1 >= sense.season.days || draft.place[g][end + 1] === AWAY) return null;
  const last = stayEnd(draft, g, end + 1);
  const middle = Math.min(sense.nextOk[g][start + (last - end)], last);
  if (middle <= start) return null;
  return move({ group: g, from: start, to: middle - 1, place: draft.place[g][last] }, { group: g, from: middle, to: last, place: draft.place[g][t] });
};

/** Takes a stay out of its order and puts it in again some stays later, or earlier; the stays between close up. */
export const moveAlong: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0) return null;
  const stays: [number, number][] = [[stayStart(draft, g, t), stayEnd(draft, g, t)]];
  const own = draft.place[g];
  for (let more = 1 + random.below(5); more > 0; more--) {
    const next = stays[stays.length - 1][1] + 1;
    if (next >= sense.season.days || own[next] === AWAY || sense.season.groups[g].arrives[next]) break;
    stays.push([next, stayEnd(draft, g, next)]);
  }
  if (stays.length < 2) return null;
  const order = random.unit() < 0.5 ? [...stays.slice(1), stays[0]] : [stays[stays.length - 1], ...stays.slice(0, -1)];
  const runs: Run[] = [];
  let day = stays[0][0];
  for (const [a, b] of order) {
    if (!sense.season.groups[g].moveOk[day]) return null;
    runs.push({ group: g, from: day, to: day + b - a, place: own[a] });
    day += b - a + 1;
  }
  return move(...runs);
};

/** Two stays of one group trade cells. */
export const tradeCells: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const a = someDay(draft, g, random);
  const b = a < 0 ? -1 : Math.min(sense.season.days - 1, a + 1 + random.below(60));
  if (a < 0 || draft.place[g][b] === AWAY || draft.place[g][a] === draft.place[g][b]) return null;
  return move(
    { group: g, from: stayStart(draft, g, a), to: stayEnd(draft, g, a), place: draft.place[g][b] },
    { group: g, from: stayStart(draft, g, b), to: stayEnd(draft, g, b), place: draft.place[g][a] },
  );
};

/** Two groups trade cells over the stays that hold a day. */
export const tradeGroups: Proposer = (draft, sense, random) => {
  const a = someGroup(sense, random);
  const b = someGroup(sense, random);
  const t = someDay(draft, a, random);
  if (a === b || t < 0 || draft.place[a][t] < 0 || draft.place[b][t] < 0) return null;
  return move(
    { group: a, from: stayStart(draft, a, t), to: stayEnd(draft, a, t), place: draft.place[b][t] },
    { group: b, from: stayStart(draft, b, t), to: stayEnd(draft, b, t), place: draft.place[a][t] },
  );
};

/** Moves a stretch of a group's stays by a day or two, their order kept. */
export const slideStretch: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0) return null;
  const start = stayStart(draft, g, t);
  const by = random.unit() < 0.7 ? 1 : 2;
  const own = draft.place[g];
  let last = start;
  for (let stays = 1 + random.below(6); stays > 0 && last < sense.season.days && own[last] !== AWAY; stays--) last = stayEnd(draft, g, last) + 1;
  const runs: Run[] = [];
  const later = random.unit() < 0.5;
  for (let d = start; d < last; ) {
    const end = stayEnd(draft, g, d);
    const from = later ? d + by : Math.max(start, d - by);
    const to = Math.min(later ? end + by : end - by, last - 1);
    if (from <= to) runs.push({ group: g, from, to, place: own[d] });
    d = end + 1;
  }
  if (later && start > 0 && own[start - 1] !== AWAY) runs.unshift({ group: g, from: start, to: Math.min(start + by, last) - 1, place: own[start - 1] });
  return runs.length ? move(...runs) : null;
};
