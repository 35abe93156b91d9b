import type { Cell } from "../farm/scenario.js";
import { dayNumber, isoDate, monthOf } from "../quantity/calendar.js";
import { growthRate, grownCover } from "../science/growth.js";
import type { Balance, CellInput, CellSeason, Ground, Log } from "./cell-record.js";
import { graze, growing, joinLots, massOf, mow } from "./ground.js";
import { grazes } from "./parties.js";
import { rangeIn, type SeasonDays } from "./season-days.js";
import type { CellStay } from "./stays.js";
import { takeStrip } from "./strips.js";

/**
 * Cover on the morning of the season's first day: a cover known earlier has grown since; one that is known only
 * from a later day on stands still until then.
 */
function firstCover({ coverKgPerHa, coverDate, growthByMonth }: Cell, ceiling: number, days: SeasonDays): number {
  let rate = 0;
  for (let n = dayNumber(coverDate); n < days.start; n++) rate += growthRate(growthByMonth[monthOf(isoDate(n))]!, ceiling);
  return rate === 0 ? coverKgPerHa : grownCover(coverKgPerHa, rate, ceiling);
}

/** Replays one cell: morning, strips, grazers, growth, evening. */
export function cellSeason(input: CellInput): CellSeason {
  const { scenario, days, cell, stays, occupants, parties } = input;
  const ground: Ground = { cover: firstCover(cell, scenario.ceilingCover, days), open: cell.areaHa, lots: [], opens: 0, shut: 0 };
  const balance: Balance = { start: ground.cover * cell.areaHa, grown: 0, eaten: 0, trodden: 0, cut: 0, end: 0 };
  const log: Log = { lots: [], grazed: [], cuts: [], balance };
  const cover: number[] = [];
  const open: number[] = [];
  const shut = new Uint8Array(days.count);
  const nitrogenKg = new Float64Array(days.count);
  const grow = growing(input);
  const held = staysByDay(stays, occupants);
  for (let t = 0; t < days.count; t++) {
    if (ground.lots.length > 0 && t >= ground.opens) joinLots(ground, cell);
    cover.push(ground.cover);
    open.push(ground.open);
    const stay = held[t];
    if (stay) {
      nitrogenKg[t] = parties[stay.group]!.nitrogenKg[t]!;
      if (grazes(scenario.groups[stay.group]!)) graze(input, ground, stay.group, t, log);
      else takeStrip(input, ground, stay, t, log);
    }
    shut[t] = ground.lots.length > 0 ? ground.shut : 0;
    balance.grown += grow(ground, t);
    mow(input, ground, t, log);
  }
  cover.push(ground.cover);
  open.push(ground.open);
  balance.end = ground.cover * ground.open + massOf(ground.lots);
  return { cell, stays, cover, open, shut, ...openDays(input), ...log, nitrogenKg };
}

function openDays({ days, cell }: CellInput): { inHand: Uint8Array; closed: Uint8Array } {
  const inHand = new Uint8Array(days.count);
  const ours = rangeIn(days, cell.ours);
  if (ours) inHand.fill(1, ours.first, ours.last + 1);
  const closed = new Uint8Array(days.count);
  for (const closure of cell.closed) {
    const range = rangeIn(days, closure);
    if (range) closed.fill(1, range.first, range.last + 1);
  }
  return { inHand, closed };
}

function staysByDay(stays: readonly CellStay[], occupants: Int16Array): (CellStay | undefined)[] {
  const held: (CellStay | undefined)[] = [];
  for (const stay of stays) for (let t = stay.first; t <= stay.last; t++) if (occupants[t] === stay.group) held[t] = stay;
  return held;
}
