import type { Proposer } from "./move.js";
import type { MoveSense } from "./sense.js";

/** Takes a cut, drops one, or moves one: to a day of its own, or to a day on which the mower is there anyhow. */
export const changeCut: Proposer = (draft, sense, random) => {
  if (sense.mowable.length === 0) return null;
  const cell = sense.mowable[random.below(sense.mowable.length)];
  const own = draft.cuts[cell];
  const out = own.length && random.unit() < 0.7 ? random.below(own.length) : -1;
  const kept = own.filter((_, i) => i !== out);
  if (out >= 0 && random.unit() < 0.5) return { runs: [], cut: { cell, cuts: kept } };
  const others = draft.cuts.flat();
  const day = others.length && random.unit() < 0.6 ? others[random.below(others.length)] : random.below(sense.season.days);
  if (draft.occupant[cell * sense.season.days + day] >= 0 || kept.includes(day) || isOwners(sense, cell, day)) return null;
  return { runs: [], cut: { cell, cuts: [...kept, day].sort((a, b) => a - b) } };
};

/** A day on which the owner has the cell cut anyhow: a second cut finds nothing. */
function isOwners({ season }: MoveSense, cell: number, day: number): boolean {
  return season.cells[cell].ownerCuts.some((cut) => cut.day === day);
}
