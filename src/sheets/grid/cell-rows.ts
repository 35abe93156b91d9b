import { addDays, daysBetween, spanHolds, type IsoDate } from "../../quantity/calendar.js";
import { isGrazer, type Cell, type Group, type Yard } from "../../farm/scenario.js";
import { positionSpan } from "../../plan/plan-file.js";
import type { Cut, Stay } from "../../plan/plan.js";
import { areaWords } from "../figure-words.js";
import { markOf } from "../marks.js";
import { sureOf } from "../made.js";
import { hostOn } from "../season-days.js";
import { shutGround } from "../shut-ground.js";
import { bar } from "./bars.js";
import { runOnArrows } from "./head.js";
import { EDGE, stretchOf, xOf, type Layout, type Row } from "./layout.js";
import { line, rect, text, textWidth } from "./svg.js";
import { wire } from "./wire.js";

/** Fields, their cells, and all that stands or is closed in them; then the yards. */
export function groundRows(layout: Layout): string {
  return [
    ...layout.fields.map((field) => fieldFrame(layout, field)),
    ...layout.cells.map((row) => cellRow(layout, row)),
    ...(layout.yards.length > 0 ? [yardFrame(layout)] : []),
    ...layout.yards.map((row) => yardRow(layout, row)),
  ].join("\n");
}

function fieldFrame(layout: Layout, field: Layout["fields"][number]): string {
  const middle = field.y + field.h / 2;
  return [
    rect({ x: EDGE, y: field.y, w: layout.edge - EDGE, h: field.h }, 'class="none" stroke-width="0.4"'),
    line(EDGE + 4, field.y, EDGE + 4, field.y + field.h, 'class="stroke" stroke-width="0.2"'),
    line(layout.right, field.y, layout.right, field.y + field.h, 'class="stroke" stroke-width="0.4"'),
    text(EDGE + 2.8, middle, field.name, { pt: 7, bold: true, anchor: "middle", turn: -90, room: field.h - 0.8 }),
  ].join("");
}

function cellRow(layout: Layout, row: Row<Cell>): string {
  const { y, h, of } = row;
  const first = layout.fields.some((field) => field.y === y);
  const { scenario, plan } = layout.sheet;
  const stays = plan.stays.filter((stay) => stay.cell === of.name);
  const middle = y + h / 2;
  return [
    first ? "" : line(EDGE + 4, y, layout.edge, y, 'class="stroke soft" stroke-width="0.14"'),
    text(EDGE + 5, middle + 1.25, of.name, { pt: 10, bold: true, room: 9.6 }),
    text(layout.left - 1.9, middle + 0.9, areaWords(of.areaHa, scenario.units), { pt: 6.8, anchor: "end", room: 11 }),
    ...shutGround(layout.sheet, of).map((span) => wire(layout, row, span)),
    ...plan.cuts.filter((cut) => cut.cell === of.name).map((cut) => cutMark(layout, row, cut, stays)),
    ...stays.map((stay) => followDashes(layout, row, stay, stays)),
    ...laned(layout, stays).map(({ stay, lane, lanes }) => stayBars(layout, { y: y + (lane * h) / lanes, h: h / lanes }, stay, stays)),
  ].join("");
}

function yardFrame(layout: Layout): string {
  const top = layout.yards[0]!.y;
  const h = layout.groundEnd - top;
  return rect({ x: EDGE, y: top, w: layout.edge - EDGE, h }, 'class="none" stroke-width="0.4"') + line(layout.right, top, layout.right, top + h, 'class="stroke" stroke-width="0.4"');
}

function yardRow(layout: Layout, { of, y, h }: Row<Yard>): string {
  const stays = layout.sheet.plan.stays.filter((stay) => stay.yard === of.name);
  return [
    y === layout.yards[0]!.y ? "" : line(EDGE, y, layout.edge, y, 'class="stroke soft" stroke-width="0.14"'),
    text(EDGE + 1, y + h / 2 + 1.1, of.name, { pt: 8.5, bold: true, room: 18 }), text(layout.left - 1, y + h / 2 + 0.9, "fed", { pt: 6.8, anchor: "end" }),
    ...laned(layout, stays).map(({ stay, lane, lanes }) => stayBars(layout, { y: y + (lane * h) / lanes, h: h / lanes }, stay, stays)),
  ].join("");
}

/** Groups that stand in one place on the same days share the row's height; one that runs with another is told in its bar. */
function laned(layout: Layout, stays: readonly Stay[]): readonly { stay: Stay; lane: number; lanes: number }[] {
  const own = stays.filter((stay) => {
    const host = hostOn(groupOf(layout, stay), stay.firstDay);
    return !stays.some((other) => other.group === host && spanHolds(other, stay.firstDay));
  });
  return own.map((stay) => {
    const together = own.filter((other) => other.firstDay <= stay.lastDay && stay.firstDay <= other.lastDay);
    return { stay, lane: together.indexOf(stay), lanes: together.length };
  });
}

function groupOf({ sheet }: Layout, stay: Stay): Group {
  return sheet.scenario.groups.find((group) => group.name === stay.group)!;
}

interface Lane {
  readonly y: number;
  readonly h: number;
}

