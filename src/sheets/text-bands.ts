import { spanHolds, weekdayOf, type IsoDate } from "../quantity/calendar.js";
import type { Cell, Kind, Scenario } from "../farm/scenario.js";
import type { Stay } from "../plan/plan.js";
import { dayFigure, dayMonth, isWeekend, monthYear, weekdayLetter } from "./day-words.js";
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
}

const LABEL_MOST = 14;

/** Width of the names at the left. */
export function labelWidth({ cells, groups, yards }: Scenario): number {
  return Math.min(LABEL_MOST, Math.max(6, ...[...cells, ...groups, ...yards].map((one) => one.name.length)));
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
  const row = (label: string, signs: readonly Sign[]): string => `${label.slice(0, style.label).padEnd(style.label)} ${painted(signs, style.paint)}`.trimEnd();
  const head = (text: string): readonly Sign[] => [...text].map((glyph) => ({ glyph, part: "head" as const }));
  const moves = movesOf(scenario, sheet.plan);
  const noted = new Set(notesOf(sheet).numbered.map((note) => note.day));
  const yards = scenario.yards.filter((yard) => sheet.plan.stays.some((stay) => stay.yard === yard.name));
  const counts = (count: (day: IsoDate) => number): readonly Sign[] => days.map((day) => dayed(day, count(day) === 0 ? " " : String(Math.min(9, count(day)))));
  return [
    row("", head(monthLine(days))), row("", head(sureLine(sheet, days))), row("", head(mondayLine(days))),
    row("", days.map((day) => dayed(day, weekdayLetter(day)))),
    ...scenario.groups.map((group) => row(group.name, placeLine(sheet, days, group.name))),
    row("People", counts((day) => peopleAtHome(scenario, day))), row("Moves", counts((day) => moves.filter((move) => move.day === day).length)),
    row("Notes", days.map((day) => ({ glyph: noted.has(day) ? "^" : " ", part: "note" as const }))),
    ...scenario.fields.flatMap((field) => {
      const cells = scenario.cells.filter((cell) => cell.field === field.name);
      return [field.name.slice(0, style.label + 1 + days.length), ...cells.map((cell) => row(cell.name, cellLine(sheet, days, cell, style.glyphs)))];
    }),
    ...(yards.length > 0 ? ["Yards"] : []), ...yards.map((yard) => row(yard.name, yardLine(sheet, days, yard.name, style.glyphs))),
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
function wordsAt(length: number, words: readonly { readonly at: number; readonly text: string }[]): string {
  let line = "";
  for (const { at, text } of words) {
    if (at >= line.length && at + text.length <= length) line = line.padEnd(at) + text;
  }
  return line.padEnd(length);
}

/** Months at their first day, shortened or left out where the next one begins too soon. */
function monthLine(days: readonly IsoDate[]): string {
  const starts = days.flatMap((day, at) => (at === 0 || dayFigure(day) === 1 ? [at] : []));
  return wordsAt(days.length, starts.map((at, i) => {
    const room = (starts[i + 1] ?? days.length + 1) - at - 1;
    const name = monthYear(days[at]!);
    return { at, text: name.length <= room ? name : room < 3 ? "" : name.slice(0, 3) };
  }));
}

function mondayLine(days: readonly IsoDate[]): string {
  return wordsAt(days.length, days.flatMap((day, at) => (weekdayOf(day) === 0 ? [{ at, text: String(dayFigure(day)) }] : [])));
}

/** How sure the days are, in as many words as their days have room for. */
function sureLine({ made }: Sheet, days: readonly IsoDate[]): string {
  const [firm, likely] = [dayMonth(made.firmTo), dayMonth(made.likelyTo)];
  const words: Readonly<Record<Sure, readonly string[]>> = {
    done: ["|done"], firm: [`|firm to ${firm}`, `|firm ${firm}`, "|firm"], likely: [`|likely to ${likely}`, `|likely ${likely}`, "|likely"], outline: ["|outline"],
  };
  const starts = days.flatMap((day, at) => (at === 0 || sureOf(days[at - 1]!, made) !== sureOf(day, made) ? [at] : []));
  return wordsAt(days.length, starts.map((at, i) => {
    const room = (starts[i + 1] ?? days.length) - at;
    return { at, text: words[sureOf(days[at]!, made)].find((text) => text.length <= room) ?? "|" };
  }));
}

/** A stay that is too short for the name of its place. */
const TOO_SHORT = "~";

/** Where a group stands: the name of the place from the stay's first day, whole or not at all, as a letter alone would mean animals. */
function placeLine({ scenario, plan }: Sheet, days: readonly IsoDate[], name: string): readonly Sign[] {
  const kind = scenario.groups.find((group) => group.name === name)!.kind;
  const stays = plan.stays.filter((stay) => stay.group === name);
  const signs: Sign[] = days.map((day) => dayed(day, " "));
  for (const stay of stays) {
    const held = days.flatMap((day, i) => (spanHolds(stay, day) ? [i] : []));
    const words = [stay.cell ?? stay.yard!, ...(stay.cell === null ? ["yard"] : [])].find((one) => one.length <= held.length);
    held.forEach((i, at) => {
      signs[i] = { glyph: words === undefined ? TOO_SHORT : words[at] ?? "-", part: "stay", kind };
    });
  }
  return signs;
}

function cellLine(sheet: Sheet, days: readonly IsoDate[], cell: Cell, glyphs: Glyphs): readonly Sign[] {
  const stays = sheet.plan.stays.filter((stay) => stay.cell === cell.name);
  const shut = shutGround(sheet, cell);
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
