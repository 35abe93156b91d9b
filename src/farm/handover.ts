import type { Span } from "../quantity/calendar.js";
import type { Corner } from "../science/boundary.js";
import type { CautionRow } from "../science/tables.js";

export type { CautionRow, CautionWhere } from "../science/tables.js";

/** Bought feed given every day. */
export interface Feed {
  readonly what: string;
  readonly kgPerHeadDay: number;
  /** Where it lies; null where nobody wrote it. */
  readonly lies: string | null;
}

/** A walk between two fields, or a field and a yard, that is not by way of the yard. */
export interface Path {
  readonly from: string;
  readonly to: string;
  readonly metres: number;
}

/** What helpers' sheets tell beside the plan: where things lie and how one gets there. None of it changes a plan. */
export interface Handover {
  /** How one gets to a field, in words, by its name. */
  readonly ways: Readonly<Record<string, string>>;
  readonly paths: readonly Path[];
  /** Gates by field or cell, and the yard, in metres as boundaries are; only where a map has them. */
  readonly gates: Readonly<Record<string, Corner>>;
  readonly yardAt: Corner | null;
  /** By group. */
  readonly feed: Readonly<Record<string, Feed>>;
  /** What to bring for a group's moves and steps, and where it lies, by group. */
  readonly take: Readonly<Record<string, string>>;
  /** Days on which a group calves, lambs or farrows, by group. */
  readonly births: Readonly<Record<string, readonly Span[]>>;
  /** Where nets, reels and energisers lie that are not in use. */
  readonly kitLies: string | null;
  /** Cells that a public path runs through. */
  readonly publicPaths: readonly string[];
  /** Least voltage at which a fence holds, kV: for most stock, and for sheep and goats, whose wool and hair keep it off. */
  readonly leastKv: { readonly usual: number; readonly wool: number };
  /** Dangers of the trade that sheets warn of, whatever can hurt people first. */
  readonly cautions: readonly CautionRow[];
}

/** Of a farm that tells nothing but what stands in every farm file. */
export const NO_HANDOVER: Handover = {
  ways: {}, paths: [], gates: {}, yardAt: null, feed: {}, take: {}, births: {}, kitLies: null, publicPaths: [], leastKv: { usual: 3, wool: 4 }, cautions: [],
};
