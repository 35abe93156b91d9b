import type { Scenario } from "../farm/scenario.js";
import { addDays, spanHolds, type IsoDate, type Span } from "../quantity/calendar.js";
import type { GroundNews } from "./job.js";

/** Cells that the owner's closed days, or the days on which rented ground is in hand, open or shut on a day. */
export function groundNews({ cells, season }: Scenario, day: IsoDate): readonly GroundNews[] {
  return cells.flatMap(({ name, closed, ours }) => {
    const shuts = closed.filter((one) => one.firstDay === day && !closed.some((other) => other !== one && goesOn(other, one.firstDay)));
    const opens = closed.filter((one) => addDays(one.lastDay, 1) === day && !closed.some((other) => other !== one && spanHolds(other, day)));
    return [
      ...shuts.map(({ reason }) => ({ cell: name, news: "shuts" as const, reason })),
      ...opens.map(({ reason }) => ({ cell: name, news: "opens" as const, reason })),
      ...(ours.firstDay === day && day > season.firstDay ? [{ cell: name, news: "opens" as const, reason: "ours" }] : []),
      ...(addDays(ours.lastDay, 1) === day && day <= season.lastDay ? [{ cell: name, news: "shuts" as const, reason: "ours" }] : []),
    ];
  });
}

/** Whether ground shut by another span was shut the day before already. */
function goesOn(other: Span, day: IsoDate): boolean {
  return spanHolds(other, addDays(day, -1)) && spanHolds(other, day);
}
