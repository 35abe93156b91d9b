/** Every rule's id, in the order they are written for people. */
export const RULE_IDS = [
  "every-day-placed", "looked-at", "one-group-per-cell", "entry-cover", "upper-cover", "residual-cover",
  "demand-met", "stay-limit", "rest-period", "clean-ground", "poultry-rest", "pig-rest", "pig-pressure",
  "after-pigs", "worked-ground", "follow-window", "ground-wants", "grass-in-hand", "closing-cover",
  "density-ceiling", "rate-ceiling", "nitrogen-ceiling", "pen-steps", "people", "fence-kit", "water", "shade",
  "closed-dates", "housing-order", "standstill", "yard-room", "hay-stock", "holds",
] as const;

export type RuleId = (typeof RULE_IDS)[number];

/** Hard is never broken, charged is allowed at a price the plan shows, off is not asked. */
export type Use = "hard" | "charged" | "off";

/** One figure of a rule that the owner may change. */
export interface Parameter {
  /** Name in the farm file, in hyphens. */
  readonly key: string;
  readonly meaning: string;
  /** Unit of `usual`, as farm files write it; "" for a bare count. */
  readonly unit: string;
  /** Smallest, default and largest value. `usual: null` means no limit unless the owner sets one. */
  readonly least: number;
  readonly usual: number | null;
  readonly most: number;
  /** A published table's key, a page, or "common practice" / "judgement". */
  readonly source: string;
}

/** What a rule says, as data: no code, so that sheets and docs can read it. */
export interface Rule {
  readonly id: RuleId;
  /** One plain sentence for the owner. */
  readonly sentence: string;
  readonly equation: string;
  /** Unit of found and allowed. */
  readonly unit: string;
  /** Cell: can be judged from one cell's season. Group: from one group's days. Farm: needs several at once. */
  readonly scope: "cell" | "group" | "farm";
  readonly use: Use;
  /** The uses an owner may choose. */
  readonly uses: readonly Use[];
  readonly source: string;
  readonly parameters: readonly Parameter[];
}

/** One place where a plan breaks a rule. Days inclusive; found and allowed carry their unit. */
export interface Breach {
  readonly rule: RuleId;
  readonly group: string | null;
  readonly cell: string | null;
  readonly firstDay: string;
  readonly lastDay: string;
  readonly found: string;
  readonly allowed: string;
}

/** One rule's price in a plan, with where and when. */
export interface Charge {
  readonly rule: RuleId;
  readonly group: string | null;
  readonly cell: string | null;
  readonly firstDay: string;
  readonly lastDay: string;
  /** In money, never negative. */
  readonly money: number;
  /** What was found, in words with units: "24 days of rest, 36 usual". */
  readonly found: string;
}
