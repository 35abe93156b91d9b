import type { Model, ModelRow } from "../solver.js";
import type { Card } from "./cards.js";

/** What a column of the window's programme stands for. */
export type Column =
  | { readonly kind: "card"; readonly card: Card }
  | { readonly kind: "yard"; readonly group: number; readonly day: number }
  | { readonly kind: "yard-start"; readonly group: number; readonly day: number }
  | { readonly kind: "haul"; readonly group: number; readonly field: number; readonly day: number }
  | { readonly kind: "short"; readonly what: string };

/** Collects columns and rows by name while a window's programme is built. */
export class Builder {
  readonly columns: Column[] = [];
  readonly cost: number[] = [];
  readonly upper: number[] = [];
  readonly whole: number[] = [];
  private readonly rows = new Map<string, { least: number; most: number; columns: number[]; values: number[] }>();

  column(column: Column, cost: number, upper: number, whole: boolean): number {
    this.columns.push(column);
    this.cost.push(cost);
    this.upper.push(upper);
    this.whole.push(whole ? 1 : 0);
    return this.columns.length - 1;
  }

  row(name: string, least: number, most: number): void {
    this.rows.set(name, { least, most, columns: [], values: [] });
  }

  has(name: string): boolean {
    return this.rows.has(name);
  }

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

  model(): Model {
    const rows: ModelRow[] = [...this.rows].map(([name, row]) => ({ name, ...row }));
    const columns = this.columns.length;
    return { columns, cost: Float64Array.from(this.cost), lower: new Float64Array(columns), upper: Float64Array.from(this.upper), whole: Uint8Array.from(this.whole), rows };
  }
}
