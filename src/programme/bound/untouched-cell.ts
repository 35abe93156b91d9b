import { CUT, GRAZE, UNWORKED, WAIT, WORKED, type Untouched } from "./layers.js";

/** Value of a cell that nobody has grazed yet, on the season's first morning. Its cover is known exactly. */
export function untouchedValue(bound: Untouched): number {
  const { season, first, firstBy, firstInside, grass, levels } = bound;
  const D = season.days;
  first[UNWORKED][D] = bound.closing(levels.untouchedMost[D]);
  first[WORKED][D] = 0;
  for (const tables of firstInside) for (const table of tables) table[D] = Infinity;
  for (let t = D - 1; t >= 0; t--) {
    for (const own of [UNWORKED, WORKED]) {
      const graze = firstGrazing(bound, own, t);
      const wait = first[own][t + 1] - hayOfOwner(bound, t);
      const mown = firstCut(bound, own, t);
      first[own][t] = Math.min(wait, graze, mown);
      firstBy[own][t] = mown < wait && mown < graze ? CUT : graze < wait ? GRAZE : WAIT;
    }
    bound.terms.movers.forEach((g, m) => moverDay(bound, g, m, t));
    first[UNWORKED][t] += grass.walkUntouched[t];
  }
  return first[UNWORKED][0];
}

/** Worth of the hay that the owner's cut of that evening makes at most. */
function hayOfOwner({ cuts, terms }: Untouched, t: number): number {
  const own = cuts.owners.find((cut) => cut.evening === t);
  return own ? own.untouchedKg * terms.hay() : 0;
}

/** A cut of the planner's on the evening of day t, before any grazing. */
function firstCut({ cuts, terms, levels, layers }: Untouched, own: number, t: number): number {
  if (cuts.untouchedKg[t] < 0 || cuts.mower[t] === Infinity || (own !== UNWORKED && !cuts.onWorked)) return Infinity;
  return cuts.mower[t] - cuts.untouchedKg[t] * terms.hay() + layers[own].ready[(t + 1) * levels.count + cuts.stubble[t]];
}

/** A day of birds or pigs on ground not grazed yet, and going onto it. */
function moverDay({ season, terms, grass, first, firstBy, firstInside, firstLeaves }: Untouched, g: number, m: number, t: number): void {
  const { birds } = grass;
  const asked = birds !== null && season.groups[g].bird;
  for (const own of [UNWORKED, WORKED]) {
    const table = firstInside[m][own];
    const stands = own === WORKED || !asked || birds.mayStand[t] === 1;
    const stay = terms.mayStay(g, t + 1) ? table[t + 1] : Infinity;
    const leave = terms.mayLeave(g, t + 1) ? first[WORKED][t + 1] : Infinity;
    firstLeaves[m][own][t] = leave <= stay ? 1 : 0;
    table[t] = stands ? terms.day(g, t) + (own === UNWORKED && asked ? birds.lotsUntouched[t] : 0) + Math.min(stay, leave) : Infinity;
    const value = own === UNWORKED && asked && birds.mayBegin[t] === 0 ? Infinity : terms.start(g, t, null) + table[t];
    if (value >= first[own][t]) continue;
    first[own][t] = value;
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
