import { checkPlan } from "../check/check-plan.js";
import type { Report } from "../check/report.js";
import type { Scenario } from "../farm/scenario.js";
import type { Plan, Stay } from "../plan/plan.js";
import { planOfStandings } from "../plan/standings.js";
import { addDays, daysBetween, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import type { Breach } from "../rules/rule.js";

/** A cell or a yard, by name; exactly one is not null. */
export interface Place {
  readonly cell: string | null;
  readonly yard: string | null;
}

/** One group in one place on one day: what is asked about. */
export interface Question {
  readonly group: string;
  readonly place: Place;
  readonly day: IsoDate;
}

/** A plan with the stay forced into it, and the check's word on it. */
export interface Forced {
  readonly plan: Plan;
  readonly report: Report;
}

export function samePlace(a: Place, b: Place): boolean {
  return a.cell === b.cell && a.yard === b.yard;
}

export function placeName({ cell, yard }: Place): string {
  return cell ?? yard ?? "nowhere";
}

/** The stay of a group that holds a day, or null. */
export function stayOn(plan: Plan, group: string, day: IsoDate): Stay | null {
  return plan.stays.find((stay) => stay.group === group && spanHolds(stay, day)) ?? null;
}

/** True when a plan answers a question with yes. */
export function standsThere(plan: Plan, { group, place, day }: Question): boolean {
  const stay = stayOn(plan, group, day);
  return stay !== null && samePlace(stay, place);
}

/** The group whose place a group shares on a day, followed to the one that shares nobody's; itself where it runs alone. */
export function hostOf(scenario: Scenario, name: string, day: IsoDate): string {
  let host = name;
  for (let steps = 0; steps < scenario.groups.length; steps++) {
    const group = scenario.groups.find((one) => one.name === host);
    const along = group?.runsWith;
    const next = along && along.days.some((span) => spanHolds(span, day)) ? scenario.groups.find((one) => one.name === along.with) : undefined;
    if (!group || !next || ![group, next].every((one) => one.here.some((span) => spanHolds(span, day)))) return host;
    host = next.name;
  }
  return name;
}

/** Who else leaves the cell: nobody, so that the check says so where two stand there; or all who stand there in some days. */
type Cleared = Span | null;

/**
 * The plan with a group and all that run with it moved to a place for some days. Stays in that cell that touch the days `cleared`,
 * of whichever group, go to their yards.
 */
export function withStay(scenario: Scenario, plan: Plan, { group, place }: Question, span: Span, cleared: Cleared): Plan {
  const placeOn = (stay: Stay, day: IsoDate): Place => {
    const host = hostOf(scenario, stay.group, day);
    if (host === group && spanHolds(span, day)) return place;
    const inTheWay = cleared !== null && place.cell !== null && stay.cell === place.cell && stay.firstDay <= cleared.lastDay && cleared.firstDay <= stay.lastDay;
    return inTheWay ? { cell: null, yard: scenario.groups.find((one) => one.name === host)?.yard ?? null } : stay;
  };
  const standings = plan.stays.flatMap((stay) => daysOf(stay).map((day) => {
    const { cell, yard } = placeOn(stay, day);
    return { group: stay.group, cell, yard, day };
  }));
  return planOfStandings(standings, plan.cuts, scenario);
}

function daysOf({ firstDay, lastDay }: Span): readonly IsoDate[] {
  return Array.from({ length: daysBetween(firstDay, lastDay) + 1 }, (_, i) => addDays(firstDay, i));
}

/** Days for which a stay is forced: the day alone, from it to the end of the stay it falls in, from that stay's beginning to it, and all of that stay. */
function spansTried(plan: Plan, { group, day }: Question): readonly Span[] {
  const { firstDay, lastDay } = stayOn(plan, group, day) ?? { firstDay: day, lastDay: day };
  const spans = [[day, day], [day, lastDay], [firstDay, day], [firstDay, lastDay]].map(([from, to]) => ({ firstDay: from!, lastDay: to! }));
  return spans.filter((span, i) => spans.findIndex((other) => other.firstDay === span.firstDay && other.lastDay === span.lastDay) === i);
}

/** The stay forced into a plan for each of the spans tried, with each of the clearings, the one that breaks least and then costs least first. */
function forcedWays(scenario: Scenario, plan: Plan, question: Question, clearings: readonly ((span: Span) => Cleared)[]): readonly Forced[] {
  const ways = spansTried(plan, question).flatMap((span) => clearings.map((clearing) => {
    const forced = withStay(scenario, plan, question, span, clearing(span));
    return { plan: forced, report: checkPlan(scenario, forced) };
  }));
  return ways.sort((a, b) => a.report.breaches.length - b.report.breaches.length || a.report.cost - b.report.cost);
}

/** The stay as the plan stands, nobody else moved. */
export function asItStands(scenario: Scenario, plan: Plan, question: Question): Forced {
  return forcedWays(scenario, plan, question, [() => null])[0]!;
}

/** Days before and after a stay in which others in the cell may be in its way: a short rest and a little more. */
const ROOM_DAYS = 25;

/** A plan to begin from when one with the stay is looked for: whoever is in the way goes to its yard, for a search finds better places for days in a yard. */
export function startWith(scenario: Scenario, plan: Plan, question: Question): Plan {
  const around = ({ firstDay, lastDay }: Span): Span => ({ firstDay: addDays(firstDay, -ROOM_DAYS), lastDay: addDays(lastDay, ROOM_DAYS) });
  return forcedWays(scenario, plan, question, [(span) => span, around])[0]!.plan;
}

/** The breaches of a forced plan, those of the stay itself first: what it breaks of its own before what follows from it. */
export function ownFirst(breaches: readonly Breach[], { group, place, day }: Question): readonly Breach[] {
  const own = ({ group: who, cell, firstDay, lastDay }: Breach): number => {
    const there = cell === null || cell === place.cell;
    if (who === group && there && spanHolds({ firstDay, lastDay }, day)) return 0;
    if (who === null && cell === null && spanHolds({ firstDay, lastDay }, day)) return 1;
    return there ? 2 : 3;
  };
  return [...breaches].sort((a, b) => own(a) - own(b));
}
