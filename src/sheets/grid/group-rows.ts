import { addDays, daysBetween, type IsoDate } from "../../quantity/calendar.js";
import type { Group } from "../../farm/scenario.js";
import type { Stay } from "../../plan/plan.js";
import type { Words } from "../../words/words.js";
import { isWeekend } from "../day-words.js";
import { headWords, markOf } from "../marks.js";
import { sureOf } from "../made.js";
import type { Note } from "../notes.js";
import { movesOf, peopleAtHome, placeName } from "../season-days.js";
import { EDGE, GROUP_ROW, stretchOf, xOf, type Layout, type Row } from "./layout.js";
import { patternFigures } from "./patterns.js";
import { cutTo, evenLines, line, mm, rect, text, textWidth, MM_PER_PT } from "./svg.js";

/** Words beside the rows say how to read them, a line a row. */
const READ_DOWN_LINES = 3;
const READ_DOWN_PT = 6;

/** One row a group: its mark, and the codes of the places where it stands. */
export function groupRows(layout: Layout): string {
  const told = evenLines(layout.words.say("season.read-down", { groups: layout.groups.length }), Math.min(layout.groups.length, READ_DOWN_LINES), READ_DOWN_PT);
  return layout.groups.map((row, i) => [
    rect({ x: EDGE, y: row.y, w: layout.edge - EDGE, h: row.h }, 'class="none" stroke-width="0.35"'),
    line(layout.right, row.y, layout.right, row.y + row.h, 'class="stroke" stroke-width="0.35"'),
    groupMark(layout, row), absences(layout, row),
    ...staysOf(layout, row.of).map((stay) => placeBox(layout, row, stay)),
    told[i] ? text(layout.right + 1.6, row.y + 3.7, told[i], { pt: READ_DOWN_PT, room: 22 }) : "",
  ].join("")).join("\n");
}

function staysOf(layout: Layout, group: Group): readonly Stay[] {
  return layout.sheet.plan.stays.filter((stay) => stay.group === group.name);
}

const NAME_PT = 6.6;
const NAME_END = 27;

/** A group's name as it fits beside its mark. */
export function nameOnRow(group: Group): string {
  return cutTo(group.name, NAME_PT, true, NAME_END - nameAt(group));
}

function nameAt({ letter }: Group): number {
  const side = GROUP_ROW - 1.7;
  return EDGE + 0.7 + side + 0.2 + (letter.length > 1 ? side + 1.2 : side) + 0.8;
}

function groupMark({ words }: Layout, { of, y, h }: Row<Group>): string {
  const mark = markOf(of);
  const side = h - 1.7;
  const swatch = { x: EDGE + 0.7, y: y + 0.85, w: side, h: side };
  const plate = { ...swatch, x: swatch.x + side + 0.2, w: of.letter.length > 1 ? side + 1.2 : side };
  const at = nameAt(of);
  const room = NAME_END - at;
  return [
    `<g class="bar k-${of.kind}">${rect(swatch, 'class="fill"')}${patternFigures(mark.pattern, swatch)}${rect(swatch, 'class="frame" stroke-width="0.25"')}</g>`,
    rect(plate, 'class="box" stroke-width="0.25"'), text(plate.x + plate.w / 2, y + h / 2 + 1.25, of.letter, { pt: 9.6, bold: true, anchor: "middle", room: plate.w - 0.5 }),
    text(at, y + 2.7, nameOnRow(of), { pt: NAME_PT, bold: true, room }), text(at, y + 5, cutTo(headWords(of, words), 5.7, false, room), { pt: 5.7, room }),
  ].join("");
}

/** Days on which the group is not on the farm, in words. */
function absences(layout: Layout, { of, y, h }: Row<Group>): string {
  const { firstDay, lastDay } = layout.sheet.scenario.season;
  const bounds = [addDays(firstDay, -1), ...of.here.flatMap((span) => [span.firstDay, span.lastDay]), addDays(lastDay, 1)];
  return Array.from({ length: bounds.length / 2 }, (_, i) => {
    const [from, to] = [addDays(bounds[2 * i]!, 1), addDays(bounds[2 * i + 1]!, -1)];
    const told = i === 0 ? layout.words.say("season.not-yet") : i === bounds.length / 2 - 1 ? layout.words.say("season.gone") : layout.words.say("season.between");
    const stretch = from <= to ? stretchOf(layout, from, to) : null;
    if (!stretch || stretch.w < textWidth(told, 6.4) + 1) return "";
    return text(stretch.x + stretch.w / 2, y + h / 2 + 0.8, told, { pt: 6.4, anchor: "middle", as: "rim" });
  }).join("");
}

/** A framed box with the place's code: framed as sure as the stay is. */
function placeBox(layout: Layout, row: Row<Group>, stay: Stay): string {
  const stretch = stretchOf(layout, stay.firstDay, stay.lastDay);
  if (!stretch) return "";
  const sure = sureOf(stay.firstDay, layout.sheet.made);
  const box = { x: stretch.x + 0.15, y: row.y + 0.55, w: stretch.w - 0.3, h: row.h - 1.1 };
  const frame = sure === "outline" ? 'class="paper outline"' : `class="box" stroke-width="${sure === "likely" ? 0.16 : 0.4}"`;
  const middles = stretch.w > 60 ? [1, 3, 5].map((part) => box.x + (box.w * part) / 6) : [box.x + box.w / 2];
  return rect(box, frame) + stripTicks(layout, row, stay) + middles.map((x) => placeCode(x, row, stay, box.w, layout.words)).join("");
}

