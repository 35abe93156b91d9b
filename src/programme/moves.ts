import { AWAY, YARD, type Season } from "../season/season.js";
import type { CutChange, Draft, Run } from "./draft.js";
import { farmFigure, isOff } from "./half.js";
import type { Random } from "./random.js";

/** A change to try: runs in order, and at most one cell's cuts. */
export interface Move {
  readonly runs: readonly Run[];
  readonly cut: CutChange | null;
}

/** What the moves need to know of a season, worked out once. */
export interface MoveSense {
  readonly season: Season;
  /** Cells each group may enter. */
  readonly cellsOf: readonly (readonly number[])[];
  /** The same by field. */
  readonly near: readonly (readonly (readonly number[])[])[];
  /** Next day from a day on which the group can be moved, or the season's end. */
  readonly nextOk: readonly Int16Array[];
  /** Groups, each as often as it is worth trying. */
  readonly draw: readonly number[];
  readonly followers: readonly number[];
  readonly mowable: readonly number[];
  /** Shortest rest of ground, and the share of changes tried although they cut it short. */
  readonly rest: number;
  readonly bold: number;
}

export function moveSense(season: Season): MoveSense {
  const cellsOf = season.groups.map((group) => season.cells.map((_, c) => c).filter((c) => group.mayEnter[c]));
  const nextOk = season.groups.map((group) => {
    const next = new Int16Array(season.days + 1).fill(season.days);
    for (let t = season.days - 1; t >= 0; t--) next[t] = group.moveOk[t] ? t : next[t + 1];
    return next;
  });
  const draw = season.groups.flatMap((group, g) => (group.present.includes(1) && cellsOf[g].length ? Array<number>(group.grazer ? 4 : group.bird ? 2 : 1).fill(g) : []));
  return {
    season, cellsOf, nextOk, draw,
    near: cellsOf.map((cells) => season.scenario.fields.map((_, f) => cells.filter((c) => season.cells[c].field === f))),
    followers: season.groups.map((_, g) => g).filter((g) => season.groups[g].leader >= 0 && draw.includes(g)),
    mowable: season.cells.map((_, c) => c).filter((c) => season.cells[c].mow),
    rest: isOff(season, "rest-period") ? 0 : farmFigure(season, "rest-period", "floor"),
    bold: 0.1,
  };
}

/** First day of the stay that holds day t. */
export function stayStart(draft: Draft, g: number, t: number): number {
  const own = draft.place[g];
  const { arrives } = draft.season.groups[g];
  while (t > 0 && own[t - 1] === own[t] && !arrives[t]) t--;
  return t;
}

/** Last day of the stay that holds day t. */
export function stayEnd(draft: Draft, g: number, t: number): number {
  const own = draft.place[g];
  const { arrives } = draft.season.groups[g];
  while (t + 1 < draft.season.days && own[t + 1] === own[t] && !arrives[t + 1]) t++;
  return t;
}

type Proposer = (draft: Draft, sense: MoveSense, random: Random) => Move | null;

const move = (...runs: Run[]): Move => ({ runs, cut: null });

/** A random day on which the group needs a place, or -1. */
function someDay(draft: Draft, g: number, random: Random): number {
  for (let tries = 0; tries < 8; tries++) {
    const t = random.below(draft.season.days);
    if (draft.place[g][t] !== AWAY) return t;
  }
  return -1;
}

const someGroup = (sense: MoveSense, random: Random): number => sense.draw[random.below(sense.draw.length)];

/** Any cell of the group's, or one in the field where it stands the day before or after a run. */
function someCell(draft: Draft, sense: MoveSense, g: number, random: Random, from: number, to: number): number {
  if (random.unit() < 0.5) {
    const beside = random.unit() < 0.5 ? from - 1 : to + 1;
    const place = beside >= 0 && beside < sense.season.days ? draft.place[g][beside] : AWAY;
    if (place >= 0) {
      const near = sense.near[g][sense.season.cells[place].field];
      return near[random.below(near.length)];
    }
  }
  return sense.cellsOf[g][random.below(sense.cellsOf[g].length)];
}

/** Last day of a run from `from` of about `length` days that ends where the group can move on. */
function fitEnd(sense: MoveSense, draft: Draft, g: number, from: number, length: number): number {
  const { days } = sense.season;
  const ok = sense.nextOk[g][Math.min(from + length, days)];
  let to = Math.min(ok, days) - 1;
  for (let t = from + 1; t <= to; t++) if (draft.place[g][t] === AWAY || sense.season.groups[g].arrives[t]) to = t - 1;
  return to;
}

function someLength(season: Season, g: number, random: Random): number {
  const group = season.groups[g];
  if (group.grazer) return 1 + random.below(6);
  if (group.pig) {
    const days = season.scenario.groups[g].strip?.days ?? 7;
    return days * (1 + random.below(8));
  }
  return 1 + random.below(random.unit() < 0.7 ? 10 : 28);
}

