import type { Scenario } from "../farm/scenario.js";

/** Index of the yard as a place; cells are 0 and up. */
export const YARD = -1;
/** Index for a day on which a group needs no place of its own. */
export const AWAY = -2;
/** No held place on a day. */
export const FREE = -3;

/** One cell over the season, by day index. Days 0 to `days` - 1. */
export interface SeasonCell {
  readonly name: string;
  readonly field: number;
  readonly areaHa: number;
  /** Cover on the morning of day 0, kg DM/ha. */
  readonly startCover: number;
  /** Sum of daily growth rates before a day: rates[t2] - rates[t1] is the regrowth from t1 to t2. */
  readonly rates: Float64Array;
  /** Growth of the row on each day, kg DM/ha/day. */
  readonly growth: Float64Array;
  /** 1 on days on which the ground is in hand. */
  readonly inHand: Uint8Array;
  /** 1 on days on which the ground is in hand and not closed. */
  readonly open: Uint8Array;
  /** Days whose evening the owner has fixed for a cut. */
  readonly ownerCuts: readonly { readonly day: number; readonly makesHay: boolean }[];
  readonly mow: boolean;
  /** Latest grazing before the season as a (negative) day; null when there was none. */
  readonly lastGrazed: number | null;
}

/** One group over the season, by day index; a companion's share is in its host's figures on the days it runs along. */
export interface SeasonGroup {
  readonly name: string;
  readonly grazer: boolean;
  readonly bird: boolean;
  readonly pig: boolean;
  /** 1 on days on which it needs a place of its own. */
  readonly present: Uint8Array;
  /** 1 on days on which it may stand in a cell. */
  readonly out: Uint8Array;
  /** 1 on its first day of each presence. */
  readonly arrives: Uint8Array;
  readonly intake: Float64Array;
  readonly taken: Float64Array;
  readonly nitrogen: Float64Array;
  readonly liveWeight: Float64Array;
  readonly litres: Float64Array;
  readonly hayKg: Float64Array;
  /** 1 for each cell it may enter. */
  readonly mayEnter: Uint8Array;
  /** 1 on days on which people and tow allow a move, and a towed step. */
  readonly moveOk: Uint8Array;
  readonly stepOk: Uint8Array;
  /** Held place by day: cell index, YARD, or FREE. */
  readonly held: Int16Array;
  /** Yard index it stands in when it has no cell. */
  readonly yard: number;
  /** Index of the group it follows, or -1. */
  readonly leader: number;
}

/** The farm laid out by day: what the programme works on. */
export interface Season {
  readonly scenario: Scenario;
  readonly days: number;
  /** Day number of day 0. */
  readonly firstDay: number;
  readonly ceiling: number;
  readonly cells: readonly SeasonCell[];
  readonly groups: readonly SeasonGroup[];
  /** Day of the year of each day, 1 to 366. */
  readonly dayOfYear: Int16Array;
  readonly month: Uint8Array;
  /** 0 for the first calendar year of the season. */
  readonly year: Uint8Array;
  /** Minutes at home and the chores of each day. */
  readonly minutesAtHome: Float64Array;
  readonly chores: Float64Array;
  /** Days of the weekly walk. */
  readonly walks: readonly number[];
  /** Grazers' taken on each day, all of them, kg DM. */
  readonly grazersTaken: Float64Array;
  /** Minutes of a haul, by group and field. */
  readonly haulMinutes: readonly Float64Array[];
}
