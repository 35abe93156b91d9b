import type { Proposer } from "./move.js";

/** Takes a cut, moves one or drops one. */
export const changeCut: Proposer = (draft, sense, random) => {
  if (sense.mowable.length === 0) return null;
  const cell = sense.mowable[random.below(sense.mowable.length)];
  const own = draft.cuts[cell];
  const day = random.below(sense.season.days);
  if (draft.occupant[cell * sense.season.days + day] >= 0 || own.includes(day)) return null;
  const kept = own.length && random.unit() < 0.7 ? own.filter((_, i) => i !== random.below(own.length)) : own;
  const cuts = own.length && random.unit() < 0.5 ? kept : [...kept, day].sort((a, b) => a - b);
  return { runs: [], cut: { cell, cuts } };
};
