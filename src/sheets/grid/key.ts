import type { Group } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import { markOf, pluralWords } from "../marks.js";
import type { Sure } from "../made.js";
import type { Note } from "../notes.js";
import { bar } from "./bars.js";
import { nameOnRow, triangle } from "./group-rows.js";
import { EDGE, type Canvas, type Frame } from "./layout.js";
import { marksOnSheet, type MarksOnSheet } from "./marks-on-sheet.js";
import { line, mm, text, textWidth } from "./svg.js";

export const KEY_HEIGHT = 5.6;
const PT = 6.4;
const SAMPLE = 6.4;
const LABEL = 19;
const LEAST_GAP = 1.2;
const room = ({ width }: Canvas): number => width - 2 * EDGE - LABEL;

interface Entry {
  /** Width of the drawing, mm. */
  readonly wide: number;
  readonly draw: (x: number, y: number) => string;
  readonly words: string;
}

/** Entries of the key set out in rows. */
export type KeyRows = readonly (readonly Entry[])[];

/** "How to read it": how sure a bar is, each group's pattern, wire, rest, followers, triangles; only what the sheet shows. */
export function keyRows(frame: Frame, notes: readonly Note[]): KeyRows {
  const rows: Entry[][] = [[]];
  let used = 0;
  for (const entry of entriesOf(marksOnSheet(frame), notes, frame.words)) {
    const wide = wideOf(entry) + LEAST_GAP;
    if (used + wide > room(frame.canvas) && used > 0) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)!.push(entry);
    used += wide;
  }
  return rows;
}

/** Draws the key under its title. */
export function keyDrawing({ canvas, words }: Frame, rows: KeyRows, y: number): string {
  const gap = Math.min(5, ...rows.slice(0, 1).map((row) => (room(canvas) - row.reduce((sum, entry) => sum + wideOf(entry), 0)) / row.length));
  const drawn = rows.flatMap((row, i) => {
    let x = EDGE + LABEL;
    return row.map((entry) => {
      const at = x;
      x += wideOf(entry) + gap;
      return entry.draw(at, y + i * KEY_HEIGHT) + text(at + entry.wide + 1, y + i * KEY_HEIGHT + 3.3, entry.words, { pt: PT, room: textWidth(entry.words, PT) });
    });
  });
  return text(EDGE, y + 3.3, words.say("key.title"), { pt: 7, bold: true, room: LABEL - 1 }) + drawn.join("");
}

function wideOf(entry: Entry): number {
  return entry.wide + 1 + textWidth(entry.words, PT);
}

function entriesOf(on: MarksOnSheet, notes: readonly Note[], words: Words): readonly Entry[] {
  const white = (black: boolean) => (x: number, y: number): string => triangle(x + 1.9, y + 0.4, { number: 1, black });
  return [
    ...barEntries(on, words),
    ...(on.together === null ? [] : [{ wide: 0, words: words.say("key.together", { groups: on.together }), draw: () => "" }]),
    ...(on.shut || on.partShut ? [{ wide: 9, words: on.shut ? words.say("key.closed-why") : words.say("key.part-why"), draw: wireSample(on.shut ? [1.5, 4.5, 7.5] : [4.5]) }] : []),
    ...(on.shut && on.partShut ? [{ wide: 8, words: words.say("key.part"), draw: wireSample([4]) }] : []),
    ...(on.cut ? [{ wide: 2.2, words: words.say("season.cut"), draw: cutSample }] : []),
    ...(on.rest === null ? [] : [{ wide: 2.6, words: words.say("key.rested"), draw: (x: number, y: number) => text(x, y + 3.3, String(on.rest), { pt: PT }) }]),
    ...(on.followers.length > 0 ? [{ wide: 6, words: words.say("key.follow", { who: on.followers.map((kind) => pluralWords(kind, words)).join(", ") }), draw: dashSample }] : []),
    ...(notes.some((note) => !note.black) ? [{ wide: 3.8, words: words.say("key.priced"), draw: white(false) }] : []),
    ...(notes.some((note) => note.black) ? [{ wide: 3.8, words: words.say("key.right"), draw: white(true) }] : []),
  ];
}

/** How sure, on the first group's bar; then the other groups, each as sure as it is at most. */
function barEntries({ sures, groups }: MarksOnSheet, words: Words): readonly Entry[] {
  const told: readonly (readonly [Sure, string])[] = [
    ["firm", sures.has("done") ? words.say("key.done-or-firm") : words.say("sure.firm")], ["likely", words.say("sure.likely")], ["outline", words.say("sure.outline")],
  ];
  const shown = told.filter(([sure]) => sures.has(sure) || (sure === "firm" && sures.has("done")));
  const first = groups[0];
  return first === undefined ? [] : [
    ...shown.map(([sure, said]) => ({ wide: SAMPLE, words: said, draw: sample(first.group, sure) })),
    // the first group stands for itself in the samples before, unless its row has no room for its name
    ...groups.filter(({ group }) => group !== first.group || nameOnRow(group) !== group.name)
      .map(({ group, sure }) => ({ wide: SAMPLE, words: groupWords(group, words), draw: sample(group, sure) })),
  ];
}

function groupWords(group: Group, words: Words): string {
  const name = group.name.toLocaleLowerCase(words.locale);
  return group.kind === "pigs" && group.strip ? words.say("key.strips", { group: name, letter: group.letter }) : name;
}

const sample = (group: Group, sure: Sure) => (x: number, y: number): string =>
  bar({ kind: group.kind, mark: markOf(group), sure, labels: [[group.letter]], box: { x, y: y + 0.2, w: SAMPLE, h: 4.3 } });

const wireSample = (barbs: readonly number[]) => (x: number, y: number): string => {
  const [at, end] = [y + 2.4, x + Math.min(9, 2 * barbs.at(-1)!)];
  const posts = [x, end].map((one) => line(one, at - 1.1, one, at + 1.1, 'class="stroke" stroke-width="0.25"'));
  const crosses = barbs.map((one) => `M${mm(x + one - 0.5)} ${mm(at - 0.5)}l1 1M${mm(x + one - 0.5)} ${mm(at + 0.5)}l1 -1`).join("");
  return line(x, at, end, at, 'class="stroke" stroke-width="0.2"') + posts.join("") + `<path class="stroke" stroke-width="0.2" d="${crosses}"/>`;
};

function cutSample(x: number, y: number): string {
  return [0.6, 1.4].map((at) => line(x + at - 0.5, y + 3.9, x + at + 0.5, y + 0.9, 'class="stroke" stroke-width="0.35"')).join("");
}

function dashSample(x: number, y: number): string {
  return line(x, y + 2.6, x + 6, y + 2.6, 'class="stroke dashes" stroke-width="0.25"');
}
