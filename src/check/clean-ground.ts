import { figureOf, isBird, type Kind, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { CellSeason } from "./cell-record.js";
import { lastUseBefore, pastUses, restBetween } from "./earlier.js";
import { findingsOf, stayWhere, type Findings, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import type { CellStay } from "./stays.js";
import { daysText } from "./words.js";

const YOUNG_PIGS = /\b(weaner|grower)s?\b/i;
/** Pigs on this much of a cell count as pigs on the cell. */
const PIGS_SHARE = 0.5;

/** Intervals between kinds on the same ground, reaching back before the season, and no hay after birds. */
export function checkCleanGround(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "clean-ground", replay.days);
  for (const stay of replay.stays) {
    const { kind, animalClass } = scenario.groups[stay.group]!;
    if (kind === "turkeys") afterChickens(scenario, replay, stay, findings);
    if (isWormHost(kind)) afterWorms(scenario, replay, stay, findings);
    if (kind === "pigs" && YOUNG_PIGS.test(animalClass)) afterLastYearsPigs(scenario, replay, stay, findings);
  }
  for (const cell of replay.cells) hayAfterBirds(scenario, replay, cell, findings);
  return findings.judged();
}

/** Sheep and goats are one kind to worms. */
function isWormHost(kind: Kind): boolean {
  return kind === "sheep" || kind === "goats";
}

function figureFor(scenario: Scenario, stay: CellStay, key: string): number {
  return figureOf(scenario, "clean-ground", key, scenario.cells[stay.cell]!.field, scenario.groups[stay.group]!.name) ?? 0;
}

function restSince(scenario: Scenario, replay: Replay, stay: CellStay, kinds: (kind: Kind) => boolean): number {
  const last = lastUseBefore(scenario, replay.days, replay.cells[stay.cell]!, stay.first, kinds);
  return last === null ? Infinity : restBetween(last, stay.first);
}

function afterChickens(scenario: Scenario, replay: Replay, stay: CellStay, findings: Findings): void {
  for (const [chickens, name] of [["layers", "laying hens"], ["broilers", "table chickens"]] as const) {
    const rest = restSince(scenario, replay, stay, (kind) => kind === chickens);
    const least = figureFor(scenario, stay, `turkeys after ${chickens}`);
    if (rest >= least) continue;
    findings.breach(stayWhere(scenario, stay), { found: `${daysText(rest)} after ${name}`, allowed: `at least ${daysText(least)} after ${name}` });
  }
}

function afterWorms(scenario: Scenario, replay: Replay, stay: CellStay, findings: Findings): void {
  const rest = restSince(scenario, replay, stay, isWormHost);
  const clean = figureFor(scenario, stay, "worms");
  if (rest >= clean) return;
  findings.charge(stayWhere(scenario, stay), {
    money: (clean - rest) * figureFor(scenario, stay, "worms-price"),
    found: `${daysText(rest)} after sheep or goats, ${daysText(clean)} clean of worms`, allowed: `at least ${daysText(clean)} after sheep or goats`,
  });
}

function afterLastYearsPigs(scenario: Scenario, replay: Replay, stay: CellStay, findings: Findings): void {
  if (figureFor(scenario, stay, "young-pigs-next-year") !== 1) return;
  const year = replay.days.years[stay.first]! - 1;
  const used = pastUses(replay.cells[stay.cell]!, (kind) => kind === "pigs")
    .filter((use) => use.share >= PIGS_SHARE && Number(use.lastDay.slice(0, 4)) === year);
  if (used.length === 0) return;
  findings.breach(stayWhere(scenario, stay), { found: `young pigs where pigs stood in ${year}`, allowed: "no young pigs in the year after pigs" });
}

function hayAfterBirds(scenario: Scenario, replay: Replay, cell: CellSeason, findings: Findings): void {
  if (figureOf(scenario, "clean-ground", "hay-after-birds", cell.cell.field, null) !== 1) return;
  const { dates, years } = replay.days;
  for (const { cut, day } of cell.cuts) {
    if (cut !== "hay") continue;
    const year = years[day]!;
    const inPlan = cell.stays.some((stay) => isBird(scenario.groups[stay.group]!.kind) && stay.first <= day && years[Math.min(stay.last, day)] === year);
    const before = pastUses(cell, isBird).some(({ lastDay }) => lastDay <= dates[day]! && Number(lastDay.slice(0, 4)) === year);
    if (!inPlan && !before) continue;
    findings.breach(
      { group: null, cell: cell.cell, first: day, last: day },
      { found: "hay from ground that birds used this year", allowed: "no hay after birds in the same year" },
    );
  }
}
