import type { Group } from "../../farm/scenario.js";
import { markOf, MARKS } from "../marks.js";
import type { Sheet, Sure } from "../made.js";
import type { Note } from "../notes.js";
import { bar } from "./bars.js";
import { triangle } from "./group-rows.js";
import { EDGE, WIDTH } from "./layout.js";
import { line, text, textWidth } from "./svg.js";

export const KEY_HEIGHT = 5.6;
const PT = 6.4;
const SAMPLE = 7;
const LABEL = 20;
const LEAST_GAP = 1.2;
const ROOM = WIDTH - 2 * EDGE - LABEL;

interface Entry {
  /** Width of the drawing, mm. */
  readonly wide: number;
  readonly draw: (x: number, y: number) => string;
  readonly words: string;
}

/** Entries of the key set out in rows. */
export type KeyRows = readonly (readonly Entry[])[];

/** "How to read it": how sure a bar is, each group's pattern, wire, rest, followers, triangles. */
export function keyRows(sheet: Sheet, notes: readonly Note[]): KeyRows {
  const rows: Entry[][] = [[]];
  let used = 0;
  for (const entry of entriesOf(sheet, notes)) {
    const wide = wideOf(entry) + LEAST_GAP;
    if (used + wide > ROOM && used > 0) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)!.push(entry);
    used += wide;
  }
  return rows;
}

/** Draws the key under its title. */
export function keyDrawing(rows: KeyRows, y: number): string {
  const gap = Math.min(5, ...rows.slice(0, 1).map((row) => (ROOM - row.reduce((sum, entry) => sum + wideOf(entry), 0)) / row.length));
  const drawn = rows.flatMap((row, i) => {
    let x = EDGE + LABEL;
    return row.map((entry) => {
      const at = x;
      x += wideOf(entry) + gap;
      return entry.draw(at, y + i * KEY_HEIGHT) + text(at + entry.wide + 1, y + i * KEY_HEIGHT + 3.3, entry.words, { pt: PT });
    });
  });
  return text(EDGE, y + 3.3, "How to read it", { pt: 7, bold: true }) + drawn.join("");
}

function wideOf(entry: Entry): number {
  return entry.wide + 1 + textWidth(entry.words, PT);
}

function entriesOf({ scenario, plan }: Sheet, notes: readonly Note[]): readonly Entry[] {
  const first = scenario.groups[0];
  const sure: readonly (readonly [Sure, string])[] = [["firm", "done or firm"], ["likely", "likely"], ["outline", "outline"]];
  const follower = scenario.groups.find((group) => group.follows !== null);
  return [
    ...(first ? sure.map(([one, words]) => ({ wide: SAMPLE, words, draw: sample(first, one, first.letter) })) : []),
    ...scenario.groups.slice(1).map((group) => ({ wide: SAMPLE, words: groupWords(group), draw: sample(group, "firm", group.letter) })),
    { wide: 11, words: "closed, and why; few barbs, part shut", draw: wireSample },
    ...(plan.cuts.length > 0 ? [{ wide: 2.2, words: "cut", draw: cutSample }] : []),
    { wide: 2.6, words: "days rested", draw: (x: number, y: number) => text(x, y + 3.3, "27", { pt: PT }) },
    ...(follower ? [{ wide: 6, words: `${MARKS[follower.kind].plural} follow`, draw: dashSample }] : []),
    ...(notes.some((note) => !note.black) ? [{ wide: 3.8, words: "allowed at a price", draw: (x: number, y: number) => triangle(x + 1.9, y + 0.4, { number: 1, black: false }) }] : []),
    ...(notes.some((note) => note.black) ? [{ wide: 3.8, words: "to put right", draw: (x: number, y: number) => triangle(x + 1.9, y + 0.4, { number: 1, black: true }) }] : []),
  ];
}

function groupWords(group: Group): string {
  const name = group.name.toLowerCase();
  return group.kind === "pigs" && group.strip ? `${name}, strip by strip (${group.letter} 1)` : name;
}

const sample = (group: Group, sure: Sure, label: string) => (x: number, y: number): string =>
  bar({ kind: group.kind, mark: markOf(group), sure, label, box: { x, y: y + 0.2, w: SAMPLE, h: 4.3 } });

function wireSample(x: number, y: number): string {
  const at = y + 2.4;
  const posts = [x, x + 11].map((one) => line(one, at - 1.1, one, at + 1.1, 'class="stroke" stroke-width="0.25"'));
  const barbs = [2, 5.5, 9].map((one) => line(x + one - 0.5, at - 0.5, x + one + 0.5, at + 0.5, 'class="stroke" stroke-width="0.2"') + line(x + one - 0.5, at + 0.5, x + one + 0.5, at - 0.5, 'class="stroke" stroke-width="0.2"'));
  return line(x, at, x + 11, at, 'class="stroke" stroke-width="0.2"') + posts.join("") + barbs.join("");
}

function cutSample(x: number, y: number): string {
  return [0.6, 1.4].map((at) => line(x + at - 0.5, y + 3.9, x + at + 0.5, y + 0.9, 'class="stroke" stroke-width="0.35"')).join("");
}

function dashSample(x: number, y: number): string {
  return line(x, y + 2.6, x + 6, y + 2.6, 'class="stroke dashes" stroke-width="0.25"');
}
