import { RULE_IDS, type RuleId } from "../rules/rule.js";
import type { Season } from "../season/season.js";

/** Ground split off a cell by pigs or birds, until the back fence comes down. */
export interface Lot {
  readonly area: number;
  readonly cover: number;
  /** Morning from which it grows. */
  readonly from: number;
  readonly byPigs: boolean;
}

/** A use of ground by birds or pigs: last day (negative before the season), area in ha, index of the group or -1, kind. */
export interface WorkedUse {
  readonly last: number;
  readonly area: number;
  readonly kind: string;
}

/** One cell's season as far as it has been lived. The only mutable data of the programme: cloned, never shared. */
export interface CellState {
  cell: number;
  /** The morning that has been lived; everything before is settled. */
  day: number;
  cover: number;
  open: number;
  lots: Lot[];
  /** Morning on which the lots join; meaningless without lots. */
  opens: number;
  pigLots: number;
  /** Latest grazing: its group and last day; lastGrazed is null before any. */
  lastGrazed: number | null;
  grazedThisSeason: boolean;
  /** Latest last day of each group in this cell, -10000 for never. */
  lastOf: Int32Array;
  worked: WorkedUse[];
  opened: number;
  scratched: number;
  nitrogen: number;
  /** Kg N by calendar year of the season. */
  nitrogenByYear: Float64Array;
  /** Days and kg N/ha, for twelve-month windows of long seasons. */
  deposits: number[];
  hayMade: number;
  /** Day and area of each cut. */
  cuts: number[];
  /** Grass above the residual on each weekly walk, kg DM, where it counts as feed ahead. */
  grass: Float64Array;
  walk: number;
  /** Money by rule. */
  charges: Float64Array;
  /** Sum of `charges`. */
  money: number;
  /** By how much hard rules are broken, in their own steps; 0 for a valid season. */
  over: number;
}

export const NEVER = -10_000;

/** Position of a rule in `charges`. */
export const ruleIndex = (id: RuleId): number => RULE_IDS.indexOf(id);

export function freshState(season: Season, cell: number, worked: readonly WorkedUse[]): CellState {
  const own = season.cells[cell];
  return {
    cell, day: 0, cover: own.startCover, open: own.areaHa, lots: [], opens: 0, pigLots: 0, lastGrazed: own.lastGrazed,
    grazedThisSeason: false, lastOf: new Int32Array(season.groups.length).fill(NEVER), worked: [...worked], opened: 0, scratched: 0,
    nitrogen: 0, nitrogenByYear: new Float64Array(3), deposits: [], hayMade: 0, cuts: [], grass: new Float64Array(season.walks.length),
    walk: 0, charges: new Float64Array(RULE_IDS.length), money: 0, over: 0,
  };
}

/** Takes a state back to the season's first morning, its arrays kept. */
export function resetState(season: Season, s: CellState, worked: readonly WorkedUse[]): void {
  const own = season.cells[s.cell];
  s.day = 0;
  s.cover = own.startCover;
  s.open = own.areaHa;
  s.lots.length = 0;
  s.pigLots = 0;
  s.lastGrazed = own.lastGrazed;
  s.grazedThisSeason = false;
  s.lastOf.fill(NEVER);
  s.worked.length = 0;
  for (const use of worked) s.worked.push(use);
  s.opened = s.scratched = s.nitrogen = s.hayMade = s.walk = s.money = s.over = 0;
  s.nitrogenByYear.fill(0);
  s.deposits.length = s.cuts.length = 0;
  s.grass.fill(0);
  s.charges.fill(0);
}

/** Makes one state the same as another of its season, its arrays kept. */
export function copyState(to: CellState, from: CellState): void {
  to.cell = from.cell;
  to.day = from.day;
  to.cover = from.cover;
  to.open = from.open;
  to.opens = from.opens;
  to.pigLots = from.pigLots;
  to.lastGrazed = from.lastGrazed;
  to.grazedThisSeason = from.grazedThisSeason;
  to.opened = from.opened;
  to.scratched = from.scratched;
  to.nitrogen = from.nitrogen;
  to.hayMade = from.hayMade;
  to.walk = from.walk;
  to.money = from.money;
  to.over = from.over;
  copyList(to.lots, from.lots);
  copyList(to.worked, from.worked);
  copyList(to.deposits, from.deposits);
  copyList(to.cuts, from.cuts);
  to.lastOf.set(from.lastOf);
  to.nitrogenByYear.set(from.nitrogenByYear);
  to.grass.set(from.grass);
  to.charges.set(from.charges);
}

function copyList<T>(to: T[], from: readonly T[]): void {
  to.length = from.length;
  for (let i = 0; i < from.length; i++) to[i] = from[i];
}

export function cloneState(s: CellState): CellState {
  return {
    ...s,
    lots: s.lots.slice(),
    lastOf: s.lastOf.slice(),
    worked: s.worked.slice(),
    nitrogenByYear: s.nitrogenByYear.slice(),
    deposits: s.deposits.slice(),
    cuts: s.cuts.slice(),
    grass: s.grass.slice(),
    charges: s.charges.slice(),
  };
}
