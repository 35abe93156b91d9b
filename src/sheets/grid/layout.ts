import { addDays, daysBetween, type IsoDate } from "../../quantity/calendar.js";
import type { Cell, Group, Yard } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import type { Sheet } from "../made.js";
import { GRID_FORM, printable, type PaperName } from "../paper.js";
import type { Part } from "./parts.js";
import type { Box } from "./svg.js";

/** The drawing's size in mm as on A4, where it is drawn at full size. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  /** How much larger it is on its paper. */
  readonly scale: number;
}

const A4_WIDTH = 281;
const A4_HEIGHT = 194;
/** Left free below the drawing, mm: rounding must not push it onto a page of its own. */
const SPARE = 0.6;

/** As large as the paper takes it, laid out anew for the paper's own form: letter holds more rows, tabloid wider days. */
export function canvasOf(paper: PaperName): Canvas {
  const { w, h } = printable(paper, GRID_FORM);
  const scale = Math.min(w / A4_WIDTH, h / A4_HEIGHT);
  return { width: w / scale, height: h / scale - SPARE, scale };
}

/** Frames keep this from the edge, else a printer cuts them. */
export const EDGE = 0.6;

const LEFT = 27;
const RIGHT = 25;
const MOST_DAY_WIDTH = 4.6;
const ROW_MOST = 5.95;
const ROW_LEAST = 4.6;
export const GROUP_ROW = 5.9;
const BETWEEN_FIELDS = 1.3;

/** Heights of the head, from the top: title, months, how sure, Mondays, days. */
export const HEAD = { title: 5.4, months: 7, sure: 11, mondays: 13.8, days: 17.6, end: 20.6 } as const;
const COUNT_ROW = 3.1;
const NOTES_ROW = 4.4;

export interface Row<T> {
  readonly of: T;
  readonly y: number;
  readonly h: number;
}

/** Where the days of one sheet stand, mm. */
export interface Frame {
  readonly canvas: Canvas;
  readonly sheet: Sheet;
  readonly words: Words;
  readonly part: Part;
  readonly left: number;
  readonly right: number;
  readonly edge: number;
  readonly dayWidth: number;
}

/** Where everything stands on one sheet, mm. */
export interface Layout extends Frame {
  readonly groups: readonly Row<Group>[];
  readonly peopleY: number;
  readonly movesY: number;
  readonly notesY: number;
  readonly cells: readonly Row<Cell>[];
  readonly fields: readonly (Box & { readonly name: string })[];
  readonly yards: readonly Row<Yard>[];
  /** Top of the first and foot of the last row of ground. */
  readonly groundTop: number;
  readonly groundEnd: number;
  readonly countRow: number;
}

/** Rows of cells and yards that fit beside so many groups and lines at the foot. */
export function rowsThatFit({ height }: Canvas, groups: number, fields: number, footHeight: number): number {
  return Math.max(1, Math.floor((height - EDGE - groundTopOf(groups) - footHeight - fields * BETWEEN_FIELDS) / ROW_LEAST + 1e-6));
}

function groundTopOf(groups: number): number {
  return HEAD.end + groups * GROUP_ROW + 2 * COUNT_ROW + NOTES_ROW;
}

export function frameOf(sheet: Sheet, part: Part, canvas: Canvas, words: Words): Frame {
  const left = EDGE + LEFT;
  const dayWidth = Math.min(MOST_DAY_WIDTH, (canvas.width - 2 * EDGE - LEFT - RIGHT) / part.days.length);
  const right = left + dayWidth * part.days.length;
  return { sheet, words, part, canvas, left, right, edge: right + RIGHT, dayWidth };
}

export function layoutOf(frame: Frame, footHeight: number): Layout {
  const { groups } = frame.sheet.scenario;
  const under = HEAD.end + groups.length * GROUP_ROW;
  return {
    ...frame, countRow: COUNT_ROW,
    groups: groups.map((of, i) => ({ of, y: HEAD.end + i * GROUP_ROW, h: GROUP_ROW })),
    peopleY: under, movesY: under + COUNT_ROW, notesY: under + 2 * COUNT_ROW,
    ...groundRows(frame, groundTopOf(groups.length), footHeight),
  };
}

function groundRows({ part, canvas }: Frame, groundTop: number, footHeight: number): Pick<Layout, "cells" | "fields" | "yards" | "groundTop" | "groundEnd"> {
  const count = part.fields.reduce((sum, field) => sum + field.cells.length, 0) + part.yards.length;
  const gaps = (part.fields.length - (part.yards.length > 0 ? 0 : 1)) * BETWEEN_FIELDS;
  const h = Math.min(ROW_MOST, (canvas.height - EDGE - groundTop - footHeight - gaps) / count);
  let y = groundTop;
  const cells: Row<Cell>[] = [];
  const fields: Layout["fields"][number][] = [];
  for (const field of part.fields) {
    fields.push({ name: field.name, x: EDGE, y, w: 0, h: field.cells.length * h });
    for (const of of field.cells) {
      cells.push({ of, y, h });
      y += h;
    }
    y += BETWEEN_FIELDS;
  }
  const yards = part.yards.map((of, i) => ({ of, y: y + i * h, h }));
  return { cells, fields, yards, groundTop, groundEnd: yards.length > 0 ? y + yards.length * h : y - BETWEEN_FIELDS };
}

/** Left edge of a day on the sheet; days before or after it lie outside. */
export function xOf(layout: Frame, day: IsoDate): number {
  return layout.left + daysBetween(layout.part.days[0]!, day) * layout.dayWidth;
}

/** The stretch of a span that the sheet shows, and whether it runs on to either side. */
export interface Stretch {
  readonly x: number;
  readonly w: number;
  readonly fromBefore: boolean;
  readonly goesOn: boolean;
}

export function stretchOf(layout: Frame, firstDay: IsoDate, lastDay: IsoDate): Stretch | null {
  const [first, last] = [layout.part.days[0]!, layout.part.days.at(-1)!];
  if (lastDay < first || firstDay > last) return null;
  const from = firstDay < first ? first : firstDay;
  const to = lastDay > last ? last : lastDay;
  const x = xOf(layout, from);
  return { x, w: xOf(layout, addDays(to, 1)) - x, fromBefore: firstDay < first, goesOn: lastDay > last };
}
