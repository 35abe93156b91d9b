import type { Season } from "../season/season.js";
import { cellContext, type CellContext } from "./cell/context.js";
import { cut } from "./cell/cuts.js";
import { advance } from "./cell/days.js";
import { graze } from "./cell/grazing.js";
import { dropNitrogen } from "./cell/nitrogen.js";
import { work } from "./cell/strip-work.js";
import { freshState, resetState, type CellState } from "./cell-state.js";
import type { Half } from "./half.js";
import { HALVES } from "./rules/index.js";

/** Lives one cell's season exactly: the only place of the programme that knows growth. */
export interface CellSimulator {
  readonly season: Season;
  fresh(cell: number): CellState;
  /** Takes a state back to the first morning. */
  reset(s: CellState): void;
  /** Lives on without animals to the morning of a day. */
  advance(s: CellState, day: number): void;
  /** Lives a whole stay; the state is then on the morning after its last day. */
  stay(s: CellState, group: number, first: number, last: number): void;
  /** Money and broken rules of a stay where grass, rest and lots are no matter: what is left of its price. */
  probe(s: CellState, group: number, first: number, last: number): { readonly money: number; readonly over: number };
  /** Cuts on the evening of `day`, to which the state is advanced. */
  cut(s: CellState, day: number, byOwner: boolean, makesHay: boolean): void;
  /** Lives to the season's end and settles what is asked there. */
  finish(s: CellState): void;
}

/** Builds the simulator of a season from the halves of the rules; tests leave one out to see what it was for. */
export function cellSimulator(season: Season, halves: readonly Half[] = HALVES): CellSimulator {
  const context = cellContext(season, halves);
  return {
    season,
    fresh: (cell) => freshState(season, cell, context.past[cell]),
    reset: (s) => resetState(season, s, context.past[s.cell]),
    advance: (s, day) => advance(context, s, day),
    stay: (s, g, first, last) => stay(context, s, g, first, last),
    probe: (s, g, first, last) => probe(context, s, g, first, last),
    cut: (s, day, byOwner, makesHay) => cut(context, s, day, byOwner, makesHay),
    finish: (s) => finish(context, s),
  };
}

function stay(context: CellContext, s: CellState, g: number, first: number, last: number): void {
  advance(context, s, first);
  for (const hook of context.hooks.enter) hook(s, g, first, last);
  if (context.season.scenario.groups[g].strip) work(context, s, g, first, last);
  else graze(context, s, g, first, last);
  s.lastOf[g] = last;
  dropNitrogen(context, s, g, first, last);
}

function probe({ season, hooks, ground }: CellContext, s: CellState, g: number, first: number, last: number): { readonly money: number; readonly over: number } {
  s.day = first;
  s.cover = season.ceiling;
  s.lastGrazed = null;
  s.grazedThisSeason = true;
  const { leader } = season.groups[g];
  if (leader >= 0) s.lastOf[leader] = first - ground.followGap(s.cell, g);
  for (const hook of hooks.enter) hook(s, g, first, last);
  if (!season.scenario.groups[g].strip) {
    for (const hook of hooks.graze) hook(s, g, first, last);
    for (let t = first; t <= last; t++) for (const hook of hooks.bite) hook(s, g, t);
  }
  return { money: s.money, over: s.over };
}

function finish(context: CellContext, s: CellState): void {
  advance(context, s, context.season.days);
  for (const hook of context.hooks.close) hook(s);
}
