import type { Plan, Stay } from "../../src/plan/plan.js";
import { daysBetween, isIsoDate, isoDate, spanHolds } from "../../src/quantity/calendar.js";
import { AWAY, YARD, type Season } from "../../src/season/season.js";

/** Why a plan cannot be laid into a draft, which holds one place a group and day, and one group a cell and day. */
export const NOT_HELD = [
  "a line that names nothing of the farm, or no day of the season", "two places on one day", "no place on a day", "a place while away", "two groups in one cell",
  "a companion away from its host", "a yard that is not the group's own", "an owner's cut left out", "a topping that is not the owner's",
] as const;

export type NotHeld = (typeof NOT_HELD)[number];

/** A plan as the programme's choices: every group's place by day, and the planner's own cuts by cell. */
export interface Places {
  readonly place: Int16Array[];
  readonly cuts: number[][];
}

/** Thrown inside and told as the reason: the plan cannot be held. */
class Unheld extends Error {
  constructor(readonly why: NotHeld) {
    super(why);
  }
}

/** The places of a plan, or why it has none. */
export function placesOfPlan(season: Season, plan: Plan): Places | NotHeld {
  try {
    const typed = season.groups.map(() => new Map<number, Stay>());
    for (const stay of plan.stays) layDown(season, typed, stay);
    const place = season.groups.map((_, g) => ownPlaces(season, g, typed));
    oneGroupACell(season, place);
    return { place, cuts: ownCuts(season, plan) };
  } catch (cause) {
    if (cause instanceof Unheld) return cause.why;
    throw cause;
  }
}

function dayIn(season: Season, date: string): number {
  const day = isIsoDate(date) ? daysBetween(season.scenario.season.firstDay, date) : -1;
  if (day < 0 || day >= season.days) throw new Unheld("a line that names nothing of the farm, or no day of the season");
  return day;
}

function layDown({ scenario, ...season }: Season, typed: readonly Map<number, Stay>[], stay: Stay): void {
  const own = typed[scenario.groups.findIndex((g) => g.name === stay.group)];
  const isYard = stay.cell === null && scenario.yards.some((y) => y.name === stay.yard);
  const known = isYard || (stay.yard === null && scenario.cells.some((c) => c.name === stay.cell));
  const [first, last] = [stay.firstDay, stay.lastDay].map((date) => dayIn({ scenario, ...season }, date));
  if (!own || !known || last < first) throw new Unheld("a line that names nothing of the farm, or no day of the season");
  for (let t = first; t <= last; t++) {
    const before = own.get(t);
    if (before && (before.cell !== stay.cell || before.yard !== stay.yard)) throw new Unheld("two places on one day");
    own.set(t, stay);
  }
}

function ownPlaces(season: Season, g: number, typed: readonly Map<number, Stay>[]): Int16Array {
  const { scenario } = season;
  const group = scenario.groups[g];
  return Int16Array.from({ length: season.days }, (_, t) => {
    const date = dateOf(season, t);
    const stay = typed[g].get(t);
    const here = group.here.some((span) => spanHolds(span, date));
    if (!here) {
      if (stay) throw new Unheld("a place while away");
      return AWAY;
    }
    if (!season.groups[g].present[t]) {
      const host = typed[scenario.groups.findIndex((other) => other.name === group.runsWith?.with)]?.get(t);
      if (stay?.cell !== host?.cell || stay?.yard !== host?.yard) throw new Unheld("a companion away from its host");
      return AWAY;
    }
    if (!stay) throw new Unheld("no place on a day");
    if (stay.cell !== null) return season.cells.findIndex((cell) => cell.name === stay.cell);
    const held = scenario.holds.some((hold) => hold.group === group.name && hold.yard === stay.yard && spanHolds(hold.days, date));
    if (stay.yard !== group.yard && !held) throw new Unheld("a yard that is not the group's own");
    return YARD;
  });
}

function oneGroupACell(season: Season, place: readonly Int16Array[]): void {
  for (let t = 0; t < season.days; t++) {
    const cells = place.map((days) => days[t]).filter((p) => p >= 0);
    if (new Set(cells).size < cells.length) throw new Unheld("two groups in one cell");
  }
}

function ownCuts(season: Season, plan: Plan): number[][] {
  const listed = plan.cuts.map((cut) => ({ cell: season.cells.findIndex((cell) => cell.name === cut.cell), day: dayIn(season, cut.day), hay: cut.cut === "hay" }));
  if (listed.some((cut) => cut.cell < 0)) throw new Unheld("a line that names nothing of the farm, or no day of the season");
  return season.cells.map((cell, c) => {
    const own = listed.filter((cut) => cut.cell === c);
    const owners = (cut: (typeof own)[number]): boolean => cell.ownerCuts.some((o) => o.day === cut.day && o.makesHay === cut.hay);
    if (cell.ownerCuts.some((o) => !own.some((cut) => cut.day === o.day && cut.hay === o.makesHay))) throw new Unheld("an owner's cut left out");
    const free = own.filter((cut) => !owners(cut));
    if (free.some((cut) => !cut.hay)) throw new Unheld("a topping that is not the owner's");
    return [...new Set(free.map((cut) => cut.day))].sort((a, b) => a - b);
  });
}

function dateOf(season: Season, t: number): string {
  return isoDate(season.firstDay + t);
}
