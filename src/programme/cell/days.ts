import { grownCover } from "../../science/growth.js";
import type { Season } from "../../season/season.js";
import type { CellState } from "../cell-state.js";
import type { CellContext } from "./context.js";

/** Lets the open ground grow to the morning of a day, whatever happens on the mornings between. */
export function grow({ season }: CellContext, s: CellState, to: number): void {
  const rates = season.cells[s.cell].rates;
  s.cover = grownCover(s.cover, rates[to] - rates[s.day], season.ceiling);
  s.day = to;
}

/** What a morning brings: the back fence coming down, and the weekly walk. */
export function morning({ season, hooks }: CellContext, s: CellState): void {
  if (s.day >= season.days) return;
  if (s.lots.length > 0 && s.day >= s.opens) joinLots(season, s);
  if (s.walk < season.walks.length && season.walks[s.walk] === s.day) {
    for (const hook of hooks.walk) hook(s, s.day);
    s.walk++;
  }
}

/** Lives on without animals to the morning of a day, from one eventful morning to the next. */
export function advance(context: CellContext, s: CellState, day: number): void {
  const { walks } = context.season;
  while (s.day < day) {
    let next = s.walk < walks.length ? Math.min(day, walks[s.walk]) : day;
    if (s.lots.length > 0 && s.opens > s.day && s.opens < next) next = s.opens;
    grow(context, s, next);
    morning(context, s);
  }
}

/** The back fence comes down: all ground of the cell is one again, at its mean cover. */
function joinLots(season: Season, s: CellState): void {
  const { rates, areaHa } = season.cells[s.cell];
  let mass = s.cover * s.open;
  for (const lot of s.lots) mass += grownCover(lot.cover, Math.max(0, rates[s.day] - rates[lot.from]), season.ceiling) * lot.area;
  s.cover = mass / areaHa;
  s.open = areaHa;
  s.lots.length = 0;
  s.pigLots = 0;
}