/** Moves the day between two stays of a group. */
const shiftBoundary: Proposer = (draft, sense, random) => {
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
const replaceStay: Proposer = (draft, sense, random) => {
  const g = someGroup(sense, random);
  const t = someDay(draft, g, random);
  if (t < 0) return null;
  const from = stayStart(draft, g, t);
  const to = stayEnd(draft, g, t);
  const place = random.unit() < 0.04 ? YARD : someCell(draft, sense, g, random, from, to);
  return place === draft.place[g][t] ? null : move({ group: g, from, to, place });
};

/** Lays a fresh run over whatever the group did. */
const layRun: Proposer = (draft, sense, random) => {
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
const leaveYard: Proposer = (draft, sense, random) => {
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
const dissolve: Proposer = (draft, sense, random) => {
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

/** Two neighbouring stays of a group change order, each keeping its length. */
const swapNeighbours: Proposer = (draft, sense, random) => {
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
const moveAlong: Proposer = (draft, sense, random) => {
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
const tradeCells: Proposer = (draft, sense, random) => {
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
const tradeGroups: Proposer = (draft, sense, random) => {
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
const slideStretch: Proposer = (draft, sense, random) => {
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
  if (later && start > 0 && own[start - 1] !== AWAY) runs.unshift({ group: g, from: start, to: start + by - 1, place: own[start - 1] });
  return runs.length ? move(...runs) : null;
};

/** Sends a follower to a cell that its leader has just left. */
const follow: Proposer = (draft, sense, random) => {
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

/** Takes a cut, moves one or drops one. */
const changeCut: Proposer = (draft, sense, random) => {
  if (sense.mowable.length === 0) return null;
  const cell = sense.mowable[random.below(sense.mowable.length)];
  const own = draft.cuts[cell];
  const day = random.below(sense.season.days);
  if (draft.occupant[cell * sense.season.days + day] >= 0 || own.includes(day)) return null;
  const kept = own.length && random.unit() < 0.7 ? own.filter((_, i) => i !== random.below(own.length)) : own;
  const cuts = own.length && random.unit() < 0.5 ? kept : [...kept, day].sort((a, b) => a - b);
  return { runs: [], cut: { cell, cuts } };
};

const PROPOSERS: readonly (readonly [Proposer, number])[] = [
  [shiftBoundary, 22], [replaceStay, 18], [layRun, 14], [leaveYard, 10], [dissolve, 8], [swapNeighbours, 6], [tradeCells, 6],
  [tradeGroups, 3], [slideStretch, 6], [moveAlong, 8], [follow, 6], [changeCut, 1],
];
const TOTAL = PROPOSERS.reduce((sum, [, weight]) => sum + weight, 0);

/** A random change that puts nobody where somebody stands; null when the chance found none. */
export function proposeMove(draft: Draft, sense: MoveSense, random: Random): Move | null {
  let pick = random.below(TOTAL);
  const [proposer] = PROPOSERS.find(([, weight]) => (pick -= weight) < 0) ?? PROPOSERS[0];
  // Where no group may enter any cell there are only cuts to change.
  const found = sense.draw.length === 0 && proposer !== changeCut ? null : proposer(draft, sense, random);
  if (!found) return null;
  if (proposer === tradeGroups) return tradeIsFree(draft, found) ? found : null;
  if (!found.runs.every((run) => draft.free(run))) return null;
  return random.unit() < sense.bold || found.runs.every((run) => restsAround(draft, sense, run)) ? found : null;
}

/** True when no grazing before or after a grazing run is nearer than the shortest rest; other runs always pass. */
function restsAround(draft: Draft, { season, rest }: MoveSense, { group, from, to, place }: Run): boolean {
  if (place < 0 || !season.groups[group].grazer) return true;
  const base = place * season.days;
  const { occupant } = draft;
  let a = from;
  while (a > 0 && occupant[base + a - 1] === group) a--;
  let b = to;
  while (b + 1 < season.days && occupant[base + b + 1] === group) b++;
  for (let t = Math.max(0, a - rest); t < a; t++) if (occupant[base + t] >= 0 && season.groups[occupant[base + t]].grazer) return false;
  for (let t = b + 1; t <= Math.min(season.days - 1, b + rest); t++) if (occupant[base + t] >= 0 && season.groups[occupant[base + t]].grazer) return false;
  return true;
}

function tradeIsFree(draft: Draft, { runs }: Move): boolean {
  const both = runs.map((run) => run.group);
  return runs.every((run) => {
    for (let t = run.from; t <= run.to; t++) {
      if (draft.place[run.group][t] === AWAY) return false;
      const other = draft.occupant[run.place * draft.season.days + t];
      if (other >= 0 && other !== run.group && !(both.includes(other) && runs.some((r) => r.group === other && t >= r.from && t <= r.to))) return false;
    }
    return true;
  });
}
