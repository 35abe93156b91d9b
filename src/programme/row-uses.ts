import type { PathTables, RowTables } from "./path-tables.js";

/** One row that a group uses, and how much of it, laid out as the path tables are. */
interface RowUse {
  readonly row: number;
  readonly table: Float64Array;
}

/** The rows that a group can use at all: by standing, by beginning a stay, by a haul, by a step. */
export interface RowUses {
  readonly stand: readonly RowUse[];
  readonly start: readonly RowUse[];
  readonly haul: readonly RowUse[];
  readonly step: readonly RowUse[];
}

export function rowUses({ rows }: PathTables, group: number): RowUses {
  const of = (pick: (row: RowTables) => readonly Float64Array[] | null): RowUse[] =>
    rows.flatMap((own, row) => {
      const table = pick(own)?.[group];
      return table?.some((amount) => amount !== 0) ? [{ row, table }] : [];
    });
  return { stand: of((row) => row.stand), start: of((row) => row.start), haul: of((row) => row.haul), step: of((row) => row.step) };
}
