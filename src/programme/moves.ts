import { AWAY } from "../season/season.js";
import type { Draft, Run } from "./draft.js";
import { changeCut } from "./moves/cuts.js";
import { displace } from "./moves/displace.js";
import type { Move, Proposer } from "./moves/move.js";
import { dissolve, follow, layRun, leaveYard, replaceStay, shiftBoundary } from "./moves/one-stay.js";
import { moveAlong, slideStretch, swapNeighbours, tradeCells, tradeGroups } from "./moves/order-of-stays.js";
import type { MoveSense } from "./moves/sense.js";
import type { Random } from "./random.js";

export { moveSense } from "./moves/sense.js";
export { stayEnd, stayStart } from "./moves/stays.js";

/** Kinds of change, and how often each is drawn. */
const PROPOSERS: readonly (readonly [Proposer, number])[] = [
  [shiftBoundary, 22], [replaceStay, 18], [layRun, 14], [leaveYard, 10], [dissolve, 8], [swapNeighbours, 6], [tradeCells, 6],
  [tradeGroups, 3], [slideStretch, 6], [moveAlong, 8], [follow, 6], [changeCut, 4], [displace, 12],
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
  // Who is sent where others stand comes last, and they make way.
  if (!found.runs.every((run, i) => (proposer === displace && i === found.runs.length - 1 ? mayStand(draft, run) : draft.free(run)))) return null;
  return random.unit() < sense.bold || found.runs.every((run) => restsAround(draft, sense, run)) ? found : null;
}

/** True on days on which the group needs a place. */
function mayStand({ place }: Draft, { group, from, to }: Run): boolean {
  for (let t = from; t <= to; t++) if (place[group][t] === AWAY) return false;
  return true;
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
