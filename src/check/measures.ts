import type { Scenario } from "../farm/scenario.js";
import { openedHa, workedHa } from "./ground-done.js";
import { hayFedKg } from "./hay-fed.js";
import { hayMadeKgOf } from "./hay-stock.js";
import { isYard, NOWHERE } from "./placing.js";
import type { Replay } from "./replay.js";
import type { CellDays, Measures } from "./report.js";
import { positionOf } from "./season-days.js";

/** What a plan comes to, in the units an owner counts in. */
export function measuresOf(scenario: Scenario, replay: Replay): Measures {
  const { cells, groups, labour } = replay;
  const later = labour.moves.filter((move) => move.day > 0);
  const nitrogenKg = cells.reduce((sum, cell) => sum + sumOf(cell.nitrogenKg), 0);
  const area = cells.reduce((sum, { cell }) => sum + cell.areaHa, 0);
  return {
    hayFedKg: hayFedKg(scenario, groups),
    hayMadeKg: hayMadeKgOf(replay),
    moves: movesByDay(replay).reduce((sum, moves) => sum + moves, 0),
    hauls: later.filter((move) => move.hauled && move.from !== NOWHERE).length,
    minutesByDay: [...labour.minutes],
    minutesAtHomeByDay: [...labour.minutesAtHome],
    yardDays: Object.fromEntries(groups.map(({ group, places }) => [group.name, places.filter(isYard).length])),
    nitrogenByCell: Object.fromEntries(cells.map(({ cell, nitrogenKg: kg }) => [cell.name, sumOf(kg) / cell.areaHa])),
    nitrogenInYardKg: groups.reduce((sum, { places, alone }) => sum + alone.nitrogenKg.reduce((s, kg, t) => s + (isYard(places[t]!) ? kg : 0), 0), 0),
    nitrogenOnHoldingKgPerHa: nitrogenKg / area,
  };
}

/** Places that groups go to on their own feet, by season day, as the wall grid counts them: where one stands on the first day is none. */
export function movesByDay({ groups, days }: Pick<Replay, "groups" | "days">): number[] {
  const moves = Array<number>(days.count).fill(0);
  for (const { group, hosts, places } of groups) {
    const arrivals = group.here.map((span) => positionOf(days, span.firstDay));
    places.forEach((place, t) => {
      if (t > 0 && place !== NOWHERE && hosts[t]! < 0 && (arrivals.includes(t) || place !== places[t - 1])) moves[t]!++;
    });
  }
  return moves;
}

export function cellDaysOf(scenario: Scenario, { cells }: Replay): CellDays[] {
  return cells.map((season) => ({
    cell: season.cell.name, coverKgPerHa: season.cover, openHa: season.open, balance: season.balance,
    nitrogenKgPerHa: sumOf(season.nitrogenKg) / season.cell.areaHa,
    workedHa: workedHa(scenario, season), openedHa: openedHa(scenario, season),
  }));
}

function sumOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}
