import { cautionsFor } from "../../plan/cautions.js";
import type { Words } from "../../words/words.js";
import { cautionText } from "../caution-words.js";
import { toldHay } from "../amounts.js";
import type { Sheet } from "../made.js";
import { costWords, othersWords, runningWords, type Note, type Notes } from "../notes.js";
import { triangle } from "./group-rows.js";
import { KEY_HEIGHT, keyDrawing, keyRows, type KeyRows } from "./key.js";
import { EDGE, type Canvas, type Frame, type Layout } from "./layout.js";
import { text, textWidth } from "./svg.js";

const NOTE_PT = 6.4;
const LINE_PT = 6.2;
const NOTE_ROW = 4.1;
const LINE = 2.75;
const LABEL = 20;
const TRIANGLE_ROOM = 5;
const ABOVE = 1.2;

/** Rows of notes and lines of running text at most. */
export interface FootSize {
  readonly noteRows: number;
  readonly lines: number;
}

/** From the fullest to the least, for grids that need the room; what is cut off stands with the tables of the page. */
export const FOOT_SIZES: readonly FootSize[] = [
  { noteRows: 4, lines: 5 }, { noteRows: 4, lines: 4 }, { noteRows: 4, lines: 3 }, { noteRows: 3, lines: 3 }, { noteRows: 2, lines: 3 },
];

interface NoteBlock {
  readonly label: string;
  readonly notes: readonly Note[];
  readonly columns: number;
  /** Notes for which the foot has no room; the list of the page has them all. */
  readonly more: number;
}

/** What stands under the grid of one sheet. */
export interface Foot {
  readonly key: KeyRows;
  readonly notes: readonly NoteBlock[];
  readonly lines: readonly string[];
  readonly height: number;
}

/** Works the foot out before the grid is laid out, as it takes the grid's room: prices come first, cautions fill the rest. */
export function footOf(frame: Frame, notes: Notes, size: FootSize): Foot {
  const here = notes.numbered.filter((note) => frame.part.days.includes(note.day));
  const blocks = [
    { label: frame.words.say("foot.right"), notes: here.filter((note) => note.black) }, { label: frame.words.say("foot.priced"), notes: here.filter((note) => !note.black) },
  ].filter((block) => block.notes.length > 0).map(({ label, notes: all }) => noteBlock(label, all, size.noteRows, frame.canvas));
  const lines = runningText(frame, notes, size.lines);
  const rows = blocks.reduce((sum, block) => sum + rowsOf(block), 0);
  const key = keyRows(frame, here);
  return { key, notes: blocks, lines, height: ABOVE + key.length * KEY_HEIGHT + rows * NOTE_ROW + lines.length * LINE + 0.6 };
}

/** The dearest notes that fit, in order of their numbers. */
function noteBlock(label: string, all: readonly Note[], mostRows: number, canvas: Canvas): NoteBlock {
  const columns = columnsFor(all, canvas);
  const chosen = [...all].sort((a, b) => b.money - a.money).slice(0, columns * mostRows);
  return { label, notes: all.filter((note) => chosen.includes(note)), columns, more: all.length - chosen.length };
}

function rowsOf({ notes, columns }: NoteBlock): number {
  return Math.ceil(notes.length / columns);
}

const room = ({ width }: Canvas, columns: number): number => (width - 2 * EDGE - LABEL) / columns;

/** As many columns as let the longest note stand on one line. */
function columnsFor(notes: readonly Note[], canvas: Canvas): number {
  const longest = Math.max(...notes.map((note) => textWidth(note.text, NOTE_PT)));
  return [3, 2].find((columns) => longest + TRIANGLE_ROOM <= room(canvas, columns) * 1.08) ?? 1;
}

/** Other prices, running costs, cost, hay, and the cautions that fit; the last one always does. */
function runningText({ sheet, canvas, words }: Frame, notes: Notes, mostLines: number): readonly string[] {
  const { currency } = sheet.made;
  const figures = [
    othersWords(notes, currency, words), runningWords(notes, currency, words), costWords(sheet, words), hayLine(sheet, words), words.say("foot.figures"),
  ];
  const own = wrap(figures.filter((one) => one !== "").join(" "), canvas);
  const cautions = cautionsFor(sheet.scenario, sheet.plan).map((caution) => cautionText(words, caution));
  return [...own, ...cautionLines(cautions.slice(0, -1), cautions.at(-1)!, Math.max(1, mostLines - own.length), canvas, words)];
}

function cautionLines(cautions: readonly string[], last: string, most: number, canvas: Canvas, words: Words): readonly string[] {
  for (let count = cautions.length; count > 0; count -= 1) {
    const more = count < cautions.length ? ` ${words.say("foot.more-cautions")}` : "";
    const lines = wrap(`${last} ${cautions.slice(0, count).join(" ")}${more}`, canvas);
    if (lines.length <= most) return lines;
  }
  return wrap(last, canvas);
}

/** Hay in the kinds of year, as the terminal tells it. */
function hayLine({ scenario: { units }, report: { measures }, made }: Sheet, words: Words): string {
  const others = made.hay ? [made.hay.dry.kg, made.hay.wet.kg] : [];
  const amounts = { fed: toldHay(measures.hayFedKg, units, words, others), made: toldHay(measures.hayMadeKg, units, words) };
  return made.hay ? words.say("foot.hay-years", amounts) : words.say("foot.hay", amounts);
}

function wrap(told: string, { width }: Canvas): readonly string[] {
  const lines: string[] = [];
  for (const word of told.split(" ")) {
    const joined = lines.length > 0 ? `${lines.at(-1)!} ${word}` : word;
    if (lines.length > 0 && textWidth(joined, LINE_PT) <= width - 2 * EDGE) lines[lines.length - 1] = joined;
    else lines.push(word);
  }
  return lines;
}

/** Draws the foot under the grid. */
export function footDrawing(layout: Layout, foot: Foot): string {
  let y = layout.groundEnd + ABOVE;
  const parts = [keyDrawing(layout, foot.key, y)];
  y += foot.key.length * KEY_HEIGHT;
  for (const block of foot.notes) {
    parts.push(text(EDGE, y + 2.9, block.label, { pt: 7, bold: true, room: LABEL - 1 }));
    if (block.more > 0) parts.push(text(EDGE, y + 2.9 + NOTE_ROW, layout.words.say("foot.in-list", { more: block.more }), { pt: NOTE_PT, room: LABEL - 1 }));
    const wide = room(layout.canvas, block.columns);
    block.notes.forEach((note, i) => {
      const [x, top] = [EDGE + LABEL + (i % block.columns) * wide, y + Math.floor(i / block.columns) * NOTE_ROW];
      parts.push(triangle(x + 2, top, note), text(x + TRIANGLE_ROOM, top + 2.9, note.text, { pt: NOTE_PT, room: wide - TRIANGLE_ROOM - 1.5 }));
    });
    y += rowsOf(block) * NOTE_ROW;
  }
  foot.lines.forEach((told, i) => parts.push(text(EDGE, y + 2.4 + i * LINE, told, { pt: LINE_PT, room: layout.canvas.width - 2 * EDGE })));
  return parts.join("\n");
}
