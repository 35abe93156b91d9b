import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { CellSeason } from "./cell-record.js";
import { findingsOf, type Findings, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { positionOf, type SeasonDays } from "./season-days.js";
import { over, plain } from "./words.js";

/** Days of a window of twelve months. */
const TWELVE_MONTHS = 365;

/** Nitrogen dropped on each cell in any twelve months, and on the holding in a calendar year. */
export function checkNitrogenCeiling(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "nitrogen-ceiling", replay.days);
  for (const season of replay.cells) onCell(scenario, replay.days, season, findings);
  onHolding(scenario, replay, findings);
  return findings.judged();
}

function onCell(scenario: Scenario, days: SeasonDays, season: CellSeason, findings: Findings): void {
  const { cell } = season;
  const most = figureOf(scenario, "nitrogen-ceiling", "cell", cell.field, null) ?? Infinity;
  const { kgPerHa, lastDay } = fullestWindow(season, days);
  findings.charge({ group: null, cell, first: Math.max(0, lastDay - TWELVE_MONTHS + 1), last: lastDay }, {
    money: cell.areaHa * Math.max(0, kgPerHa - most) * (figureOf(scenario, "nitrogen-ceiling", "price", cell.field, null) ?? 0),
    found: `${plain(over(kgPerHa, 10))} kg N/ha in twelve months, ${plain(most)} at most`, allowed: `at most ${plain(most)} kg N/ha in twelve months`,
  });
}

/** The twelve months, ending in the season, in which most was laid down; what lay before the season counts. */
function fullestWindow({ cell, nitrogenKg }: CellSeason, days: SeasonDays): { kgPerHa: number; lastDay: number } {
  const before = TWELVE_MONTHS - 1;
  const daily = new Float64Array(before + days.count);
  nitrogenKg.forEach((kg, t) => (daily[before + t] = kg / cell.areaHa));
  for (const { day, kgPerHa } of cell.pastNitrogen) {
    const at = before + positionOf(days, day);
    if (at >= 0 && at < daily.length) daily[at]! += kgPerHa;
  }
  const upTo = new Float64Array(daily.length + 1);
  daily.forEach((kg, i) => (upTo[i + 1] = upTo[i]! + kg));
  let fullest = { kgPerHa: 0, lastDay: 0 };
  for (let t = 0; t < days.count; t++) {
    const kgPerHa = upTo[before + t + 1]! - upTo[t]!;
    if (kgPerHa > fullest.kgPerHa) fullest = { kgPerHa, lastDay: t };
  }
  return fullest;
}

function onHolding(scenario: Scenario, { days, cells }: Replay, findings: Findings): void {
  const figure = (key: string) => figureOf(scenario, "nitrogen-ceiling", key, null, null);
  const most = figure("holding") ?? Infinity;
  const area = cells.reduce((sum, { cell }) => sum + cell.areaHa, 0);
  for (const year of new Set(days.years)) {
    const first = days.years.indexOf(year);
    const last = days.years.lastIndexOf(year);
    let kg = 0;
    for (const { nitrogenKg } of cells) for (let t = first; t <= last; t++) kg += nitrogenKg[t]!;
    findings.charge({ group: null, cell: null, first, last }, {
      money: Math.max(0, kg - most * area) * (figure("holding-price") ?? 0),
      found: `${plain(over(kg / area, 10))} kg N/ha on the holding in ${year}, ${plain(most)} at most`,
      allowed: `at most ${plain(most)} kg N/ha on the holding`,
    });
  }
}
