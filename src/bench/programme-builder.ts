import type { Model, ModelRow } from "../programme/solver.js";

/** Entries of a row: column and value, one after the other. */
type Entries = readonly (readonly [column: number, value: number])[];

/** Collects a programme's columns and rows, one after the other. */
export class ProgrammeBuilder {
  private readonly cost: number[] = [];
  private readonly lower: number[] = [];
  private readonly upper: number[] = [];
  private readonly whole: number[] = [];
  private readonly rows: ModelRow[] = [];

  column(cost: number, upper: number, more: { readonly lower?: number; readonly whole?: boolean } = {}): number {
    this.cost.push(cost);
    this.upper.push(upper);
    this.lower.push(more.lower ?? 0);
    this.whole.push(more.whole ? 1 : 0);
    return this.cost.length - 1;
  }

  /** A row of nothing is left out; a column named twice counts once, with the sum. */
  row(name: string, least: number, most: number, entries: Entries): void {
    const sums = new Map<number, number>();
    for (const [column, value] of entries) sums.set(column, (sums.get(column) ?? 0) + value);
    const kept = [...sums].filter(([column, value]) => column >= 0 && value !== 0);
    if (kept.length > 0) this.rows.push({ name, least, most, columns: kept.map(([column]) => column), values: kept.map(([, value]) => value) });
  }

  atMost(name: string, most: number, entries: Entries): void {
    this.row(name, -Infinity, most, entries);
  }

  atLeast(name: string, least: number, entries: Entries): void {
    this.row(name, least, Infinity, entries);
  }

  model(): Model {
    return {
      columns: this.cost.length, cost: Float64Array.from(this.cost), lower: Float64Array.from(this.lower), upper: Float64Array.from(this.upper),
      whole: Uint8Array.from(this.whole), rows: this.rows,
    };
  }
}
