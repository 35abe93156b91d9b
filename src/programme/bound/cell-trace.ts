import { NOBODY } from "./between.js";
import type { CellBound } from "./cell-bound.js";
import { AGAIN, AGAIN_WORKED, GRAZE, INSIDE, READY_WORKED, UNWORKED, WAIT, WORKED } from "./layers.js";

/** Who stands where from day to day in a cheapest season. */
export interface TracedStay {
  readonly group: number;
  readonly first: number;
  readonly last: number;
}

/** Walks a solved cell's cheapest season forward, by the choices kept with its values. */
export function traceSeason(bound: CellBound): TracedStay[] {
  const stays: TracedStay[] = [];
  let own = UNWORKED;
  let t = 0;
  while (t < bound.season.days) {
    const by = bound.firstBy[own][t];
    if (by === WAIT) t++;
    else if (by === GRAZE) {
      const { group, days } = stayOf(bound.firstStay[t * 2 + own]);
      stays.push({ group, first: t, last: t + days - 1 });
      const level = bound.levels.afterFirst.get(group)?.level[t * bound.levels.most + days - 1] ?? 0;
      afterGrazing(bound, own, t + days, level, stays);
      break;
    } else {
      const end = leavesAfter(t, (day) => bound.firstLeaves[by][day] === 1);
      stays.push({ group: bound.terms.movers[by], first: t, last: end - 1 });
      own = WORKED;
      t = end;
    }
  }
  return stays;
}

const stayOf = (code: number): { group: number; days: number } => ({ group: code >> 10, days: code & 1023 });

/** The morning after a mover's stay that is under way on day t. */
function leavesAfter(t: number, leaves: (day: number) => boolean): number {
  while (!leaves(t)) t++;
  return t + 1;
}

/** From the morning after a grazing to the season's end. */
function afterGrazing(bound: CellBound, layer: number, morning: number, level: number, stays: TracedStay[]): void {
  const { season, levels, terms } = bound;
  let [own, t, j] = [layer, morning, level];
  while (t < season.days) {
    const code = bound.layers[own].grazedBy[t * levels.count + j];
    const day = Math.floor(code / 64);
    const by = code % 64;
    j = Math.max(j, bound.mownBetween(t, day));
    const worked = by === AGAIN_WORKED || by === READY_WORKED;
    const mover = by >= INSIDE ? by - INSIDE : null;
    const begun = worked || mover !== null ? traceBetween(bound, own, t, day, mover, stays) : day;
    if (worked || mover !== null) own = WORKED;
    t = day;
    if (mover !== null) {
      t = leavesAfter(day, (d) => bound.insideLeaves[mover][d * levels.count + j] === 1);
      stays.push({ group: terms.movers[mover], first: begun, last: t - 1 });
    }
    if (by !== AGAIN && by !== AGAIN_WORKED) [own, t, j] = throughReady(bound, own, t, j, stays);
    if (t < season.days) [t, j] = graze(bound, own, t, j, stays);
  }
}

/** Ready ground until its next grazing, or the season's end. */
function throughReady(bound: CellBound, layer: number, morning: number, level: number, stays: TracedStay[]): [number, number, number] {
  const { season, levels, terms } = bound;
  let [own, t, j] = [layer, morning, level];
  while (t < season.days) {
    const by = bound.layers[own].readyBy[t * levels.count + j];
    if (by === GRAZE) break;
    if (by === WAIT) {
      j = Math.max(j, bound.mownBetween(t, t + 1));
      t++;
      continue;
    }
    const end = leavesAfter(t, (day) => bound.insideLeaves[by][day * levels.count + j] === 1);
    stays.push({ group: terms.movers[by], first: t, last: end - 1 });
    own = WORKED;
    t = end;
  }
  return [own, t, j];
}

/** The grazing stay that begins on day t, and the morning and level after it. */
function graze(bound: CellBound, own: number, t: number, j: number, stays: TracedStay[]): [number, number] {
  const { levels } = bound;
  const { group, days } = stayOf(bound.layers[own].enteredBy[t * levels.count + j]);
  stays.push({ group, first: t, last: t + days - 1 });
  return [t + days, levels.after.get(group)?.[(t * levels.count + j) * levels.most + days - 1] ?? 0];
}

/** Birds and pigs on the days from t to a morning; answers when the mover still inside on it began. */
function traceBetween(bound: CellBound, own: number, t: number, end: number, inside: number | null, stays: TracedStay[]): number {
  const between = bound.between(t, end, own);
  const { movers } = bound.terms;
  const found: TracedStay[] = [];
  let k = end - t;
  let began = end;
  if (inside !== null) {
    k = between.begun[inside][k];
    began = t + k;
    if (!cameFromWorked(bound, own, t, k, between, inside)) k = 0;
  }
  while (k > 0) {
    const by = between.workedBy[k];
    if (by === NOBODY) {
      k--;
      continue;
    }
    const start = between.begun[by][k - 1];
    found.push({ group: movers[by], first: t + start, last: t + k - 1 });
    k = cameFromWorked(bound, own, t, start, between, by) ? start : 0;
  }
  stays.push(...found.reverse());
  return began;
}

/** Whether the one that began so many days after the grazing followed another one's work. */
function cameFromWorked(bound: CellBound, own: number, t: number, k: number, between: { readonly worked: Float64Array }, mover: number): boolean {
  return between.worked[k] < bound.onto(own, bound.terms.movers[mover], t, k);
}
