import { cloneState, ruleIndex, type CellState } from "../../src/programme/cell-state.js";
import type { Draft } from "../../src/programme/draft.js";
import { farmWide } from "../../src/programme/half.js";
import type { Chance } from "../oracle/chance.js";

export interface Lived {
  readonly group: number;
  readonly first: number;
  readonly last: number;
}

/** One cell's season as the exact simulator lived it, with nothing broken in it. */
export interface RandomCard {
  readonly cell: number;
  readonly stays: readonly Lived[];
  /** Evenings of cuts of the planner's own. */
  readonly cuts: readonly number[];
  /** Money inside the cell, all charges to the season's end, and the mower over the ground of its own cuts. */
  readonly money: number;
  /** Hay of all its cuts, kg. */
  readonly hayMade: number;
  /** Of that money, charges for rests cut short between two grazings of the season. */
  readonly restShort: number;
}

const REST = ruleIndex("rest-period");

/** A random season of a cell that keeps every rule inside it; null when chance led into a corner. */
export function randomCard(draft: Draft, cell: number, chance: Chance): RandomCard | null {
  const { season, simulator } = draft;
  const cuts = [...season.cells[cell].ownerCuts];
  let state = simulator.fresh(cell);
  const stays: Lived[] = [];
  const own: number[] = [];
  let pastRest = 0;
  const mowTo = (day: number): void => {
    while (cuts.length > 0 && cuts[0].day < day) {
      const { day: on, makesHay } = cuts.shift()!;
      simulator.cut(state, on, true, makesHay);
    }
  };
  const mower = chance.luck(0.5) ? 0.1 : 0;
  const eager = chance.between(0.05, 0.6);
  for (let t = 0; t < season.days; t++) {
    mowTo(t);
    if (chance.luck(mower)) {
      const mown = mownOn(draft, state, t);
      if (!mown) continue;
      state = mown;
      own.push(t);
      continue;
    }
    if (!chance.luck(eager)) continue;
    const wished = randomStay(draft, cell, t, cuts[0]?.day ?? season.days, chance, stays.at(-1));
    const stay = wished && longestKept(draft, state, wished);
    const after = stay && livedOn(draft, state, stay);
    if (!stay || !after) continue;
    if (!state.grazedThisSeason) pastRest = after.charges[REST];
    state = after;
    stays.push(stay);
    t = stay.last;
  }
  mowTo(season.days);
  simulator.finish(state);
  const mowing = own.length * season.cells[cell].areaHa * (farmWide(season, "hay-stock") ? season.scenario.prices.mowingPerHa : 0);
  return state.over === 0 ? { cell, stays, cuts: own, money: state.money + mowing, hayMade: state.hayMade, restShort: state.charges[REST] - pastRest } : null;
}

function mownOn(draft: Draft, state: CellState, day: number): CellState | null {
  const after = cloneState(state);
  draft.simulator.cut(after, day, false, true);
  return after.over === 0 ? after : null;
}

function livedOn(draft: Draft, state: CellState, { group, first, last }: Lived): CellState | null {
  const after = cloneState(state);
  draft.simulator.stay(after, group, first, last);
  return after.over === 0 ? after : null;
}

/** Of a long stay of birds as many days as its rules keep: up to the very last that they do. */
function longestKept(draft: Draft, state: CellState, stay: Lived): Lived | null {
  if (!draft.season.groups[stay.group].bird || stay.last - stay.first < 15) return stay;
  for (let { last } = stay; last >= stay.first; last--) {
    const own = { ...stay, last };
    if (mayLeave(draft, state.cell, stay.group, last + 1) && livedOn(draft, state, own)) return own;
  }
  return null;
}

/** A stay that begins on a day, and that its group may begin, live and end by its own days. */
function randomStay(draft: Draft, cell: number, first: number, before: number, chance: Chance, last: Lived | undefined): Lived | null {
  const { season, tables } = draft;
  const group = chance.whole(0, season.groups.length - 1);
  const { present, arrives, mayEnter, grazer, pig } = season.groups[group];
  const at = (t: number): number => t * tables.width + cell + 1;
  if (!present[first] || !mayEnter[cell] || tables.startOver[group][at(first)] > 0) return null;
  if (last?.group === group && last.last === first - 1 && !arrives[first]) return null;
  const wished = first + chance.whole(1, grazer ? 6 : pig ? 30 : chance.pick([12, 12, 60])) - 1;
  let end = first - 1;
  for (let t = first; t <= Math.min(wished, before - 1, season.days - 1); t++) {
    if (!present[t] || tables.standOver[group][at(t)] > 0 || (t > first && arrives[t]) || (t > first && !mayStep(draft, group, first, t))) break;
    if (mayLeave(draft, cell, group, t + 1)) end = t;
  }
  return end < first ? null : { group, first, last: end };
}

function mayStep({ season, tables }: Draft, group: number, first: number, t: number): boolean {
  const { strip } = season.scenario.groups[group];
  return !strip || (t - first) % strip.days !== 0 || tables.stepOver[group][t] <= 0;
}

function mayLeave({ season, tables }: Draft, cell: number, group: number, t: number): boolean {
  const { present, arrives } = season.groups[group];
  if (t >= season.days || !present[t] || arrives[t]) return true;
  const open = (p: number): boolean => tables.startOver[group][t * tables.width + p] <= 0 && tables.standOver[group][t * tables.width + p] <= 0;
  return Array.from({ length: tables.width }, (_, p) => p).some((p) => p !== cell + 1 && open(p));
}
