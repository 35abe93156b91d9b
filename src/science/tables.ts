/**
 * The published tables as types; `files/tables.ts` reads them, everything else takes them as an argument.
 * A row says what was published, for what, by whom, and how surely we know it.
 */

/** Verified: read in a copy of the page named. Derived: arithmetic on such figures. Memory and judgement decide no test. */
export const STATUSES = ["verified", "verified (partial)", "derived", "from memory", "judgement"] as const;
export type Status = (typeof STATUSES)[number];

export interface Row<V> {
  readonly key: string;
  readonly value: V;
  /** Unit of the value, as farm files write it; "" for a bare figure or words. */
  readonly unit: string;
  readonly appliesTo: string;
  readonly source: string;
  readonly status: Status;
}

export type Range = readonly [least: number, most: number];

/** Growth in kg DM/ha/day, January to December. Southern rows stand as measured. */
export interface GrowthRow extends Row<readonly number[]> {
  /** Row times days of the months, kg DM/ha/year. */
  readonly total: number;
  /** The year's total that the source prints, kg DM/ha; null where it prints none. */
  readonly printedTotal: number | null;
  readonly hemisphere: "north" | "south";
}

/** A figure of a class of stock, from a live weight on. Key: "cattle.cow with calf", "layers", "sheep.young". */
export interface ClassRow extends Row<number> {
  /** The row holds for animals of this live weight or more, kg. */
  readonly fromKg: number;
}

/** Live weight of one animal of a class, kg. */
export interface WeightRow extends Row<number> {
  readonly least: number;
  readonly most: number;
}

/** Heights at which to begin and end grazing, inches, and rest, days. */
export interface SwardRow extends Row<{ readonly beginIn: Range; readonly endIn: Range; readonly restDays: Range }> {}

/** Dry matter in an inch of height, lb/ac, of a fair, a good and an excellent stand. */
export interface HeightRow extends Row<{ readonly fair: Range; readonly good: Range; readonly excellent: Range }> {}

/** A figure of the planner's own: what is taken unless the owner says otherwise, and what he may say. */
export interface DefaultRow extends Row<number> {
  readonly least: number;
  readonly most: number;
}

/** What makes a caution apply to a group of its kinds, or, mown, to the farm. */
export const CAUTION_WHERE = [
  "here", "ground", "with-young", "births", "public-path", "towed", "pushed", "fenced", "hot", "shade", "wet-ground", "open-water", "housing-order",
  "comes", "leaves", "comes-or-goes", "mown",
] as const;
export type CautionWhere = (typeof CAUTION_WHERE)[number];

/** A danger of the trade: which animals, where and when; its words stand in the catalogue under "caution." and its key. */
export interface CautionRow {
  readonly key: string;
  /** 1 hurts people, 2 kills animals, 3 is law, 4 everything else; rows stand in this order. */
  readonly rank: number;
  readonly kinds: readonly string[];
  readonly where: CautionWhere;
  /** Pattern of the classes that it is of; all unless given. */
  readonly class?: string | undefined;
  readonly "in-milk"?: boolean | undefined;
  /** Kinds of which another group must be here too. */
  readonly beside?: readonly string[] | undefined;
  /** First and last month, 1 to 12; the last may come before the first. */
  readonly months?: readonly [number, number] | undefined;
  readonly source: string;
  readonly status: Status;
}

export interface Tables {
  readonly growth: readonly GrowthRow[];
  readonly animalUnits: readonly Row<number>[];
  /** Herbage eaten: a share of live weight (unit "share") or kg DM a head and day (unit "kg/d"). */
  readonly intake: readonly ClassRow[];
  readonly weights: readonly WeightRow[];
  /** Kg N a head and day as excreted. */
  readonly nitrogen: readonly ClassRow[];
  /** Litres a head and day in summer. */
  readonly water: readonly ClassRow[];
  readonly swards: readonly SwardRow[];
  readonly heights: readonly HeightRow[];
  readonly utilisation: readonly Row<Range>[];
  readonly poultry: readonly Row<number>[];
  readonly pigs: readonly Row<number>[];
  readonly cautions: readonly Row<number>[];
  readonly cautionRows: readonly CautionRow[];
  readonly defaults: readonly DefaultRow[];
  /** What a rule rests on, in words; a rule's `source` is a key here or in `defaults`. */
  readonly sources: readonly Row<string>[];
}

/** The row of a key. Throws when the table has none: a key in code is ours to get right. */
export function rowOf<R extends { readonly key: string }>(rows: readonly R[], key: string): R {
  const row = rows.find((r) => r.key === key);
  if (!row) throw new Error(`no row ${key}`);
  return row;
}

/**
 * The row of a class for an animal of a weight.
 *
 * @param rows intake, nitrogen or water
 * @param kind "cattle", "layers", ...
 * @param animalClass class of the kind; birds have none
 * @param weightKg live weight, kg
 */
export function classRow(rows: readonly ClassRow[], kind: string, animalClass: string | null, weightKg: number): ClassRow {
  const key = animalClass ? `${kind}.${animalClass}` : kind;
  const fitting = rows.filter((row) => row.key === key && row.fromKg <= weightKg);
  const row = fitting.reduce<ClassRow | undefined>((best, r) => (best && best.fromKg > r.fromKg ? best : r), undefined);
  if (!row) throw new Error(`no row ${key}`);
  return row;
}

/** The classes that a kind has, in the order of the table; none for birds. */
export function classesOf(tables: Tables, kind: string): readonly string[] {
  const keys = tables.weights.map((row) => row.key).filter((key) => key.startsWith(`${kind}.`));
  return keys.map((key) => key.slice(kind.length + 1)).filter((name) => name !== "young");
}
