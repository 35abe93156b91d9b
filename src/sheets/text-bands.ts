import { spanHolds, weekdayOf, type IsoDate } from "../quantity/calendar.js";
import type { Cell, Kind, Scenario } from "../farm/scenario.js";
import type { Stay } from "../plan/plan.js";
import type { Words } from "../words/words.js";
import { dayFigure, isWeekend } from "./day-words.js";
import { sureOf, type Sheet, type Sure } from "./made.js";
import { notesOf } from "./notes.js";
import { mondaysIn, movesOf, peopleAtHome } from "./season-days.js";
import type { Paint, TextPart } from "./text-paint.js";
import { shutGround } from "./shut-ground.js";
import type { Glyphs } from "./text-glyphs.js";

/** One character of a row, and how to colour it. */
interface Sign {
  readonly glyph: string;
  readonly part: TextPart | null;
  readonly kind?: Kind;
}

export interface BandStyle {
  readonly label: number;
  readonly glyphs: Glyphs;
  readonly paint: Paint;
  readonly words: Words;
}

const LABEL_MOST = 14;

/** Width of the names at the left. */
export function labelWidth({ cells, groups, yards }: Scenario, words: Words): number {
  const rows = [words.say("row.people"), words.say("row.moves"), words.say("row.notes")].map((label) => label.length);
  return Math.max(...rows, Math.min(LABEL_MOST, ...[Math.max(...[...cells, ...groups, ...yards].map((one) => one.name.length))]));
}

/** Cuts the season into as few bands of at most `most` days as there are, of much the same length; all but the first begin on a Monday. */
export function bandsOf(days: readonly IsoDate[], most: number): readonly (readonly IsoDate[])[] {
  const mondays = mondaysIn(days);
  for (let count = Math.ceil(days.length / most); ; count += 1) {
    const starts = [0, ...Array.from({ length: count - 1 }, (_, i) => nearest(mondays, ((i + 1) * days.length) / count))];
    const bands = starts.map((start, i) => days.slice(start, starts[i + 1]));
    if (bands.every((band) => band.length > 0 && band.length <= most)) return bands;
  }
}

function nearest(places: readonly number[], wished: number): number {
  return places.reduce((best, place) => (Math.abs(place - wished) < Math.abs(best - wished) ? place : best));
}

/** One band: ruler, groups, people, moves, notes, cells by field, yards. */
export function bandText(sheet: Sheet, days: readonly IsoDate[], style: BandStyle): string {
  const { scenario } = sheet;
  const { words } = style;
  const row = (label: string, signs: readonly Sign[]): string => `${label.slice(0, style.label).padEnd(style.label)} ${painted(signs, style.paint)}`.trimEnd();
  const head = (text: string): readonly Sign[] => [...text].map((glyph) => ({ glyph, part: "head" as const }));
  const moves = movesOf(scenario, sheet.plan);
  const noted = new Set(notesOf(sheet, words).numbered.map((note) => note.day));
  const yards = scenario.yards.filter((yard) => sheet.plan.stays.some((stay) => stay.yard === yard.name));
  const counts = (count: (day: IsoDate) => number): readonly Sign[] => days.map((day) => dayed(day, count(day) === 0 ? " " : String(Math.min(9, count(day)))));
  return [
    row("", head(monthLine(days, words))), row("", head(sureLine(sheet, days, words))), row("", head(mondayLine(days))),
    row("", days.map((day) => dayed(day, words.weekdayLetter(day)))),
    ...scenario.groups.map((group) => row(group.name, placeLine(sheet, days, group.name, words))),
    row(words.say("row.people"), counts((day) => peopleAtHome(scenario, day))), row(words.say("row.moves"), counts((day) => moves.filter((move) => move.day === day).length)),
    row(words.say("row.notes"), days.map((day) => ({ glyph: noted.has(day) ? "^" : " ", part: "note" as const }))),
    ...scenario.fields.flatMap((field) => {
      const cells = scenario.cells.filter((cell) => cell.field === field.name);
      return [field.name.slice(0, style.label + 1 + days.length), ...cells.map((cell) => row(cell.name, cellLine(sheet, days, cell, style)))];
    }),
    ...(yards.length > 0 ? [words.say("row.yards")] : []), ...yards.map((yard) => row(yard.name, yardLine(sheet, days, yard.name, style.glyphs))),
  ].join("\n");
}

function dayed(day: IsoDate, glyph: string): Sign {
  return { glyph, part: isWeekend(day) ? "weekend" : null };
}

/** Neighbours of one colour are coloured together; blanks at the end are left off. */
function painted(row: readonly Sign[], paint: Paint): string {
  const signs = row.slice(0, row.findLastIndex((sign) => sign.glyph !== " ") + 1);
  let text = "";
  for (let i = 0; i < signs.length; ) {
    let end = i + 1;
    while (end < signs.length && signs[end]!.part === signs[i]!.part && signs[end]!.kind === signs[i]!.kind) end += 1;
    const run = signs.slice(i, end).map((sign) => sign.glyph).join("");
    text += signs[i]!.part === null || run.trim() === "" ? run : paint(run, signs[i]!.part!, signs[i]!.kind);
    i = end;
  }
  return text;
}

