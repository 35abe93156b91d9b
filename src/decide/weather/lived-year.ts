import { checkPlan } from "../../check/check-plan.js";
import type { Report } from "../../check/report.js";
import { isGrazer, type Scenario } from "../../farm/scenario.js";
import { planOf } from "../../programme/plan-of.js";
import { daysBetween } from "../../quantity/calendar.js";
import type { Breach, RuleId } from "../../rules/rule.js";
import { YARD, type Season } from "../../season/season.js";
import { WHY, type Lived, type WalkedPlan } from "./walk.js";

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
  /** The first failure by each cause, and the first of all. */
  readonly failures: Readonly<Record<Cause, Failure | null>>;
  readonly failure: Failure | null;
  /** Days on which a rule that is never broken breaks, or grazers stand in a yard where the plan has them out. */
  readonly daysAmiss: number;
}

/** What a year came to, in the words of the check. */
export function livedYear(walked: WalkedPlan, farm: Scenario, lived: Lived): LivedYear {
  const { season } = walked;
  const report = checkPlan(farm, planOf(season, lived));
  const failures = failuresOf(walked, farm, lived, report);
  const growth = growthBeside(season.scenario, farm, season);
  return {
    kind: kindOf(season.scenario, growth),
    growth,
    hayFedKg: report.measures.hayFedKg,
    hayMadeKg: report.measures.hayMadeKg,
    hayByWeek: hayByWeek(season, lived.place),
    yardDays: report.measures.yardDays,
    failures,
    failure: CAUSES.map((cause) => failures[cause]).reduce((first, one) => (one && (!first || one.day < first.day) ? one : first)),
    daysAmiss: daysAmiss(walked, lived, report),
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

/** The first failure by each cause. */
function failuresOf(walked: WalkedPlan, farm: Scenario, lived: Lived, report: Report): LivedYear["failures"] {
  const broken = report.breaches.map((breach) => brokenRule(walked, lived, report, breach)).sort((a, b) => a.day - b.day);
  const shut = daysInYard(walked, lived);
  const first = (cause: Cause): Failure | null => {
    const broke = broken.find((one) => one.cause === cause);
    const yard = shut.find((one) => one.cause === cause);
    return yard && yard.day <= (broke?.day ?? Infinity) ? inYard(walked, farm, lived, yard, report) : (broke ?? null);
  };
  return { grass: first("grass"), late: first("late"), away: first("away") };
}

function brokenRule(walked: WalkedPlan, lived: Lived, { firstDay }: Report, breach: Breach): Failure {
  const { rule, group, cell, found, allowed } = breach;
  const [first, last] = [daysBetween(firstDay, breach.firstDay), daysBetween(firstDay, breach.lastDay)];
  return { ...heldBack(walked, lived, first, last, group), rule, group, cell, found, allowed, inYard: false };
}

/**
 * A broken rule is put down to a late move or the week away where the group in it was held back on one of its days, else
 * to the year; its day is the first on which the group stands where the plan has it not, or the first of all.
 */
function heldBack({ season }: WalkedPlan, { why }: Lived, first: number, last: number, group: string | null): Pick<Failure, "day" | "cause"> {
  const own = why.filter((_, g) => group === null || season.groups[g].name === group);
  const days = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  const dayOf = (reason: (typeof WHY)[number]): number | undefined => days.find((day) => own.some((of) => WHY[of[day]] === reason));
  const [late, away] = [dayOf("late"), dayOf("away")];
  if (late !== undefined) return { day: late, cause: "late" };
  if (away !== undefined) return { day: away, cause: "away" };
  return { day: dayOf("ground") ?? first, cause: "grass" };
}

function daysAmiss(walked: WalkedPlan, lived: Lived, { firstDay, breaches }: Report): number {
  const amiss = new Set(daysInYard(walked, lived).map(({ day }) => day));
  for (const breach of breaches) {
    const last = daysBetween(firstDay, breach.lastDay);
    for (let day = daysBetween(firstDay, breach.firstDay); day <= last; day++) amiss.add(day);
  }
  return amiss.size;
}

interface InYard {
  readonly day: number;
  readonly group: number;
  readonly cause: Cause;
}

/** Days on which grazers stand in a yard where the plan has them out, in order. */
function daysInYard({ season, plan }: WalkedPlan, { place, why }: Lived): readonly InYard[] {
  const days: InYard[] = [];
  season.scenario.groups.forEach((group, g) => {
    if (!isGrazer(group.kind)) return;
    place[g].forEach((at, day) => {
      if (at !== YARD || plan.place[g][day] < 0) return;
      const own = WHY[why[g][day]];
      days.push({ day, group: g, cause: own === "late" || own === "away" ? own : "grass" });
    });
  });
  return days.sort((a, b) => a.day - b.day);
}

/** Which rule kept grazers in: what the check says of them where the plan has them that day. */
function inYard({ season, plan }: WalkedPlan, farm: Scenario, lived: Lived, { day, group, cause }: InYard, report: Report): Failure {
  const { name } = season.groups[group];
  const cell = season.cells[plan.place[group][day]].name;
  const failure = { day, cause, rule: null, group: name, cell, found: "", allowed: "", inYard: true } as const;
  if (cause !== "grass") return failure;
  const place = lived.place.map((days) => days.slice());
  place[group][day] = plan.place[group][day];
  const known = new Set(report.breaches.map(keyOf));
  const own = checkPlan(farm, planOf(season, { place, cuts: lived.cuts })).breaches.filter((breach) => !known.has(keyOf(breach)));
  // Where nothing more would break, what breaks that day anyhow left no room, such as minutes.
  const kept = own.find((breach) => breach.cell === cell) ?? own[0] ?? report.breaches.find(({ firstDay }) => daysBetween(report.firstDay, firstDay) === day);
  return kept ? { ...failure, rule: kept.rule, cell: kept.cell ?? cell, found: kept.found, allowed: kept.allowed } : failure;
}

function keyOf({ rule, group, cell, firstDay }: Breach): string {
  return JSON.stringify([rule, group, cell, firstDay]);
}
