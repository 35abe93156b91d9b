import { GRAZE, UNWORKED, WAIT, WORKED, type Untouched } from "./layers.js";

/** Value of a cell that nobody has grazed yet, on the season's first morning. Its cover is known exactly. */
export function untouchedValue(bound: Untouched): number {
  const { season, first, firstBy, firstInside } = bound;
  const D = season.days;
  first[UNWORKED][D] = first[WORKED][D] = 0;
  for (const table of firstInside) table[D] = Infinity;
  for (let t = D - 1; t >= 0; t--) {
    for (const own of [UNWORKED, WORKED]) {
      const graze = firstGrazing(bound, own, t);
      first[own][t] = Math.min(first[own][t + 1], graze);
      firstBy[own][t] = graze < first[own][t + 1] ? GRAZE : WAIT;
    }
    bound.terms.movers.forEach((g, m) => moverDay(bound, g, m, t));
  }
  return first[UNWORKED][0];
}

/** A day of birds or pigs on ground not grazed yet, and going onto it. */
function moverDay({ season, terms, short, first, firstBy, firstInside, firstLeaves, mowing }: Untouched, g: number, m: number, t: number): void {
  const table = firstInside[m];
  const stay = terms.mayStay(g, t + 1) ? table[t + 1] : Infinity;
  const leave = terms.mayLeave(g, t + 1) ? first[WORKED][t + 1] : Infinity;
  firstLeaves[m][t] = leave <= stay ? 1 : 0;
  table[t] = terms.day(g, t) + Math.min(stay, leave);
  const value = terms.start(g, t, null) + table[t];
  const long = short !== null && season.groups[g].bird && short.untouched[t] === 0;
  for (const own of [UNWORKED, WORKED]) {
    const onto = value + (long && own === UNWORKED ? mowing : 0);
    if (onto >= first[own][t]) continue;
    first[own][t] = onto;
    firstBy[own][t] = m;
  }
}

/** First grazing of the season on day t. */
function firstGrazing(bound: Untouched, own: number, t: number): number {
  const { season, levels, terms } = bound;
  const { most, count } = levels;
  const past = season.cells[bound.cell].lastGrazed;
  if (past !== null && t - past - 1 < terms.floor) return Infinity;
  const restMoney = past === null ? 0 : terms.restMoney(past + 1, t);
  let best = Infinity;
  for (const [g, table] of levels.afterFirst) {
    for (let n = 1; n <= most && t + n <= season.days; n++) {
      const level = table.level[t * most + n - 1];
      if (level < 0) break;
      if (!terms.mayLeave(g, t + n)) continue;
      const value = terms.stay(g, t, n) + table.money[t] + restMoney + bound.layers[own].grazed[(t + n) * count + level];
      if (value >= best) continue;
      best = value;
      bound.firstStay[t * 2 + own] = g * 1024 + n;
    }
  }
  return best;
}