/** Words set at their day, one behind the other; a word that does not fit is left out. */
function wordsAt(length: number, told: readonly { readonly at: number; readonly text: string }[]): string {
  let line = "";
  for (const { at, text } of told) {
    if (at >= line.length && at + text.length <= length) line = line.padEnd(at) + text;
  }
  return line.padEnd(length);
}

/** Months at their first day, shortened or left out where the next one begins too soon. */
function monthLine(days: readonly IsoDate[], words: Words): string {
  const starts = days.flatMap((day, at) => (at === 0 || dayFigure(day) === 1 ? [at] : []));
  return wordsAt(days.length, starts.map((at, i) => {
    const room = (starts[i + 1] ?? days.length + 1) - at - 1;
    const names = [words.monthYear(days[at]!), words.month(days[at]!)];
    return { at, text: names.find((name) => name.length <= room) ?? "" };
  }));
}

function mondayLine(days: readonly IsoDate[]): string {
  return wordsAt(days.length, days.flatMap((day, at) => (weekdayOf(day) === 0 ? [{ at, text: String(dayFigure(day)) }] : [])));
}

/** How sure the days are, in as many words as their days have room for. */
function sureLine({ made }: Sheet, days: readonly IsoDate[], words: Words): string {
  const [firm, likely] = [{ day: words.dayMonth(made.firmTo) }, { day: words.dayMonth(made.likelyTo) }];
  const told: Readonly<Record<Sure, readonly string[]>> = {
    done: [words.say("sure.done")], firm: [words.say("sure.firm-to", firm), words.say("sure.firm-day", firm), words.say("sure.firm")],
    likely: [words.say("sure.likely-to", likely), words.say("sure.likely-day", likely), words.say("sure.likely")], outline: [words.say("sure.outline")],
  };
  const starts = days.flatMap((day, at) => (at === 0 || sureOf(days[at - 1]!, made) !== sureOf(day, made) ? [at] : []));
  return wordsAt(days.length, starts.map((at, i) => {
    const room = (starts[i + 1] ?? days.length) - at;
    return { at, text: `|${told[sureOf(days[at]!, made)].find((text) => text.length < room) ?? ""}` };
  }));
}

/** A stay that is too short for the name of its place. */
const TOO_SHORT = "~";

/** Where a group stands: the name of the place from the stay's first day, whole or not at all, as a letter alone would mean animals. */
function placeLine({ scenario, plan }: Sheet, days: readonly IsoDate[], name: string, words: Words): readonly Sign[] {
  const kind = scenario.groups.find((group) => group.name === name)!.kind;
  const stays = plan.stays.filter((stay) => stay.group === name);
  const signs: Sign[] = days.map((day) => dayed(day, " "));
  for (const stay of stays) {
    const held = days.flatMap((day, i) => (spanHolds(stay, day) ? [i] : []));
    const told = [stay.cell ?? stay.yard!, ...(stay.cell === null ? [words.say("place.yard")] : [])].find((one) => one.length <= held.length);
    held.forEach((i, at) => {
      signs[i] = { glyph: told === undefined ? TOO_SHORT : told[at] ?? "-", part: "stay", kind };
    });
  }
  return signs;
}

function cellLine(sheet: Sheet, days: readonly IsoDate[], cell: Cell, { glyphs, words }: BandStyle): readonly Sign[] {
  const stays = sheet.plan.stays.filter((stay) => stay.cell === cell.name);
  const shut = shutGround(sheet, cell, words);
  return days.map((day): Sign => {
    const standing = staySign(sheet, stays, day, glyphs);
    if (standing) return standing;
    if (sheet.plan.cuts.some((cut) => cut.cell === cell.name && cut.day === day)) return { glyph: "/", part: "cut" };
    const spans = shut.filter((one) => spanHolds(one, day));
    if (spans.length === 0) return { glyph: ".", part: null };
    return { glyph: spans.some((one) => one.openShare === 0) ? "x" : ":", part: "shut" };
  });
}

function yardLine(sheet: Sheet, days: readonly IsoDate[], yard: string, glyphs: Glyphs): readonly Sign[] {
  const stays = sheet.plan.stays.filter((stay) => stay.yard === yard);
  return days.map((day) => staySign(sheet, stays, day, glyphs) ?? { glyph: ".", part: null });
}

/** The group that stands there, or the sign of two. */
function staySign({ scenario }: Sheet, stays: readonly Stay[], day: IsoDate, glyphs: Glyphs): Sign | null {
  const there = scenario.groups.filter((group) => stays.some((stay) => stay.group === group.name && spanHolds(stay, day)));
  if (there.length === 0) return null;
  return { glyph: there.length > 1 ? "&" : glyphs.get(there[0]!.name)!, part: "stay", kind: there[0]!.kind };
}
