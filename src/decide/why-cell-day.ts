import { checkPlan } from "../check/check-plan.js";
import type { Report } from "../check/report.js";
import { isGrazer, type Cell, type Scenario } from "../farm/scenario.js";
import type { Plan, Stay } from "../plan/plan.js";
import { addDays, daysBetween, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import { hostOf, withStay } from "./why-forced.js";

/** Days of a cell on which nobody may stand there, and why. */
export interface Shut extends Span {
  readonly reason: string;
  /** First open day after it, or null where there is none in the season. */
  readonly opensOn: IsoDate | null;
}

/** How a cell is on the morning of a day, and what the plan does with it. */
export interface CellDay {
  readonly cell: string;
  readonly day: IsoDate;
  /** The stay that holds the day, or null; of groups that run together the one whose place it is. */
  readonly stay: Stay | null;
  readonly coverKgPerHa: number;
  /** Share of the cell that is open, 0 to 1: the rest is shut behind birds or pigs. */
  readonly openShare: number;
  readonly shut: Shut | null;
  /** The latest grazing before the day, by a group of the plan or by a kind before the season, and full days since. */
  readonly grazed: { readonly by: string; readonly lastDay: IsoDate; readonly restDays: number } | null;
  /** The next stay there after the day. */
  readonly next: Stay | null;
  /** By group on the farm: the first day on which it could stand there with nobody else moved; null where there is none within some weeks. */
  readonly free: readonly { readonly group: string; readonly day: IsoDate | null }[];
}

/** Days ahead that are tried for a group to stand in a cell. */
export const DAYS_AHEAD = 42;

/** A cell on a day, as the plan has it. */
export function cellDay(scenario: Scenario, plan: Plan, report: Report, name: string, day: IsoDate): CellDay {
  const cell = scenario.cells.find((one) => one.name === name)!;
  const t = daysBetween(scenario.season.firstDay, day);
  const seen = report.cells.find((one) => one.cell === name)!;
  const stays = plan.stays.filter((stay) => stay.cell === name && hostOf(scenario, stay.group, stay.firstDay) === stay.group);
  return {
    cell: name, day, coverKgPerHa: seen.coverKgPerHa[t]!, openShare: seen.openHa[t]! / cell.areaHa,
    stay: stays.find((stay) => spanHolds(stay, day)) ?? null,
    shut: shutOn(scenario, cell, day),
    grazed: grazedBefore(scenario, cell, stays, day),
    next: stays.filter((stay) => stay.firstDay > day).sort((a, b) => a.firstDay.localeCompare(b.firstDay))[0] ?? null,
    free: groupsOn(scenario, day).map((group) => ({ group, day: firstFree(scenario, plan, group, name, day) })),
  };
}

/** Groups that have a place of their own on a day. */
export function groupsOn(scenario: Scenario, day: IsoDate): readonly string[] {
  return scenario.groups.filter(({ name, here }) => here.some((span) => spanHolds(span, day)) && hostOf(scenario, name, day) === name).map(({ name }) => name);
}

/** Why nobody may stand in a cell on a day, whoever it is, and until when; null where the cell is open. */
export function shutOn(scenario: Scenario, cell: Cell, day: IsoDate): Shut | null {
  const span = spanOver(cell, day);
  if (!span) return null;
  let next = addDays(span.lastDay, 1);
  for (let over = spanOver(cell, next); over && next <= scenario.season.lastDay; over = spanOver(cell, next)) next = addDays(over.lastDay, 1);
  return { ...span, opensOn: next <= scenario.season.lastDay ? next : null };
}

/** "9999" and "0001" are ends of time that no season reaches. */
function spanOver({ closed, ours }: Cell, day: IsoDate): (Span & { readonly reason: string }) | null {
  const closure = closed.find((one) => spanHolds(one, day));
  if (closure) return { firstDay: closure.firstDay, lastDay: closure.lastDay, reason: closure.reason };
  if (day < ours.firstDay) return { firstDay: day, lastDay: addDays(ours.firstDay, -1), reason: "not in hand" };
  return day > ours.lastDay ? { firstDay: addDays(ours.lastDay, 1), lastDay: "9998-12-31", reason: "not in hand" } : null;
}

function grazedBefore(scenario: Scenario, cell: Cell, stays: readonly Stay[], day: IsoDate): CellDay["grazed"] {
  const kindOf = (name: string): boolean => isGrazer(scenario.groups.find((one) => one.name === name)!.kind);
  const own = stays.filter((stay) => stay.lastDay < day && kindOf(stay.group)).map((stay) => ({ by: stay.group, lastDay: stay.lastDay }));
  const past = cell.past.flatMap(({ by, lastDay }) => (by !== "hay" && by !== "litter" && isGrazer(by) ? [{ by, lastDay }] : []));
  const last = [...past, ...own].sort((a, b) => a.lastDay.localeCompare(b.lastDay)).at(-1);
  return last ? { ...last, restDays: daysBetween(last.lastDay, day) - 1 } : null;
}

/** The first day from a day on, on which the check accepts the plan with the group there for that day alone. */
function firstFree(scenario: Scenario, plan: Plan, group: string, cell: string, from: IsoDate): IsoDate | null {
  const { here } = scenario.groups.find((one) => one.name === group)!;
  for (let i = 0; i < DAYS_AHEAD; i++) {
    const day = addDays(from, i);
    if (day > scenario.season.lastDay) return null;
    if (!here.some((span) => spanHolds(span, day)) || hostOf(scenario, group, day) !== group) continue;
    const one = { firstDay: day, lastDay: day };
    const there = plan.stays.some((stay) => stay.group === group && stay.cell === cell && spanHolds(stay, day));
    if (there || checkPlan(scenario, withStay(scenario, plan, { group, place: { cell, yard: null }, day }, one, null)).breaches.length === 0) return day;
  }
  return null;
}
