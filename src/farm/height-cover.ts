import { coverOfHeight, kgPerHaCm } from "../science/height.js";
import { rowOf, type Tables } from "../science/tables.js";

/** Named swards, and the row of the height table that weighs them; any other is weighed as mixed pasture. */
const HEIGHT_ROWS: Readonly<Record<string, string>> = {
  "white clover": "bluegrass-clover",
  "annual ryegrass": "ryegrass-clover",
  orchardgrass: "orchardgrass-legume",
  "tall fescue": "tall-fescue",
};

export interface HeightCover {
  readonly kgPerHa: number;
  readonly source: string;
  readonly status: string;
}

/** Cover of a good stand of a height, m, weighed by its sward's row. */
export function coverAtHeight(heightM: number, sward: string | undefined, tables: Tables): HeightCover {
  const named = sward === undefined ? "mixed" : (HEIGHT_ROWS[sward] ?? sward);
  const row = tables.heights.find((r) => r.key === named) ?? rowOf(tables.heights, "mixed");
  return { kgPerHa: coverOfHeight(heightM * 100, kgPerHaCm(row, "good")), source: row.source, status: row.status };
}

/** Names that `sward` may have. */
export function swardNames(tables: Tables): readonly string[] {
  return [...tables.swards.map((row) => row.key), ...tables.heights.map((row) => row.key)];
}