/** The bar of a stay, or, for pigs, a bar a strip; days rested before a grazing bar; arrows where it runs on. */
function stayBars(layout: Layout, lane: Lane, stay: Stay, stays: readonly Stay[]): string {
  const pieces = piecesOf(layout, stay, stays);
  const bars = pieces.map(({ firstDay, lastDay, label }) => {
    const stretch = stretchOf(layout, firstDay, lastDay);
    const group = groupOf(layout, stay);
    if (!stretch) return "";
    const box = { x: stretch.x + 0.1, y: lane.y + lane.h * 0.09, w: stretch.w - 0.2, h: lane.h * 0.82 };
    return bar({ kind: group.kind, mark: markOf(group), sure: sureOf(firstDay, layout.sheet.made), label, box });
  });
  return [restFigure(layout, lane, stay, stays), ...bars, runOnArrows(layout, stay.firstDay, stay.lastDay, lane.y + lane.h / 2)].join("");
}

interface Piece {
  readonly firstDay: IsoDate;
  readonly lastDay: IsoDate;
  readonly label: string;
}

function piecesOf(layout: Layout, stay: Stay, stays: readonly Stay[]): readonly Piece[] {
  const group = groupOf(layout, stay);
  const { plan, scenario } = layout.sheet;
  const span = group.kind === "pigs" ? positionSpan(scenario, plan, stay) : null;
  const days = group.strip?.days ?? 1;
  if (span && days * layout.dayWidth > textWidth(`${group.letter} ${span.last}`, 7, true) + 1) {
    return Array.from({ length: span.last - span.first + 1 }, (_, i) => {
      const firstDay = addDays(stay.firstDay, i * days);
      const end = addDays(firstDay, days - 1);
      return { firstDay, lastDay: end < stay.lastDay ? end : stay.lastDay, label: `${group.letter} ${span.first + i}` };
    });
  }
  const with_ = stays.filter((other) => other !== stay && hostOn(groupOf(layout, other), other.firstDay) === stay.group && spanHolds(stay, other.firstDay));
  const label = [group.letter, ...with_.map((other) => groupOf(layout, other).letter)].join("+");
  return [{ firstDay: stay.firstDay, lastDay: stay.lastDay, label: span && span.first < span.last ? `${label} ${span.first}-${span.last}` : label }];
}

/** Days rested since grazers left; none for outline days, where it would claim too much. */
function restFigure(layout: Layout, lane: Lane, stay: Stay, stays: readonly Stay[]): string {
  const grazed = stays.filter((other) => isGrazer(groupOf(layout, other).kind) && other.lastDay < stay.firstDay);
  if (!isGrazer(groupOf(layout, stay).kind) || stay.cell === null || grazed.length === 0 || sureOf(stay.firstDay, layout.sheet.made) === "outline") return "";
  if (!layout.part.days.includes(stay.firstDay) || !hasRoom(layout, stay, stays)) return "";
  const rest = daysBetween(grazed.map((other) => other.lastDay).sort().at(-1)!, stay.firstDay) - 1;
  return text(xOf(layout, stay.firstDay) - 0.4, lane.y + lane.h / 2 + 0.85, String(rest), { pt: 6.8, anchor: "end", as: "rim" });
}

const FIGURE_ROOM = 3.4;

/** A figure stands on blank paper only: no bar, post or cut just before. */
function hasRoom(layout: Layout, stay: Stay, stays: readonly Stay[]): boolean {
  const from = addDays(stay.firstDay, -Math.ceil(FIGURE_ROOM / layout.dayWidth));
  const before = (day: IsoDate): boolean => from <= day && day < stay.firstDay;
  const cut = layout.sheet.plan.cuts.some((one) => one.cell === stay.cell && before(one.day));
  return !cut && !stays.some((other) => before(other.lastDay)) && from >= layout.part.days[0]!;
}

/** Farthest day behind the leader that still reads as following. */
const FOLLOWS_WITHIN = 10;

/** Dashes from the leader's bar to the follower's. */
function followDashes(layout: Layout, row: Row<Cell>, stay: Stay, stays: readonly Stay[]): string {
  const leader = groupOf(layout, stay).follows;
  const before = stays.filter((other) => other.group === leader && other.lastDay < stay.firstDay).map((other) => other.lastDay).sort().at(-1);
  if (before === undefined || daysBetween(before, stay.firstDay) > FOLLOWS_WITHIN) return "";
  const from = Math.max(layout.left, xOf(layout, addDays(before, 1)));
  const to = Math.min(layout.right, xOf(layout, stay.firstDay));
  if (to - from < 0.5) return "";
  return line(from, row.y + row.h * 0.8, to, row.y + row.h * 0.8, 'class="stroke dashes" stroke-width="0.25"');
}

/** Two strokes at the evening of the cut, and the word where it fits. */
function cutMark(layout: Layout, { y, h }: Row<Cell>, { day, cut }: Cut, stays: readonly Stay[]): string {
  if (!layout.part.days.includes(day)) return "";
  const x = xOf(layout, addDays(day, 1));
  const stroke = (at: number): string => line(at - 0.55, y + h * 0.78, at + 0.55, y + h * 0.22, 'class="stroke" stroke-width="0.35"');
  const words = cut === "hay" ? "cut" : "topped";
  const next = stays.map((stay) => stay.firstDay).filter((first) => first > day).sort()[0];
  const room = (next === undefined ? layout.right : Math.min(layout.right, xOf(layout, next) - FIGURE_ROOM)) - x - 1.6;
  return stroke(x - 0.4) + stroke(x + 0.4) + (textWidth(words, 6.4) > room ? "" : text(x + 1.6, y + h / 2 + 0.75, words, { pt: 6.4, italic: true, as: "rim" }));
}