/** The cell's code, or the yard's name; "yard" where a yard's name does not fit. */
function placeCode(x: number, row: Row<Group>, stay: Stay, wide: number, words: Words): string {
  const room = wide - 0.5;
  const fits = stay.cell !== null || textWidth(placeName(stay), 5.5, true) <= room;
  const name = fits ? placeName(stay) : words.say("place.yard");
  // by the number of letters, so that codes of one length in boxes of one width are of one size
  const pt = Math.min(8, room / (name.length * 0.68 * MM_PER_PT));
  if (pt < 5 && name.length > 1) return text(x + 0.75, row.y + row.h / 2, name, { pt: 5.8, bold: true, anchor: "middle", turn: -90, room: row.h - 1.4 });
  const size = Math.max(5.5, pt);
  return text(x, row.y + row.h / 2 + size * MM_PER_PT * 0.36, name, { pt: size, bold: true, anchor: "middle", room });
}

/** Where the pigs' ground changes inside the stay. */
function stripTicks(layout: Layout, row: Row<Group>, stay: Stay): string {
  const strip = row.of.kind === "pigs" ? row.of.strip : null;
  if (!strip || stay.cell === null) return "";
  const days = daysBetween(stay.firstDay, stay.lastDay);
  return Array.from({ length: Math.floor(days / strip.days) }, (_, i) => addDays(stay.firstDay, (i + 1) * strip.days))
    .filter((day) => layout.part.days.includes(day))
    .map((day) => line(xOf(layout, day), row.y + row.h - 1.7, xOf(layout, day), row.y + row.h - 0.6, 'class="stroke" stroke-width="0.3"')).join("");
}

/** People at home, moves and notes: one figure or triangle a day. */
export function dayRows(layout: Layout, notes: readonly Note[]): string {
  const { scenario, plan } = layout.sheet;
  const moves = movesOf(scenario, plan);
  const countRow = (y: number, label: string, count: (day: IsoDate) => number): string => [
    rect({ x: EDGE, y, w: layout.edge - EDGE, h: layout.countRow }, 'class="none" stroke-width="0.2"'),
    text(layout.left - 0.8, y + 2.3, label, { pt: 6, anchor: "end", room: layout.left - EDGE - 1.2 }),
    ...layout.part.days.map((day) => (isWeekend(day) ? rect({ x: xOf(layout, day), y: y + 0.1, w: layout.dayWidth, h: layout.countRow - 0.2 }, 'class="weekend"') : "")),
    ...layout.part.days.map((day) => dayCount(layout, day, y, count(day))),
  ].join("");
  return [
    countRow(layout.peopleY, layout.words.say("season.people"), (day) => peopleAtHome(scenario, day)),
    countRow(layout.movesY, layout.words.say("season.moves"), (day) => moves.filter((move) => move.day === day).length),
    text(layout.left - 0.8, layout.notesY + 3, layout.words.say("row.notes"), { pt: 6, anchor: "end" }), triangles(layout, notes),
  ].join("\n");
}

function dayCount(layout: Layout, day: IsoDate, y: number, count: number): string {
  if (count === 0) return "";
  return text(xOf(layout, day) + layout.dayWidth / 2, y + 2.3, String(count), { pt: 5.8, anchor: "middle", bold: count > 1, room: layout.dayWidth - 0.1 });
}

const TRIANGLE = 3.7;

/** Numbered triangles over their days. */
function triangles(layout: Layout, notes: readonly Note[]): string {
  const wished = notes.map((note) => xOf(layout, note.day) + layout.dayWidth / 2);
  const places = pushedApart(wished, layout.left + TRIANGLE / 2, layout.right - TRIANGLE / 2, TRIANGLE + 0.1);
  return notes.map((note, i) => triangle(places[i]!, layout.notesY + 0.35, note)).join("");
}

/** Places in order, no two nearer than `apart`: pushed to the right, and from the right end back where that runs over. */
export function pushedApart(wished: readonly number[], least: number, most: number, apart: number): readonly number[] {
  const places: number[] = [];
  for (const x of wished) places.push(Math.max(x, least, places.length > 0 ? places.at(-1)! + apart : least));
  let end = most;
  for (let i = places.length - 1; i >= 0; i -= 1) {
    places[i] = Math.min(places[i]!, end);
    end = places[i]! - apart;
  }
  return places;
}

/** White: allowed at a price. Black: to be put right. */
export function triangle(x: number, y: number, note: Pick<Note, "number" | "black">): string {
  const half = TRIANGLE / 2;
  return `<g><path class="${note.black ? "ink" : "box"}" stroke-width="0.25" d="M${mm(x)} ${mm(y)}L${mm(x + half)} ${mm(y + 3.5)}H${mm(x - half)}z"/>` +
    `${text(x, y + 3.1, String(note.number), { pt: note.number > 9 ? 4.7 : 5.6, bold: true, anchor: "middle", as: note.black ? "reverse" : "" })}</g>`;
}
