import { addDays, daysBetween, spanHolds, type IsoDate } from "../../quantity/calendar.js";
import { isGrazer, type Group } from "../../farm/scenario.js";
import { positionSpan } from "../../plan/plan-file.js";
import type { Stay } from "../../plan/plan.js";
import { sureOf, type Sheet } from "../made.js";
import { hostOn } from "../season-days.js";
import type { ShutSpan } from "../shut-ground.js";
import { stretchOf, xOf, type Frame } from "./layout.js";
import { textWidth } from "./svg.js";

export function groupOf({ scenario }: Sheet, stay: Stay): Group {
  return scenario.groups.find((group) => group.name === stay.group)!;
}

/** A part of a stay that has a bar of its own. */
export interface Piece {
  readonly firstDay: IsoDate;
  readonly lastDay: IsoDate;
  /** What the bar may say, each in lines; the first that fits is taken, else nothing. */
  readonly labels: readonly (readonly string[])[];
}

/**
 * A stay as bars: one, or for pigs one a strip.
 *
 * @param stays all of the place
 */
export function piecesOf(frame: Frame, stay: Stay, stays: readonly Stay[]): readonly Piece[] {
  const group = groupOf(frame.sheet, stay);
  const span = group.kind === "pigs" ? positionSpan(frame.sheet.scenario, frame.sheet.plan, stay) : null;
  const days = group.strip?.days ?? 1;
  if (span && days * frame.dayWidth > textWidth(`${group.letter} ${span.last}`, 7, true) + 1) {
    return Array.from({ length: span.last - span.first + 1 }, (_, i) => {
      const firstDay = addDays(stay.firstDay, i * days);
      const end = addDays(firstDay, days - 1);
      return { firstDay, lastDay: end < stay.lastDay ? end : stay.lastDay, labels: [[`${group.letter} ${span.first + i}`]] };
    });
  }
  const letters = [group.letter, ...stays.filter((other) => runsBeside(frame.sheet, other, stay)).map((other) => groupOf(frame.sheet, other).letter)];
  const joined = letters.join("+");
  const strips = span && span.first < span.last ? [[`${joined} ${span.first}-${span.last}`]] : [];
  return [{ firstDay: stay.firstDay, lastDay: stay.lastDay, labels: [...strips, [joined], letters] }];
}

/** Whether a stay is of a group that runs with the other's. */
export function runsBeside(sheet: Sheet, stay: Stay, host: Stay): boolean {
  return stay !== host && hostOn(groupOf(sheet, stay), stay.firstDay) === host.group && spanHolds(host, stay.firstDay);
}

/** A figure of days rested and the room that it stands in, before its bar. */
export interface RestFigure {
  readonly days: number;
  readonly from: number;
  readonly to: number;
}

export const REST_PT = 6.8;
const LEAST_WIRE = 2.5;

/**
 * Days rested since grazers left; null for outline days, where it would claim too much, where it would stand on something else, and where it
 * stands already for the group that this one runs with.
 */
export function restOf(frame: Frame, stay: Stay, stays: readonly Stay[], shut: readonly ShutSpan[]): RestFigure | null {
  const { sheet, part } = frame;
  const grazed = stays.filter((other) => isGrazer(groupOf(sheet, other).kind) && other.lastDay < stay.firstDay);
  if (!isGrazer(groupOf(sheet, stay).kind) || stay.cell === null || grazed.length === 0 || sureOf(stay.firstDay, sheet.made) === "outline") return null;
  if (!part.days.includes(stay.firstDay) || stays.some((host) => runsBeside(sheet, stay, host))) return null;
  const days = daysBetween(grazed.map((other) => other.lastDay).sort().at(-1)!, stay.firstDay) - 1;
  const to = xOf(frame, stay.firstDay);
  const from = to - textWidth(String(days), REST_PT) - 0.9;
  return from >= frame.left && isFree(frame, stay, stays, shut, from) ? { days, from, to } : null;
}

/** No bar and no cut just before; a wire of ground that is partly shut may be drawn shorter, if something is left of it. */
function isFree(frame: Frame, stay: Stay, stays: readonly Stay[], shut: readonly ShutSpan[], from: number): boolean {
  const reaches = (day: IsoDate): boolean => day < stay.firstDay && xOf(frame, addDays(day, 1)) > from;
  const wired = shut.filter((span) => span.firstDay < stay.firstDay && reaches(span.lastDay));
  const leaves = (span: ShutSpan): boolean => span.openShare > 0 && from - Math.max(frame.left, xOf(frame, span.firstDay)) >= LEAST_WIRE;
  const cut = frame.sheet.plan.cuts.some((one) => one.cell === stay.cell && reaches(one.day));
  return !cut && !stays.some((other) => reaches(other.lastDay)) && wired.every(leaves);
}

/** Farthest day behind the leader that still reads as following. */
const FOLLOWS_WITHIN = 10;

/** From where to where dashes lead from the leader's bar to the follower's; null where nothing is seen of them. */
export function followStretch(frame: Frame, stay: Stay, stays: readonly Stay[]): { readonly from: number; readonly to: number } | null {
  const leader = groupOf(frame.sheet, stay).follows;
  const before = stays.filter((other) => other.group === leader && other.lastDay < stay.firstDay).map((other) => other.lastDay).sort().at(-1);
  if (before === undefined || daysBetween(before, stay.firstDay) > FOLLOWS_WITHIN) return null;
  const from = Math.max(frame.left, xOf(frame, addDays(before, 1)));
  const to = Math.min(frame.right, xOf(frame, stay.firstDay));
  return to - from < 0.5 ? null : { from, to };
}

/** Whether the sheet shows some of these days. */
export function isSeen(frame: Frame, { firstDay, lastDay }: { readonly firstDay: IsoDate; readonly lastDay: IsoDate }): boolean {
  return stretchOf(frame, firstDay, lastDay) !== null;
}
