import type { Cell, Field, Scenario } from "../../farm/scenario.js";
import type { GroundPlan, PlannedCell, PlannedName, PlanRoom, Point } from "./planned-ground.js";

/** Heights of a row of blocks that are tried, the largest first, mm. */
const ROWS = [9, 8, 7, 6, 5.2];
const NAME_MM = 3.2;
const BETWEEN_ROWS = 1.2;
const BETWEEN_FIELDS = 2.4;
const YARD_MM = 5;
/** Ground is not drawn larger than this, square mm to the hectare; steps by which it is drawn smaller, and where that ends. */
const LARGEST = 420;
const SMALLER = 0.97;
const LEAST = 4;

/** A field, or the part of one that a row holds. */
interface Part {
  readonly field: Field;
  readonly cells: readonly Cell[];
  readonly first: boolean;
}

/** Blocks as large as the cells are, in the farm file's order, fields by their way from the yard: nobody drew their shapes, so none is shown. */
export function blockPlan(scenario: Scenario, { w, h }: PlanRoom): GroundPlan {
  for (let scale = LARGEST; ; scale *= SMALLER) {
    const rowMm = ROWS.find((high) => fits(rowsOf(scenario, w, scale, high), { w, h }, scale, high));
    if (rowMm !== undefined) return drawn(rowsOf(scenario, w, scale, rowMm), w, scale, rowMm);
  }
}

/** Drawings get smaller until they fit; below the least size nobody could read them, and they stand as they are. */
function fits(rows: readonly (readonly Part[])[], { w, h }: PlanRoom, scale: number, rowMm: number): boolean {
  const narrow = rows.flat().every(({ cells }) => cells.every((cell) => wide(cell, scale, rowMm) <= w));
  return narrow && (heightOf(rows, rowMm) <= h || scale < LEAST);
}

function wide({ areaHa }: Cell, scale: number, rowMm: number): number {
  return (areaHa * scale) / rowMm;
}

/** Fields beside each other while they fit; one that is wider than the drawing goes on in the next row. */
function rowsOf({ fields, cells }: Scenario, w: number, scale: number, rowMm: number): readonly (readonly Part[])[] {
  const rows: Part[][] = [[]];
  let used = 0;
  const next = (): void => {
    if (rows.at(-1)!.length > 0) rows.push([]);
    used = 0;
  };
  for (const field of [...fields].sort((a, b) => a.distanceM - b.distanceM)) {
    const own = cells.filter((cell) => cell.field === field.name);
    const all = own.reduce((sum, cell) => sum + wide(cell, scale, rowMm), 0);
    if (used > 0 && used + BETWEEN_FIELDS + all > w) next();
    let part: Cell[] = [];
    let first = true;
    const put = (): void => {
      if (part.length > 0) rows.at(-1)!.push({ field, cells: part, first });
      first = false;
      part = [];
    };
    used += used > 0 ? BETWEEN_FIELDS : 0;
    for (const cell of own) {
      const one = wide(cell, scale, rowMm);
      if (part.length > 0 && used + one > w + 1e-9) {
        put();
        next();
      }
      part.push(cell);
      used += one;
    }
    put();
  }
  return rows.filter((row) => row.length > 0);
}

function heightOf(rows: readonly (readonly Part[])[], rowMm: number): number {
  return YARD_MM + rows.length * (NAME_MM + rowMm + BETWEEN_ROWS);
}

function drawn(rows: readonly (readonly Part[])[], w: number, scale: number, rowMm: number): GroundPlan {
  const cells: PlannedCell[] = [];
  const fields: PlannedName[] = [];
  rows.forEach((row, i) => {
    const y = YARD_MM + i * (NAME_MM + rowMm + BETWEEN_ROWS) + NAME_MM;
    let x = 0;
    for (const part of row) {
      const from = x;
      for (const cell of part.cells) {
        const one = wide(cell, scale, rowMm);
        cells.push({ name: cell.name, rings: [boxRing(x, y, one, rowMm)], at: [x + one / 2, y + rowMm / 2], room: { w: one - 0.8, h: rowMm - 0.6 } });
        x += one;
      }
      if (part.first) fields.push({ name: part.field.name, at: [from, y - 0.8], anchor: "start", room: Math.max(x - from, part === row.at(-1) ? w - from : 0) });
      x += BETWEEN_FIELDS;
    }
  });
  return { w, h: heightOf(rows, rowMm), mmPerM: null, cells, fields, yard: { at: [0, YARD_MM / 2 - 0.3], w, h: YARD_MM - 0.6, from: "left" }, gates: {} };
}

function boxRing(x: number, y: number, w: number, h: number): readonly Point[] {
  return [[x, y], [x + w, y], [x + w, y + h], [x, y + h]];
}
