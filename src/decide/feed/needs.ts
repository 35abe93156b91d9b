import type { Season } from "../../season/season.js";
import { YARD } from "../../season/season.js";
import { yardsByDay } from "../../programme/rules/yard-room.js";

/** What one group needs in one week. */
export interface GroupWeek {
  /** Days on which it may be out, and those on which the owner's dates keep it in the yard. */
  readonly outDays: number;
  readonly keptInDays: number;
  /** Taken on the days out, feet counted, t of dry matter; eaten of that, kg. */
  readonly takenT: number;
  readonly eatenKg: number;
  /** Hay as stored for a day in the yard instead, kg. */
  readonly hayDayKg: number;
  /** Hay as stored fed on the days kept in, kg, and the dry matter eaten then. */
  readonly fixedHayKg: number;
  readonly fixedEatenKg: number;
  /** Money of a day in the yard instead of out: hay, and yard less the moves saved. */
  readonly dayMoney: { readonly hay: number; readonly yard: number };
}

/** By group, then by week. */
export function needsOf(season: Season, weeks: readonly { readonly first: number; readonly days: number }[]): readonly (readonly GroupWeek[])[] {
  const yards = yardsByDay(season);
  return season.groups.map((_, g) => weeks.map((week) => groupWeek(season, g, week, yards[g]!)));
}

function groupWeek(season: Season, g: number, { first, days }: { readonly first: number; readonly days: number }, yards: Int16Array): GroupWeek {
  const group = season.groups[g]!;
  const { prices, yards: all } = season.scenario;
  const own = Array.from({ length: days }, (_, i) => first + i).filter((t) => group.present[t]);
  const out = own.filter((t) => group.out[t] && group.held[t] !== YARD);
  const kept = own.filter((t) => !out.includes(t));
  const sum = (at: readonly number[], of: Float64Array) => at.reduce((total, t) => total + of[t]!, 0);
  const hayDayKg = out.length > 0 ? sum(out, group.hayKg) / out.length : 0;
  const yard = out.length > 0 ? out.reduce((total, t) => total + (all[yards[t]!]?.costPerDay ?? 0), 0) / out.length : 0;
  return {
    outDays: out.length, keptInDays: kept.length,
    takenT: sum(out, group.taken) / 1000, eatenKg: sum(out, group.intake), hayDayKg,
    fixedHayKg: sum(kept, group.hayKg), fixedEatenKg: sum(kept, group.intake),
    dayMoney: { hay: hayDayKg * prices.hayPerKg, yard },
  };
}
