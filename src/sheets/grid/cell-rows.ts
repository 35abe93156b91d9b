import { addDays, spanHolds } from "../../quantity/calendar.js";
import type { Cell, Yard } from "../../farm/scenario.js";
import type { Cut, Stay } from "../../plan/plan.js";
import { toldArea } from "../amounts.js";
import { markOf } from "../marks.js";
import { sureOf } from "../made.js";
import { hostOn } from "../season-days.js";
import { shutGround } from "../shut-ground.js";
import { bar } from "./bars.js";
import { runOnArrows } from "./head.js";
import { EDGE, stretchOf, xOf, type Layout, type Row } from "./layout.js";
import { followStretch, groupOf, piecesOf, REST_PT, restOf, type RestFigure } from "./stay-facts.js";
import { cutTo, line, rect, text, textWidth } from "./svg.js";
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
    text(EDGE + 2.8, middle, cutTo(field.name, 7, true, field.h - 0.8), { pt: 7, bold: true, anchor: "middle", turn: -90, room: field.h - 0.8 }),
  ].join("");
}

function cellRow(layout: Layout, row: Row<Cell>): string {
  const { y, h, of } = row;
  const first = layout.fields.some((field) => field.y === y);
  const { scenario, plan } = layout.sheet;
  const stays = plan.stays.filter((stay) => stay.cell === of.name);
  const middle = y + h / 2;
  const shut = shutGround(layout.sheet, of, layout.words);
  const rests = stays.map((stay) => restOf(layout, stay, stays, shut)).filter((rest) => rest !== null);
  return [
    first ? "" : line(EDGE + 4, y, layout.edge, y, 'class="stroke soft" stroke-width="0.14"'),
    text(EDGE + 5, middle + 1.25, of.name, { pt: 10, bold: true, room: 9.6 }),
    text(layout.left - 1.9, middle + 0.9, toldArea(of.areaHa, scenario.units, layout.words), { pt: 6.8, anchor: "end", room: 11 }),
    ...shut.map((span) => wire(layout, row, span, rests)), ...rests.map((rest) => restWords(rest, row)),
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
    text(EDGE + 1, y + h / 2 + 1.1, cutTo(of.name, 8.5, true, 18), { pt: 8.5, bold: true, room: 18 }), text(layout.left - 1, y + h / 2 + 0.9, layout.words.say("season.fed"), { pt: 6.8, anchor: "end", room: 5.5 }),
    ...laned(layout, stays).map(({ stay, lane, lanes }) => stayBars(layout, { y: y + (lane * h) / lanes, h: h / lanes }, stay, stays)),
  ].join("");
}

/** Groups that stand in one place on the same days share the row's height; one that runs with another is told in its bar. */
function laned(layout: Layout, stays: readonly Stay[]): readonly { stay: Stay; lane: number; lanes: number }[] {
  const own = stays.filter((stay) => {
    const host = hostOn(groupOf(layout.sheet, stay), stay.firstDay);
    return !stays.some((other) => other.group === host && spanHolds(other, stay.firstDay));
  });
  return own.map((stay) => {
    const together = own.filter((other) => other.firstDay <= stay.lastDay && stay.firstDay <= other.lastDay);
    return { stay, lane: together.indexOf(stay), lanes: together.length };
  });
}

interface Lane {
  readonly y: number;
  readonly h: number;
}

/** The bar of a stay, or, for pigs, a bar a strip; arrows where it runs on. */
function stayBars(layout: Layout, lane: Lane, stay: Stay, stays: readonly Stay[]): string {
  const group = groupOf(layout.sheet, stay);
  const bars = piecesOf(layout, stay, stays).map(({ firstDay, lastDay, labels }) => {
    const stretch = stretchOf(layout, firstDay, lastDay);
    if (!stretch) return "";
    const box = { x: stretch.x + 0.1, y: lane.y + lane.h * 0.09, w: stretch.w - 0.2, h: lane.h * 0.82 };
    return bar({ kind: group.kind, mark: markOf(group), sure: sureOf(firstDay, layout.sheet.made), labels, box });
  });
  return [...bars, runOnArrows(layout, stay.firstDay, stay.lastDay, lane.y + lane.h / 2)].join("");
}

function restWords(rest: RestFigure, { y, h }: Lane): string {
  return text(rest.to - 0.4, y + h / 2 + 0.85, String(rest.days), { pt: REST_PT, anchor: "end", as: "rim", room: textWidth(String(rest.days), REST_PT) });
}

/** Dashes from the leader's bar to the follower's. */
function followDashes(layout: Layout, row: Row<Cell>, stay: Stay, stays: readonly Stay[]): string {
  const stretch = followStretch(layout, stay, stays);
  return stretch ? line(stretch.from, row.y + row.h * 0.8, stretch.to, row.y + row.h * 0.8, 'class="stroke dashes" stroke-width="0.25"') : "";
}

/** Room kept free for a figure of rest, mm. */
const FIGURE_ROOM = 3.4;

/** Two strokes at the evening of the cut, and the word where it fits. */
function cutMark(layout: Layout, { y, h }: Row<Cell>, { day, cut }: Cut, stays: readonly Stay[]): string {
  if (!layout.part.days.includes(day)) return "";
  const x = xOf(layout, addDays(day, 1));
  const stroke = (at: number): string => line(at - 0.55, y + h * 0.78, at + 0.55, y + h * 0.22, 'class="stroke" stroke-width="0.35"');
  const told = cut === "hay" ? layout.words.say("season.cut") : layout.words.say("season.topped");
  const next = stays.map((stay) => stay.firstDay).filter((first) => first > day).sort()[0];
  const room = (next === undefined ? layout.right : Math.min(layout.right, xOf(layout, next) - FIGURE_ROOM)) - x - 1.6;
  return stroke(x - 0.4) + stroke(x + 0.4) + (textWidth(told, 6.4) > room ? "" : text(x + 1.6, y + h / 2 + 0.75, told, { pt: 6.4, italic: true, as: "rim", room: textWidth(told, 6.4) }));
}
