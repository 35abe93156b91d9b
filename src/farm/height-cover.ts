import type { Tables } from "../science/tables.js";

const LB_PER_ACRE = 1.1208511;
const M_PER_INCH = 0.0254;

/** Named swards, and the row of the height table that measures them. */
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

/**
 * Cover that stands at a height above the ground.
 *
 * A sward with a row in the published table of dry matter an inch: the middle of a good stand. Any other is taken as
 * old permanent pasture: a straight line through 1,500 kg DM/ha at 6 cm and 2,500 at 12 cm (Meat & Livestock Australia).
 *
 * @param heightM height of the standing sward, m
 */
export function coverOfHeight(heightM: number, sward: string | undefined, tables: Tables): HeightCover {
  const row = tables.heights.find((r) => r.key === (sward === undefined ? "" : (HEIGHT_ROWS[sward] ?? sward)));
  if (!row) return { kgPerHa: 500 + (heightM * 100 * 1000) / 6, source: "Meat & Livestock Australia: 1,500 kg/ha at 6 cm, 2,500 at 12 cm", status: "derived" };
  const [least, most] = row.value.good;
  return { kgPerHa: (heightM / M_PER_INCH) * ((least + most) / 2) * LB_PER_ACRE, source: row.source, status: row.status };
}

/** Names that `sward` may have. */
export function swardNames(tables: Tables): readonly string[] {
  return [...tables.swards.map((row) => row.key), ...tables.heights.map((row) => row.key)];
}
