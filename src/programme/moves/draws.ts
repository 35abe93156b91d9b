import { AWAY, type Season } from "../../season/season.js";
import type { Draft } from "../draft.js";
import type { Random } from "../random.js";
import type { MoveSense } from "./sense.js";

/** A random day on which the group needs a place, or -1. */
export function someDay(draft: Draft, g: number, random: Random): number {
  for (let tries = 0; tries < 8; tries++) {
    const t = random.below(draft.season.days);
    if (draft.place[g][t] !== AWAY) return t;
  }
  return -1;
}

export const someGroup = (sense: MoveSense, random: Random): number => sense.draw[random.below(sense.draw.length)];

/** Any cell of the group's, or one in the field where it stands the day before or after a run. */
export function someCell(draft: Draft, sense: MoveSense, g: number, random: Random, from: number, to: number): number {
  if (random.unit() < 0.5) {
    const beside = random.unit() < 0.5 ? from - 1 : to + 1;
    const place = beside >= 0 && beside < sense.season.days ? draft.place[g][beside] : AWAY;
    if (place >= 0) {
      const near = sense.near[g][sense.season.cells[place].field];
      // It may stand where it has no cell of its own: that is broken, not forbidden.
      if (near.length > 0) return near[random.below(near.length)];
    }
  }
  return sense.cellsOf[g][random.below(sense.cellsOf[g].length)];
}

/** Last day of a run from `from` of about `length` days that ends where the group can move on. */
export function fitEnd(sense: MoveSense, draft: Draft, g: number, from: number, length: number): number {
  const { days } = sense.season;
  const ok = sense.nextOk[g][Math.min(from + length, days)];
  let to = Math.min(ok, days) - 1;
  for (let t = from + 1; t <= to; t++) if (draft.place[g][t] === AWAY || sense.season.groups[g].arrives[t]) to = t - 1;
  return to;
}

/** Length of a fresh run, days: a few of grazers, whole strips of pigs, a week or a month of birds. */
export function someLength(season: Season, g: number, random: Random): number {
  const group = season.groups[g];
  if (group.grazer) return 1 + random.below(6);
  if (group.pig) {
    const days = season.scenario.groups[g].strip?.days ?? 7;
    return days * (1 + random.below(8));
  }
  return 1 + random.below(random.unit() < 0.7 ? 10 : 28);
}
