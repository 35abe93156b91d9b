import type { IsoDate } from "../quantity/calendar.js";
import type { Breach, Charge, RuleId } from "../rules/rule.js";

/** One cell's season as replayed: index 0 is the season's first day. */
export interface CellDays {
  readonly cell: string;
  /** Cover of the open ground on the morning of each day, and after the last day, kg DM/ha. */
  readonly coverKgPerHa: readonly number[];
  /** Open area on the morning of each day, and after the last day, ha. */
  readonly openHa: readonly number[];
  /** Mass balance of the season, kg DM on the whole cell; start + grown - eaten - trodden - cut = end. */
  readonly balance: { readonly start: number; readonly grown: number; readonly eaten: number; readonly trodden: number; readonly cut: number; readonly end: number };
  /** Nitrogen dropped in the season, kg/ha of the whole cell. */
  readonly nitrogenKgPerHa: number;
  /** Ground worked by birds and opened by pigs in the season, ha. */
  readonly workedHa: number;
  readonly openedHa: number;
}

export interface Measures {
  readonly hayFedKg: number;
  readonly hayMadeKg: number;
  /** Stays that begin in a cell or yard other than the day before's, after the season's first day. */
  readonly moves: number;
  /** Of these, into a field from another field or from the yard. */
  readonly hauls: number;
  /** Minutes of chores, moves, hauls and steps, by season day. */
  readonly minutesByDay: readonly number[];
  readonly minutesAtHomeByDay: readonly number[];
  readonly yardDays: Readonly<Record<string, number>>;
  readonly nitrogenByCell: Readonly<Record<string, number>>;
  /** Kg N dropped in the yard, reported apart. */
  readonly nitrogenInYardKg: number;
  readonly nitrogenOnHoldingKgPerHa: number;
}

/** What the check found in a plan. */
export interface Report {
  readonly firstDay: IsoDate;
  readonly breaches: readonly Breach[];
  readonly charges: readonly Charge[];
  readonly chargesByRule: Readonly<Record<RuleId, number>>;
  /** Sum of all charges, money. */
  readonly cost: number;
  readonly measures: Measures;
  readonly cells: readonly CellDays[];
}
