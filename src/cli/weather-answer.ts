import type { ByCause, Often, Weak, WeatherSummary } from "../decide/weather/weather-summary.js";
import type { YearsLived } from "../decide/weather/weather-years.js";
import type { FigureFlips } from "../decide/weather/what-flips.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { addDays } from "../quantity/calendar.js";
import type { WeatherAnswer } from "./weather-shape.js";

/** Everything that the words and the object about a plan's years are made from. */
export interface WeatherSeen {
  readonly scenario: Scenario;
  readonly given: { readonly years: number; readonly seed: number; readonly figures: boolean };
  readonly lived: YearsLived;
  readonly summary: WeatherSummary;
  /** Null unless asked for, and where it was stopped before it was done. */
  readonly figures: readonly FigureFlips[] | null;
  /** Rules that the plan breaks as it stands. */
  readonly broken: number;
  readonly files: readonly string[];
  readonly notes: readonly Finding[];
}

/** A plan's years as one object; kilograms and money to hundredths, shares to ten-thousandths. */
export function weatherAnswer({ scenario, given, lived, summary, figures, broken, files, notes }: WeatherSeen): WeatherAnswer {
  const { firstDay } = scenario.season;
  const day = (t: number): string => addDays(firstDay, t);
  const week = (w: number): string => day(7 * w);
  const weakOf = ({ rule, cell, years, example }: Weak) => ({
    rule, cell, years,
    example: { day: day(example.day), group: example.group, cell: example.cell, found: example.found, allowed: example.allowed, inYard: example.inYard },
  });
  const causeOf = ({ failed, middleWeek, weak, weakRules }: ByCause) => ({
    failed: oftenOf(failed), halfFailedBy: middleWeek === null ? null : week(middleWeek), weakest: weak.map(weakOf), rules: weakRules.map(weakOf),
  });
  return {
    farm: scenario.farm,
    season: scenario.season,
    seed: given.seed,
    yearsAsked: given.years,
    years: summary.years,
    usualYear: { hayFedKg: hundredths(lived.usual.hayFedKg), yardDays: lived.usual.yardDays },
    breaksAsItStands: broken,
    failed: oftenOf(summary.failed),
    badness: [...summary.badness],
    halfHaveDaysAmiss: summary.middleDaysAmiss,
    halfFailedBy: summary.middleWeek === null ? null : week(summary.middleWeek),
    firstFailures: summary.byWeek.map((years, w) => ({ week: week(w), years })),
    causes: { grass: causeOf(summary.byCause.grass), late: causeOf(summary.byCause.late), away: causeOf(summary.byCause.away) },
    hay: summary.hay.map(({ share, amount, low, high }) => ({ share, kg: hundredths(amount), low: hundredths(low), high: high === null ? null : hundredths(high) })),
    hayByWeek: summary.byWeek.map((_, w) => ({ week: week(w), kg: summary.hayByWeek.map(({ kg }) => hundredths(kg[w])) })),
    winterKept: oftenOf(summary.winterKept),
    kinds: summary.kinds.map((kind) => ({ ...kind, hayFedKg: kind.hayFedKg === null ? null : hundredths(kind.hayFedKg) })),
    figures: figures && figures.map(({ key, assumed, flips }) => ({
      figure: key, assumed,
      flips: flips.map(({ turn, planned, costMore, hayMoreKg, movesMore, daysElsewhere, days, keptCostsMore }) => ({
        turn, planFound: planned, costMore: hundredths(costMore), hayMoreKg: hundredths(hayMoreKg), movesMore, daysElsewhere, days,
        keptCostsMore: keptCostsMore === null ? null : hundredths(keptCostsMore),
      })),
    })),
    files: [...files],
    notes: [...notes],
  };
}

function oftenOf({ years, share, low, high }: Often): Often {
  const rounded = (one: number): number => Math.round(one * 10_000) / 10_000;
  return { years, share: rounded(share), low: rounded(low), high: rounded(high) };
}

function hundredths(figure: number): number {
  return Math.round(figure * 100) / 100;
}
