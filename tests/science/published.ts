import { loadTables } from "../../src/files/tables.js";
import { KG_PER_LB, M2_PER_ACRE } from "../../src/quantity/units.js";

/** The tables as the program reads them. */
export const TABLES = loadTables();

/** Sources print pounds and acres; the code counts kilograms and hectares. */
export const LB = KG_PER_LB;
export const ACRE = M2_PER_ACRE / 10_000;
export const LB_PER_ACRE = LB / ACRE;
export const INCH_CM = 2.54;
export const SQUARE_FOOT = 0.3048 ** 2;

/** How far `found` is from `printed`, as a share of it. */
export function off(found: number, printed: number): number {
  return Math.abs(found - printed) / printed;
}
