import type { Cell, Scenario } from "../farm/scenario.js";
import type { PlannedCut } from "./cuts.js";
import type { Party } from "./parties.js";
import type { SeasonDays } from "./season-days.js";
import type { CellStay } from "./stays.js";

/** Ground that a strip group takes for a week of its stay. */
interface Lot {
  readonly stay: CellStay;
  /** The week's first and last day. */
  readonly first: number;
  readonly last: number;
  readonly areaHa: number;
  /** Ground its positions want, and what was open before it was taken. */
  readonly wantedHa: number;
  readonly openHa: number;
  /** Cover of the morning on which it was taken. */
  readonly coverKgPerHa: number;
  /** What the birds would eat and tread in the week, and what they could; 0 both for pigs. */
  readonly wantedKg: number;
  readonly standingKg: number;
}

/** One day of a group on the open ground. */
interface GrazedDay {
  readonly group: number;
  readonly day: number;
  readonly wantedKg: number;
  readonly standingKg: number;
  /** Cover after the day's eating, kg DM/ha. */
  readonly leftKgPerHa: number;
}

export interface CutDone extends PlannedCut {
  readonly day: number;
  /** Cover before the mower. */
  readonly coverKgPerHa: number;
  readonly areaHa: number;
  readonly hayKg: number;
}

export const SHUT_BY_BIRDS = 1;
export const SHUT_BY_PIGS = 2;

/** Mass of the season on the whole cell, kg DM. */
export interface Balance {
  start: number;
  grown: number;
  eaten: number;
  trodden: number;
  cut: number;
  end: number;
}

/** One cell's season day by day. Arrays of mornings have one entry more: the state after the last day. */
export interface CellSeason {
  readonly cell: Cell;
  readonly stays: readonly CellStay[];
  readonly cover: readonly number[];
  readonly open: readonly number[];
  /** SHUT_BY_ flags of the day's shut lots. */
  readonly shut: Uint8Array;
  readonly inHand: Uint8Array;
  /** 1 on days on which the cell is closed, for whatever reason. */
  readonly closed: Uint8Array;
  readonly lots: readonly Lot[];
  readonly grazed: readonly GrazedDay[];
  readonly cuts: readonly CutDone[];
  /** Nitrogen dropped by day, kg on the whole cell. */
  readonly nitrogenKg: Float64Array;
  readonly balance: Readonly<Balance>;
}

/** What the replay of one cell reads. */
export interface CellInput {
  readonly scenario: Scenario;
  readonly days: SeasonDays;
  readonly parties: readonly Party[];
  readonly cell: Cell;
  readonly stays: readonly CellStay[];
  /** The group that counts here each day, or -1. */
  readonly occupants: Int16Array;
  readonly cuts: ReadonlyMap<number, PlannedCut>;
}

export interface ShutLot {
  readonly areaHa: number;
  cover: number;
  /** First day on which it grows again. */
  readonly growsFrom: number;
}

/** The ground as it stands, changed through the season. */
export interface Ground {
  cover: number;
  open: number;
  lots: ShutLot[];
  /** The morning on which the back fence comes down. */
  opens: number;
  shut: number;
}

export interface Log {
  readonly lots: Lot[];
  readonly grazed: GrazedDay[];
  readonly cuts: CutDone[];
  readonly balance: Balance;
}
