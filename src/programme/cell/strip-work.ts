import type { CellState } from "../cell-state.js";
import type { CellContext } from "./context.js";
import { advance } from "./days.js";

/** Lives a stay of birds or pigs: a lot is split off for each week of it, and all stay shut for the interval after. */
export function work(context: CellContext, s: CellState, g: number, first: number, last: number): void {
  const { season, hooks, ground } = context;
  const { strip, head, kind } = season.scenario.groups[g];
  if (!strip) throw new Error(`${season.groups[g].name} has no strip`);
  const days = last - first + 1;
  const area = Math.ceil(days / strip.days) * strip.areaHa;
  for (const hook of hooks.work) hook(s, g, first, last, area);
  const pig = season.groups[g].pig;
  const opens = last + 1 + (pig ? ground.pigsInterval : ground.birdsInterval)(s.cell, g);
  s.opens = s.lots.length > 0 ? Math.max(s.opens, opens) : opens;
  for (let from = first; from <= last; from += 7) {
    const to = Math.min(from + 6, last);
    advance(context, s, from);
    const n = Math.floor((to - first) / strip.days) - Math.ceil((from - first) / strip.days) + 1;
    if (n > 0) splitLot(context, s, g, from, to, n * strip.areaHa);
  }
  advance(context, s, last + 1);
  s.worked.push({ last, area, kind });
  if (pig && (head * strip.days) / strip.areaHa >= ground.openedFrom(s.cell, g)) s.opened += Math.floor(days / strip.days) * strip.areaHa;
}

function splitLot({ season, hooks, ground }: CellContext, s: CellState, g: number, from: number, to: number, wanted: number): void {
  const group = season.groups[g];
  let taken = 0;
  if (group.bird) for (let t = from; t <= to; t++) taken += group.taken[t];
  for (const hook of hooks.lot) hook(s, g, from, wanted, taken);
  const area = Math.min(wanted, s.open);
  if (area <= 0) return;
  const cover = group.pig ? Math.min(s.cover, ground.pigCover(s.cell, g)) : Math.max(Math.min(s.cover, ground.leastStanding(s.cell, g)), s.cover - taken / area);
  s.lots.push({ area, cover, from: to + 1, byPigs: group.pig });
  s.open -= area;
  if (s.open < 1e-12) s.open = 0;
  if (group.pig) s.pigLots++;
  else s.scratched += area;
}
