/** A linear programme, its columns all or partly whole, as plain arrays. Infinity for no limit. */
export interface Model {
  readonly columns: number;
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** 1 where a column is whole. */
  readonly whole: Uint8Array;
  /** Rows, each a name for people, its limits, and its entries by column. */
  readonly rows: readonly ModelRow[];
}

export interface ModelRow {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly columns: readonly number[];
  readonly values: readonly number[];
}

/** Where a solve is to end: all limits are counted, none timed, so that answers are the same everywhere. */
export interface SolveLimits {
  /** Nodes of the tree; 0 for the relaxed programme alone. */
  readonly nodes: number;
  /** Answers this near to the optimum are good enough, in money. */
  readonly gap: number;
  /** A known answer to start from, by column. */
  readonly start: Float64Array | null;
  /** Seconds after which a solve that is still running is of no use. Only a guard: it is never the usual end. */
  readonly guardSeconds: number;
}

/**
 * What a solver answers. `limit`: ended early, with the best answer found, if any; where time ended it, another machine may
 * answer otherwise. `failed`: it broke down.
 */
export type Solved =
  | { readonly kind: "optimal"; readonly value: number; readonly columns: Float64Array; readonly bound: number; readonly nodes: number }
  | { readonly kind: "limit"; readonly by: "steps" | "time"; readonly value: number | null; readonly columns: Float64Array | null; readonly bound: number; readonly nodes: number }
  | { readonly kind: "infeasible" }
  | { readonly kind: "unbounded" }
  | { readonly kind: "failed"; readonly why: string };

/** Anything that solves models. */
export interface Solver {
  readonly name: string;
  solve(model: Model, limits: SolveLimits): Promise<Solved>;
}

/** The relaxed programme's answer, with prices by row and what each column costs beyond them. */
export interface Relaxed {
  readonly kind: "optimal";
  readonly value: number;
  readonly columns: Float64Array;
  readonly rowPrices: Float64Array;
  readonly reducedCosts: Float64Array;
}

/** No relaxed answer: there is none, or steps or time ended it, or the solver broke down. */
export type NotRelaxed = { readonly kind: "none" } | { readonly kind: "limit"; readonly by: "steps" | "time" } | { readonly kind: "failed"; readonly why: string };

/** A solver that also tells prices of the relaxed programme. */
export interface PricingSolver extends Solver {
  relax(model: Model, guardSeconds: number): Promise<Relaxed | NotRelaxed>;
}

/** What is no programme at all, or null: what a package would answer to it is anybody's guess, so no adapter asks one. */
export function garbageIn({ columns, cost, lower, upper, whole, rows }: Model): string | null {
  if ([cost, lower, upper, whole].some((own) => own.length !== columns)) return "costs or limits are not one a column";
  if (!cost.every(Number.isFinite) || lower.some((least) => Number.isNaN(least) || least === Infinity) || upper.some((most) => Number.isNaN(most) || most === -Infinity)) return "a cost or a limit is no number";
  const seenIn = new Int32Array(columns).fill(-1);
  for (const [r, row] of rows.entries()) {
    if (Number.isNaN(row.least) || Number.isNaN(row.most) || row.least === Infinity || row.most === -Infinity || !row.values.every(Number.isFinite)) return `${row.name}: an entry or a limit is no number`;
    if (row.columns.length !== row.values.length || row.columns.some((c) => !(Number.isInteger(c) && c >= 0 && c < columns))) return `${row.name}: an entry has no column`;
    for (const c of row.columns) {
      if (seenIn[c] === r) return `${row.name}: a column stands there twice`;
      seenIn[c] = r;
    }
  }
  return null;
}

/** Money of an answer. */
export function costOf(model: Model, columns: Float64Array): number {
  let cost = 0;
  columns.forEach((value, i) => (cost += value * model.cost[i]));
  return cost;
}

/** Rows that an answer breaks, and columns out of their limits or not whole: what no adapter may hand on. */
export function faultsOf(model: Model, columns: Float64Array, slack = 1e-6): readonly string[] {
  if (columns.length !== model.columns) return [`${columns.length} columns, not ${model.columns}`];
  const faults: string[] = [];
  columns.forEach((value, i) => {
    if (!Number.isFinite(value) || value < model.lower[i] - slack || value > model.upper[i] + slack) faults.push(`column ${i} is ${value}`);
    else if (model.whole[i] && Math.abs(value - Math.round(value)) > 1e-5) faults.push(`column ${i} is not whole: ${value}`);
  });
  for (const row of model.rows) {
    let sum = 0;
    row.columns.forEach((column, k) => (sum += row.values[k] * columns[column]));
    const room = slack * Math.max(1, Math.abs(sum));
    if (!(sum >= row.least - room && sum <= row.most + room)) faults.push(`${row.name} is ${sum}`);
  }
  return faults;
}
