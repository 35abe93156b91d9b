import { NOBODY } from "./between.js";
import type { CellBound } from "./cell-bound.js";
import { AGAIN, AGAIN_WORKED, CUT, GRAZE, INSIDE, MOWN, MOWN_WORKED, READY_WORKED, UNWORKED, WAIT, WORKED } from "./layers.js";

/** Who stands where from day to day in a cheapest season. */
export interface TracedStay {
  readonly group: number;
  readonly first: number;
  readonly last: number;
}

/** A cheapest season: its stays, the hay of its cuts, kg, and the charges for short rests in full. */
export interface Traced {
  readonly stays: TracedStay[];
  hayKg: number;
  restMoney: number;
}

/** Walks a solved cell's cheapest season forward, by the choices kept with its values. */
export function traceSeason(bound: CellBound): Traced {
  const { season, levels, cuts } = bound;
  const traced: Traced = { stays: [], hayKg: 0, restMoney: 0 };
  let own = UNWORKED;
  let t = 0;
  while (t < season.days) {
    const by = bound.firstBy[own][t];
    if (by === WAIT) {
      traced.hayKg += cuts.owners.find((cut) => cut.evening === t)?.untouchedKg ?? 0;
      t++;
    } else if (by === GRAZE) {
      const { group, days } = stayOf(bound.firstStay[t * 2 + own]);
      traced.stays.push({ group, first: t, last: t + days - 1 });
      const level = levels.afterFirst.get(group)?.level[t * levels.most + days - 1] ?? 0;
      afterGrazing(bound, { own, t: t + days, j: level }, traced);
      break;
    } else if (by === CUT) {
      traced.hayKg += cuts.untouchedKg[t];
      readyOn(bound, { own, t: t + 1, j: cuts.stubble[t] }, traced);
      break;
    } else {
      let end = t + 1;
      while (bound.firstLeaves[by][own][end - 1] !== 1) end++;
      traced.stays.push({ group: bound.terms.movers[by], first: t, last: end - 1 });
      own = WORKED;
      t = end;
    }
  }
  return traced;
}

const stayOf = (code: number): { group: number; days: number } => ({ group: code >> 10, days: code & 1023 });

/** Where a trace stands: the layer, the morning, the level. */
interface At {
  own: number;
  t: number;
  j: number;
}

/** From ready ground on a morning to the season's end. */
function readyOn(bound: CellBound, at: At, traced: Traced): void {
  throughReady(bound, at, traced);
  if (at.t >= bound.season.days) return;
  graze(bound, at, traced);
  afterGrazing(bound, at, traced);
}

/** From the morning after a grazing to the season's end. */
function afterGrazing(bound: CellBound, at: At, traced: Traced): void {
  const { season, levels } = bound;
  while (at.t < season.days) {
    const code = bound.layers[at.own].grazedBy[at.t * levels.count + at.j];
    const day = Math.floor(code / 64);
    const by = code % 64;
    if (by === MOWN || by === MOWN_WORKED) mown(bound, at, day, by === MOWN_WORKED, traced);
    else rested(bound, at, day, by, traced);
    if (by !== AGAIN && by !== AGAIN_WORKED) throughReady(bound, at, traced);
    if (at.t < season.days) graze(bound, at, traced);
  }
}

/** A cut of the planner's before the rest was over. */
function mown(bound: CellBound, at: At, evening: number, worked: boolean, traced: Traced): void {
  const { cuts, levels, season, terms } = bound;
  const last = cuts.lastEvening[Math.min(season.days, at.t + terms.recovered)];
  if (worked) traceBetween(bound, at.own, at.t, evening, null, traced.stays);
  if (worked) at.own = WORKED;
  traced.hayKg += cuts.kg[last * levels.count + at.j];
  at.t = evening + 1;
  at.j = cuts.stubble[evening];
}

/** The days of rest, and the stay that goes on past them. */
function rested(bound: CellBound, at: At, day: number, by: number, traced: Traced): void {
  const { levels, terms } = bound;
  const [from, j] = [at.t, at.j];
  const owners = bound.ownersCuts(from, day, j);
  traced.hayKg += owners.kg;
  if (by === AGAIN || by === AGAIN_WORKED) traced.restMoney += terms.restMoney(from, day);
  at.j = owners.low;
  at.t = day;
  const worked = by === AGAIN_WORKED || by === READY_WORKED;
  if (by < INSIDE) {
    if (worked) traceBetween(bound, at.own, from, day, null, traced.stays);
  } else {
    const m = (by - INSIDE) >> 1;
    const begun = traceBetween(bound, at.own, from, day, by - INSIDE, traced.stays);
    const windowed = by % 2 === 0 && bound.stays.limited(m) && bound.cuts.nextOwners[from] >= day;
    at.t = windowed ? bound.layers[at.own].grazedEnd[from * levels.count + j] : bound.stays.endOf(m, day, at.j);
    traced.stays.push({ group: terms.movers[m], first: begun, last: at.t - 1 });
  }
  if (worked || by >= INSIDE) at.own = WORKED;
}

/** Ready ground until its next grazing, or the season's end. */
function throughReady(bound: CellBound, at: At, traced: Traced): void {
  const { season, levels, terms, cuts } = bound;
  while (at.t < season.days) {
    const i = at.t * levels.count + at.j;
    const by = bound.layers[at.own].readyBy[i];
    if (by === GRAZE) return;
    if (by === WAIT) {
      const { low, kg } = bound.ownersCuts(at.t, at.t + 1, at.j);
      traced.hayKg += kg;
      at.j = low;
      at.t++;
    } else if (by === CUT) {
      traced.hayKg += cuts.kg[i];
      at.j = cuts.stubble[at.t];
      at.t++;
    } else {
      const end = bound.layers[at.own].readyEnd[i];
      traced.stays.push({ group: terms.movers[by], first: at.t, last: end - 1 });
      at.own = WORKED;
      at.t = end;
    }
  }
}

/** The grazing stay that begins, and the morning and level after it. */
function graze({ levels, layers }: CellBound, at: At, traced: Traced): void {
  const i = at.t * levels.count + at.j;
  const { group, days } = stayOf(layers[at.own].enteredBy[i]);
  traced.stays.push({ group, first: at.t, last: at.t + days - 1 });
  at.j = levels.after.get(group)?.[i * levels.most + days - 1] ?? 0;
  at.t += days;
}

/** Birds and pigs on the days from t to a morning; answers when the mover still inside on it began. */
function traceBetween(bound: CellBound, own: number, t: number, end: number, inside: number | null, stays: TracedStay[]): number {
  const between = bound.between(t, end, own);
  const { movers } = bound.terms;
  const begunOf = (by: number, k: number): number => (by % 2 ? between.begunWorked : between.begunFresh)[by >> 1][k];
  /** Whether the one that began so many days after the grazing followed another one's work. */
  const followed = (by: number, k: number): boolean => by % 2 === 1 && (own === UNWORKED || between.worked[k] < 0);
  const found: TracedStay[] = [];
  let k = end - t;
  let began = end;
  if (inside !== null) {
    k = begunOf(inside, k);
    began = t + k;
    if (!followed(inside, k)) k = 0;
  }
  while (k > 0) {
    const by = between.workedBy[k];
    if (by === NOBODY) {
      k--;
      continue;
    }
    const start = begunOf(by, k - 1);
    found.push({ group: movers[by >> 1], first: t + start, last: t + k - 1 });
    k = followed(by, start) ? start : 0;
  }
  stays.push(...found.reverse());
  return began;
}
