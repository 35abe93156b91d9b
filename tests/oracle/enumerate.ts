import { checkPlan } from "../../src/check/check-plan.js";
import type { Report } from "../../src/check/report.js";
import { planOf } from "../../src/programme/plan-of.js";
import { NO_HALF } from "../../src/programme/rules/index.js";
import type { RuleId } from "../../src/rules/rule.js";
import { AWAY, YARD, type Season } from "../../src/season/season.js";

/** One way to live a tiny season: places by group and day, the planner's own cuts by cell. */
export interface Way {
  readonly place: readonly Int16Array[];
  readonly cuts: readonly (readonly number[])[];
}

/**
 * Every way there is: each group on each of its days in any cell or the yard, no two in one cell; and, where a cell is
 * named, no cut of it or one on any day. The same arrays are handed out again and again: keep copies.
 */
export function everyWay(season: Season, mown: number | null, seen: (way: Way) => void): void {
  const place = season.groups.map((group) => Int16Array.from(group.present, (present) => (present ? YARD : AWAY)));
  const none = season.cells.map((): readonly number[] => []);
  const cuts = mown === null ? [none] : [none, ...Array.from({ length: season.days }, (_, t) => none.map((own, c) => (c === mown ? [t] : own)))];
  const days = Array.from({ length: season.days }, (_, t) => season.groups.flatMap((group, g) => (group.present[t] ? [[g, t] as const] : []))).flat();
  const walk = (at: number): void => {
    if (at === days.length) {
      for (const own of cuts) seen({ place, cuts: own });
      return;
    }
    const [g, t] = days[at];
    for (let p = YARD; p < season.cells.length; p++) {
      if (p >= 0 && place.some((other, o) => o < g && other[t] === p)) continue;
      place[g][t] = p;
      walk(at + 1);
    }
    place[g][t] = YARD;
  };
  walk(0);
}

export function copyOf({ place, cuts }: Way): Way {
  return { place: place.map((days) => days.slice()), cuts };
}

/** What the check says of a way: its report, and whether it breaks a rule that is the plan's to keep. */
export function judged(season: Season, way: Way): { readonly report: Report; readonly keeps: boolean } {
  const report = checkPlan(season.scenario, planOf(season, way));
  return { report, keeps: !report.breaches.some((breach) => isThePlans(breach.rule)) };
}

/** Nobody at home and arrivals in a standstill are the owner's dates: no choice of places mends them. */
function isThePlans(rule: RuleId): boolean {
  return NO_HALF[rule] === undefined || rule === "every-day-placed" || rule === "one-group-per-cell";
}

/** True when somebody stands in a cell on the evening on which it is mown: the planner never does that, whosever the cut. */
export function underTheMower(season: Season, way: Way): boolean {
  return season.cells.some((cell, c) => [...cell.ownerCuts.map((cut) => cut.day), ...way.cuts[c]].some((day) => way.place.some((days) => days[day] === c)));
}
