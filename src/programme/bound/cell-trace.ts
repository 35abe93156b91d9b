import { GRAZE, WAIT, type CellBound } from "./cell-bound.js";

/** Who stands where from day to day in a cheapest season. */
export interface TracedStay {
  readonly group: number;
  readonly first: number;
  readonly last: number;
}

/** Walks a solved cell's cheapest season forward, by the choices kept with its values. */
export function traceSeason(bound: CellBound): TracedStay[] {
  const { season, levels, terms } = bound;
  const { count, most } = levels;
  const stays: TracedStay[] = [];
  const add = (group: number, first: number, last: number): void => {
    stays.push({ group, first, last });
  };
  /** A mover's stay from day t: the morning after it. */
  const stayOut = (t: number, leaves: (day: number) => boolean): number => {
    while (!leaves(t)) t++;
    return t + 1;
  };
  const readyOn = (t: number, j: number): void => {
    while (t < season.days) {
      const by = bound.readyBy[t * count + j];
      if (by === WAIT) {
        j = Math.max(j, bound.mownBetween(t, t + 1));
        t++;
      } else if (by === GRAZE) {
        graze(t, j);
        return;
      } else {
        const end = stayOut(t, (day) => bound.insideLeaves[by][day * count + j] === 1);
        add(terms.movers[by], t, end - 1);
        t = end;
      }
    }
  };
  const graze = (t: number, j: number): void => {
    const code = bound.enteredBy[t * count + j];
    const g = code >> 10;
    const n = code & 1023;
    add(g, t, t + n - 1);
    const after = levels.after.get(g);
    grazedOn(t + n, after ? after[(t * count + j) * most + n - 1] : 0);
  };
  const grazedOn = (t: number, j: number): void => {
    if (t >= season.days) return;
    const code = bound.grazedBy[t * count + j];
    const day = Math.floor(code / 64);
    const by = code % 64;
    const at = Math.max(j, bound.mownBetween(t, day));
    const begun = traceBetween(bound, t, day, by >= 2 ? by - 2 : null, add);
    if (by === 1) graze(day, at);
    else if (by === 0) readyOn(day, at);
    else {
      const end = stayOut(day, (d) => bound.insideLeaves[by - 2][d * count + at] === 1);
      add(terms.movers[by - 2], begun, end - 1);
      readyOn(end, at);
    }
  };
  let t = 0;
  while (t < season.days) {
    const by = bound.firstBy[t];
    if (by === WAIT) t++;
    else if (by === GRAZE) {
      const g = bound.firstStay[t] >> 10;
      const n = bound.firstStay[t] & 1023;
      add(g, t, t + n - 1);
      grazedOn(t + n, levels.afterFirst.get(g)?.level[t * most + n - 1] ?? 0);
      break;
    } else {
      const g = terms.movers[by];
      const table = bound.firstInside[by];
      const end = stayOut(t, (day) => terms.mayLeave(g, day + 1) && !(terms.mayStay(g, day + 1) && table[day + 1] < bound.first[day + 1]));
      add(g, t, end - 1);
      t = end;
    }
  }
  return stays;
}

/** Birds and pigs on the days from t to a morning; answers when the mover still inside on it began. */
function traceBetween(bound: CellBound, t: number, end: number, inside: number | null, add: (group: number, first: number, last: number) => void): number {
  const between = bound.between(t, end);
  const { movers } = bound.terms;
  let k = end - t;
  let began = end;
  if (inside !== null) {
    k = between.begun[inside][k];
    began = t + k;
  }
  while (k > 0) {
    const by = between.freeBy[k];
    if (by === WAIT) {
      k--;
      continue;
    }
    const start = between.begun[by][k - 1];
    add(movers[by], t + start, t + k - 1);
    k = start;
  }
  return began;
}
