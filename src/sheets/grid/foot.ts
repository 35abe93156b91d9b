import type { Part } from "./parts.js";
import { cautionsFor } from "../../plan/cautions.js";
import { hayWords, moneyWords } from "../figure-words.js";
import type { Sheet } from "../made.js";
import { costWords, smallWords, type Note, type Notes } from "../notes.js";
import { triangle } from "./group-rows.js";
import { KEY_HEIGHT, keyDrawing, keyRows, type KeyRows } from "./key.js";
import { EDGE, WIDTH, type Layout } from "./layout.js";
import { text, textWidth } from "./svg.js";

const NOTE_PT = 6.4;
const LINE_PT = 6.2;
const NOTE_ROW = 4.1;
const MOST_NOTE_ROWS = 4;
const LINE = 2.75;
const LABEL = 20;
const TRIANGLE_ROOM = 5;
const ABOVE = 1.2;
/** Lines of running text at most, and at least where ground needs the room; what is cut off stands with the table of the plan. */
export const FOOT_LINES = { most: 5, least: 3 } as const;

interface NoteBlock {
  readonly label: string;
  readonly notes: readonly Note[];
  readonly columns: number;
  /** Notes for which the foot has no room; the list of the plan has them all. */
  readonly more: number;
}

/** What stands under the grid of one sheet. */
export interface Foot {
  readonly key: KeyRows;
  readonly notes: readonly NoteBlock[];
  readonly lines: readonly string[];
  readonly height: number;
}

/**
 * Works the foot out before the grid is laid out, as it takes the grid's room.
 *
 * @param mostLines lines of running text; prices come first, cautions fill the rest
 */
export function footOf(sheet: Sheet, notes: Notes, days: Part["days"], mostLines: number): Foot {
  const here = notes.numbered.filter((note) => days.includes(note.day));
  const blocks = [
    { label: "To put right", notes: here.filter((note) => note.black) }, { label: "At a price", notes: here.filter((note) => !note.black) },
  ].filter((block) => block.notes.length > 0).map(({ label, notes: all }) => noteBlock(label, all));
  const lines = runningText(sheet, notes, mostLines);
  const rows = blocks.reduce((sum, block) => sum + Math.ceil(block.notes.length / block.columns), 0);
  const key = keyRows(sheet, here);
  return { key, notes: blocks, lines, height: ABOVE + key.length * KEY_HEIGHT + rows * NOTE_ROW + lines.length * LINE + 0.6 };
}

function noteBlock(label: string, all: readonly Note[]): NoteBlock {
  const columns = columnsFor(all);
  const notes = all.slice(0, columns * MOST_NOTE_ROWS);
  return { label, notes, columns, more: all.length - notes.length };
}

const room = (columns: number): number => (WIDTH - 2 * EDGE - LABEL) / columns;

/** As many columns as let the longest note stand on one line. */
function columnsFor(notes: readonly Note[]): number {
  const longest = Math.max(...notes.map((note) => textWidth(note.text, NOTE_PT)));
  return [3, 2].find((columns) => longest + TRIANGLE_ROOM <= room(columns) * 1.08) ?? 1;
}

/** Smaller prices, running costs, cost, hay, and the cautions that fit; the last one always does. */
function runningText(sheet: Sheet, { small, running, numbered }: Notes, mostLines: number): readonly string[] {
  const { currency } = sheet.made;
  const sum = small.reduce((total, one) => total + one.money, 0);
  const prices = [
    small.length > 0 ? `${numbered.length > 0 ? "Also at" : "At"} a price, ${moneyWords(sum, currency)} together: ${smallWords(small, currency)}.` : "",
    running.length > 0 ? `Running costs: ${smallWords(running.map((one) => ({ ...one, times: 1 })), currency)}.` : "", costWords(sheet),
  ].filter((one) => one !== "").join(" ");
  const about = `${hayLine(sheet)}Nitrogen to the nearest 10. No rest is printed for outline days.`;
  const cautions = cautionsFor(sheet.scenario, sheet.plan).map((caution) => caution.text);
  const own = [...wrap(prices), ...wrap(about)];
  const last = cautions.at(-1)!;
  return [...own, ...cautionLines(cautions.slice(0, -1), last, Math.max(1, mostLines - own.length))];
}

function cautionLines(cautions: readonly string[], last: string, most: number): readonly string[] {
  for (let count = cautions.length; count > 0; count -= 1) {
    const more = count < cautions.length ? " More cautions stand with the plan." : "";
    const lines = wrap(`${last} ${cautions.slice(0, count).join(" ")}${more}`);
    if (lines.length <= most) return lines;
  }
  return wrap(last);
}

/** "11 days of hay in a usual year, 5 in a wet, 25 in a dry one." */
function hayLine({ scenario, made }: Sheet): string {
  if (!made.hay) return "";
  const { dry, usual, wet } = made.hay;
  const of = (year: typeof usual): string => hayWords(year.kg, scenario.units);
  return `Hay fed: ${of(usual)} in a usual year, ${of(wet)} in a wet, ${of(dry)} in a dry one. `;
}

function wrap(words: string): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const joined = lines.length > 0 ? `${lines.at(-1)!} ${word}` : word;
    if (lines.length > 0 && textWidth(joined, LINE_PT) <= WIDTH - 2 * EDGE) lines[lines.length - 1] = joined;
    else lines.push(word);
  }
  return lines;
}

/** Draws the foot under the grid. */
export function footDrawing(layout: Layout, foot: Foot): string {
  let y = layout.groundEnd + ABOVE;
  const parts = [keyDrawing(foot.key, y)];
  y += foot.key.length * KEY_HEIGHT;
  for (const block of foot.notes) {
    parts.push(text(EDGE, y + 2.9, block.label, { pt: 7, bold: true }));
    if (block.more > 0) parts.push(text(EDGE, y + 2.9 + NOTE_ROW, `and ${block.more} in the list`, { pt: NOTE_PT, room: LABEL - 1 }));
    const wide = room(block.columns);
    block.notes.forEach((note, i) => {
      const [x, top] = [EDGE + LABEL + (i % block.columns) * wide, y + Math.floor(i / block.columns) * NOTE_ROW];
      parts.push(triangle(x + 2, top, note), text(x + TRIANGLE_ROOM, top + 2.9, note.text, { pt: NOTE_PT, room: wide - TRIANGLE_ROOM - 1.5 }));
    });
    y += Math.ceil(block.notes.length / block.columns) * NOTE_ROW;
  }
  foot.lines.forEach((words, i) => parts.push(text(EDGE, y + 2.4 + i * LINE, words, { pt: LINE_PT, room: WIDTH - 2 * EDGE })));
  return parts.join("\n");
}
