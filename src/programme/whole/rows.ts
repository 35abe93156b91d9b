import type { Model } from "../solver.js";

interface Row {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly columns: number[];
  readonly values: number[];
}

/** Rows by name and columns by number while a programme is built. */
export class Rows {
  private readonly cost: number[] = [];
  private readonly upper: number[] = [];
  private readonly whole: number[] = [];
  private readonly rows = new Map<string, Row>();
  private readonly asked: { row: string; column: number; value: number }[] = [];

  column(cost: number, upper: number, whole: boolean): number {
    this.cost.push(cost);
    this.upper.push(upper);
    return this.whole.push(whole ? 1 : 0) - 1;
  }

  row(name: string, least: number, most: number): void {
    this.rows.set(name, { name, least, most, columns: [], values: [] });
  }

  /** An entry; nothing where there is no such row. */
  put(name: string, column: number, value: number): void {
    const row = this.rows.get(name);
    if (!row || value === 0) return;
    const at = row.columns.length - 1;
    if (at >= 0 && row.columns[at] === column) row.values[at] += value;
    else {
      row.columns.push(column);
      row.values.push(value);
    }
  }

  /** An entry of a row that may be asked for later. */
  later(row: string, column: number, value: number): void {
    this.asked.push({ row, column, value });
  }

  settle(row: string): void {
    for (const entry of this.asked) if (entry.row === row) this.put(row, entry.column, entry.value);
  }

  model(): Model {
    const columns = this.cost.length;
    const [cost, upper, whole] = [Float64Array.from(this.cost), Float64Array.from(this.upper), Uint8Array.from(this.whole)];
    return { columns, cost, lower: new Float64Array(columns), upper, whole, rows: [...this.rows.values()] };
  }
}
