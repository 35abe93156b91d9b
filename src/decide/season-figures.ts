import { kitByDay } from "../check/fence-kit.js";
import { movesByDay } from "../check/measures.js";
import { replayPlan } from "../check/replay.js";
import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { addDays, type IsoDate } from "../quantity/calendar.js";

/** What a season comes to, in the order it is told; every figure can be taken from another season's. */
export const FIGURES = [
  "cost", "hay-fed-kg", "hay-days", "hay-made-kg", "hay-to-buy-kg", "moves", "hauls", "moves-a-week", "moves-worst-week", "minutes-a-week", "minutes-worst-week",
  "rests-short", "rests-short-cost", "nitrogen-highest-kg-per-ha", "cells-over-nitrogen", "nitrogen-in-yard-kg", "birds-ground-ha", "pigs-ground-ha",
  "crowded-day-share", "nets-most", "reels-most", "energisers-most",
] as const;
export type FigureKey = (typeof FIGURES)[number];

/** A week or day of the season, by its first day. */
export type Days = IsoDate;

/** A season in figures, all from the check's report of its plan. */
export interface SeasonFigures {
  readonly figures: Readonly<Record<FigureKey, number>>;
  /** Where and when the extremes fall; null where there is none. */
  readonly movesWorstWeek: Days;
  readonly minutesWorstWeek: Days;
  readonly nitrogenHighestCell: string | null;
  readonly cellsOverNitrogen: readonly string[];
  readonly crowdedDay: { readonly day: Days; readonly minutes: number; readonly atHome: number } | null;
  readonly kitDays: { readonly nets: Days | null; readonly reels: Days | null; readonly energisers: Days | null };
}

const WEEK = 7;

/** What a plan comes to: kg, ha, minutes and money of the season, with the days and cells of its extremes. */
export function seasonFigures(scenario: Scenario, plan: Plan, report: Report): SeasonFigures {
  const replay = replayPlan(scenario, plan);
  const { measures, firstDay } = report;
  const dayOf = (t: number): IsoDate => addDays(firstDay, t);
  const moves = weeksOf(movesByDay(replay), dayOf);
  const minutes = weeksOf(measures.minutesByDay, dayOf);
  const rests = report.charges.filter(({ rule, money }) => rule === "rest-period" && money > 0);
  const over = cellsOverNitrogen(scenario, report);
  const highest = most(Object.entries(measures.nitrogenByCell), ([, kg]) => kg);
  const crowded = crowdedDay(report, dayOf);
  const kit = kitByDay(scenario, replay);
  const [nets, reels, energisers] = (["nets", "reels", "energisers"] as const).map((piece) => mostKit(kit.map((used) => used[piece]), dayOf)) as [MostKit, MostKit, MostKit];
  return {
    figures: {
      cost: report.cost,
      "hay-fed-kg": measures.hayFedKg,
      "hay-days": Object.values(measures.yardDays).reduce((sum, days) => sum + days, 0),
      "hay-made-kg": measures.hayMadeKg,
      "hay-to-buy-kg": hayToBuyKg(scenario, report),
      moves: measures.moves, hauls: measures.hauls,
      "moves-a-week": moves.mean, "moves-worst-week": moves.worst.sum,
      "minutes-a-week": minutes.mean, "minutes-worst-week": minutes.worst.sum,
      "rests-short": rests.length, "rests-short-cost": rests.reduce((sum, { money }) => sum + money, 0),
      "nitrogen-highest-kg-per-ha": highest?.[1] ?? 0,
      "cells-over-nitrogen": over.length,
      "nitrogen-in-yard-kg": measures.nitrogenInYardKg,
      "birds-ground-ha": report.cells.reduce((sum, { workedHa }) => sum + workedHa, 0),
      "pigs-ground-ha": report.cells.reduce((sum, { openedHa }) => sum + openedHa, 0),
      "crowded-day-share": crowded === null ? 0 : crowded.minutes / crowded.atHome,
      "nets-most": nets.most, "reels-most": reels.most, "energisers-most": energisers.most,
    },
    movesWorstWeek: moves.worst.firstDay,
    minutesWorstWeek: minutes.worst.firstDay,
    nitrogenHighestCell: highest && highest[1] > 0 ? highest[0] : null,
    cellsOverNitrogen: over,
    crowdedDay: crowded,
    kitDays: { nets: nets.day, reels: reels.day, energisers: energisers.day },
  };
}

/** Cells on which the check finds more nitrogen than their ceiling, whether that is at a price or never. */
function cellsOverNitrogen({ cells }: Scenario, { charges, breaches }: Report): readonly string[] {
  const over = [...charges.filter(({ money }) => money > 0), ...breaches].filter(({ rule }) => rule === "nitrogen-ceiling").map(({ cell }) => cell);
  return cells.map(({ name }) => name).filter((name) => over.includes(name));
}

/** Hay that is not there: what summer feeds and winter needs, less the store and what is made. */
function hayToBuyKg({ hay }: Scenario, { measures }: Report): number {
  return Math.max(0, hay.winterNeedKg + measures.hayFedKg - hay.inStoreKg - measures.hayMadeKg);
}

/** The mean of seven days over the season, and the fullest of its weeks, counted from the season's first day. */
function weeksOf(byDay: readonly number[], dayOf: (t: number) => IsoDate): { readonly mean: number; readonly worst: { readonly sum: number; readonly firstDay: IsoDate } } {
  const total = byDay.reduce((sum, one) => sum + one, 0);
  const weeks = Array.from({ length: Math.ceil(byDay.length / WEEK) }, (_, w) => ({
    firstDay: dayOf(w * WEEK), sum: byDay.slice(w * WEEK, (w + 1) * WEEK).reduce((sum, one) => sum + one, 0),
  }));
  return { mean: (total * WEEK) / byDay.length, worst: most(weeks, ({ sum }) => sum)! };
}

/** The day on which least of the minutes at home is left, by share. */
function crowdedDay({ measures }: Report, dayOf: (t: number) => IsoDate): SeasonFigures["crowdedDay"] {
  const days = measures.minutesByDay.map((minutes, t) => ({ day: dayOf(t), minutes, atHome: measures.minutesAtHomeByDay[t]! }));
  return most(days.filter(({ atHome }) => atHome > 0), ({ minutes, atHome }) => minutes / atHome);
}

interface MostKit {
  readonly most: number;
  readonly day: IsoDate | null;
}

function mostKit(byDay: readonly number[], dayOf: (t: number) => IsoDate): MostKit {
  const used = Math.max(0, ...byDay);
  return { most: used, day: used > 0 ? dayOf(byDay.indexOf(used)) : null };
}

/** The first of those with the highest figure; null of none. */
function most<T>(things: readonly T[], figure: (thing: T) => number): T | null {
  return things.reduce<T | null>((best, thing) => (best === null || figure(thing) > figure(best) ? thing : best), null);
}
