import { addDays, daysBetween, spanHolds, weekdayOf, type IsoDate } from "../quantity/calendar.js";
import type { Group, Scenario } from "../farm/scenario.js";
import type { Plan, Stay } from "../plan/plan.js";

/** Every day of the season. */
export function seasonDays({ season }: Scenario): readonly IsoDate[] {
  return Array.from({ length: daysBetween(season.firstDay, season.lastDay) + 1 }, (_, i) => addDays(season.firstDay, i));
}

/** The group that another runs with on a day, or null. */
export function hostOn(group: Group, day: IsoDate): string | null {
  return group.runsWith?.days.some((span) => spanHolds(span, day)) ? group.runsWith.with : null;
}

/** People with minutes to spare at home on a day. */
export function peopleAtHome({ people }: Scenario, day: IsoDate): number {
  return people.filter((person) => {
    const minutes = person.minutesByDay[day] ?? person.minutesByWeekday[weekdayOf(day)] ?? 0;
    return minutes > 0 && !person.away.some((span) => spanHolds(span, day));
  }).length;
}

/** A group's change of place. */
export interface Move {
  readonly day: IsoDate;
  readonly group: string;
  /** Null when it comes onto the farm that day. */
  readonly from: string | null;
  readonly to: string;
}

/** Moves by day, groups in farm order; a group that runs with another moves with it and is not told apart. */
export function movesOf(scenario: Scenario, plan: Plan): readonly Move[] {
  const moves = scenario.groups.flatMap((group) => {
    const stays = plan.stays.filter((stay) => stay.group === group.name);
    return stays.filter((stay) => hostOn(group, stay.firstDay) === null).flatMap((stay) => moveInto(scenario, stay, stays));
  });
  return moves.sort((a, b) => a.day.localeCompare(b.day));
}

/** The season's first place is no move. */
function moveInto(scenario: Scenario, stay: Stay, stays: readonly Stay[]): Move[] {
  if (stay.firstDay === scenario.season.firstDay) return [];
  const before = stays.find((one) => addDays(one.lastDay, 1) === stay.firstDay);
  return [{ day: stay.firstDay, group: stay.group, from: before ? placeName(before) : null, to: placeName(stay) }];
}

export function placeName(stay: Stay): string {
  return stay.cell ?? stay.yard!;
}

/** Mondays after the first day of some days, by their place in the list. */
export function mondaysIn(days: readonly IsoDate[]): readonly number[] {
  return days.flatMap((day, i) => (i > 0 && weekdayOf(day) === 0 ? [i] : []));
}
