import { checkPlan } from "../../check/check-plan.js";
import type { Report } from "../../check/report.js";
import { isGrazer, type Scenario } from "../../farm/scenario.js";
import { planOf } from "../../programme/plan-of.js";
import { daysBetween } from "../../quantity/calendar.js";
import type { RuleId } from "../../rules/rule.js";
import { YARD, type Season } from "../../season/season.js";
import { WHY, type Lived, type WalkedPlan } from "./walk.js";
import { WEEK, type Year } from "./year.js";

export const KINDS = ["dry", "usual", "wet"] as const;
export type YearKind = (typeof KINDS)[number];

/** What made a plan fail: the ground or the work as the year had them, a move made late, the week with nobody. */
export const CAUSES = ["grass", "late", "away"] as const;
export type Cause = (typeof CAUSES)[number];

/** The first day on which a plan failed in a year. */
export interface Failure {
  readonly day: number;
  readonly cause: Cause;
  /** The rule that broke, or for grazers in the yard the rule that kept them out of the ground of the plan; null where none did. */
  readonly rule: RuleId | null;
  readonly group: string | null;
  readonly cell: string | null;
  readonly found: string;
  readonly allowed: string;
  /** True where grazers stood in the yard beyond the plan, false where a rule broke. */
  readonly inYard: boolean;
}

export interface LivedYear {
  readonly kind: YearKind;
  /** What the ground would grow beside the usual year, over the season. */
  readonly growth: number;
  readonly hayFedKg: number;
  readonly hayMadeKg: number;
  /** Hay fed up to the end of each week of the season, kg. */
  readonly hayByWeek: readonly number[];
  readonly yardDays: Readonly<Record<string, number>>;
  readonly failure: Failure | null;
}

/** What a year came to, in the words of the check. */
export function livedYear(walked: WalkedPlan, farm: Scenario, lived: Lived, year: Year): LivedYear {
  const { season } = walked;
  const report = checkPlan(farm, planOf(season, lived));
  const growth = growthBeside(season.scenario, farm, season);
  return {
    kind: kindOf(season.scenario, growth),
    growth,
    hayFedKg: report.measures.hayFedKg,
    hayMadeKg: report.measures.hayMadeKg,
    hayByWeek: hayByWeek(season, lived.place),
    yardDays: report.measures.yardDays,
    failure: firstFailure(walked, farm, lived, report, year),
  };
}

/** Growth of the season's days on the whole farm beside the usual; 1 where nothing grows anyhow. */
function growthBeside(usual: Scenario, farm: Scenario, season: Season): number {
  const grown = ({ cells }: Scenario): number =>
    cells.reduce((sum, cell) => sum + cell.areaHa * season.month.reduce((kg, m) => kg + cell.growthByMonth[m], 0), 0);
  const all = grown(usual);
  return all > 0 ? grown(farm) / all : 1;
}

/** Dry and wet years are those more than half the way to what the farm file calls dry and wet. */
function kindOf({ weather: { dry, wet } }: Scenario, growth: number): YearKind {
  if (growth < (1 + dry) / 2) return "dry";
  return growth > (1 + wet) / 2 ? "wet" : "usual";
}

function hayByWeek(season: Season, place: Lived["place"]): readonly number[] {
  const weeks = Array<number>(Math.ceil(season.days / 7)).fill(0);
  season.groups.forEach(({ hayKg }, g) => place[g].forEach((at, t) => (weeks[Math.floor(t / 7)] += at === YARD ? hayKg[t] : 0)));
  let sum = 0;
  return weeks.map((kg) => (sum += kg));
}

function firstFailure(walked: WalkedPlan, farm: Scenario, lived: Lived, report: Report, year: Year): Failure | null {
  const { firstDay } = report;
  const [breach] = report.breaches;
  const broke = breach ? daysBetween(firstDay, breach.firstDay) : Infinity;
  const shut = firstInYard(walked, lived);
  if (shut && shut.day <= broke) return inYard(walked, farm, lived, shut, report);
  if (!breach) return null;
  const { rule, group, cell, found, allowed } = breach;
  return { day: broke, cause: causeOf(walked, lived, broke, group, year), rule, group, cell, found, allowed, inYard: false };
}

/** The first grazers in a yard where the plan has them out. */
function firstInYard({ season, plan }: WalkedPlan, { place }: Lived): { day: number; group: number } | null {
  let first: { day: number; group: number } | null = null;
  season.scenario.groups.forEach((group, g) => {
    if (!isGrazer(group.kind)) return;
    const day = place[g].findIndex((at, t) => at === YARD && plan.place[g][t] >= 0);
    if (day >= 0 && (first === null || day < first.day)) first = { day, group: g };
  });
  return first;
}

/** Which rule kept grazers in: what the check says of them where the plan has them that day. */
function inYard({ season, plan }: WalkedPlan, farm: Scenario, lived: Lived, { day, group }: { day: number; group: number }, report: Report): Failure {
  const { name } = season.groups[group];
  const why = WHY[lived.why[group][day]];
  const cell = season.cells[plan.place[group][day]].name;
  const failure = { day, cause: why === "late" || why === "away" ? why : "grass", rule: null, group: name, cell, found: "", allowed: "", inYard: true } as const;
  if (failure.cause !== "grass") return failure;
  const place = lived.place.map((days) => days.slice());
  place[group][day] = plan.place[group][day];
  const known = new Set(report.breaches.map(keyOf));
  const own = checkPlan(farm, planOf(season, { place, cuts: lived.cuts })).breaches.filter((breach) => !known.has(keyOf(breach)));
  const kept = own.find((breach) => breach.cell === cell) ?? own[0];
  return kept ? { ...failure, rule: kept.rule, cell: kept.cell ?? cell, found: kept.found, allowed: kept.allowed } : failure;
}

function keyOf({ rule, group, cell, firstDay }: Report["breaches"][number]): string {
  return JSON.stringify([rule, group, cell, firstDay]);
}

/** A broken rule is put down to a late move or the week away where the group in it was held back on that day, else to the year. */
function causeOf({ season }: WalkedPlan, { why }: Lived, day: number, group: string | null, { away }: Year): Cause {
  const held = season.groups.flatMap((one, g) => (group === null || one.name === group ? [WHY[why[g][day]]] : []));
  if (held.includes("late")) return "late";
  return away !== null && day >= away && day < away + WEEK && held.includes("away") ? "away" : "grass";
}
