import type { Scenario } from "../farm/scenario.js";
import { spanHolds, weekdayOf } from "../quantity/calendar.js";

/** Who is at home, by day index. */
export interface PeopleByDay {
  readonly minutes: Float64Array;
  readonly atHome: Uint8Array;
  /** 1 where somebody at home tows. */
  readonly tower: Uint8Array;
}

/** Minutes, heads and towing by day of the people at home. */
export function peopleByDay(scenario: Scenario, dates: readonly string[]): PeopleByDay {
  const minutes = new Float64Array(dates.length);
  const atHome = new Uint8Array(dates.length);
  const tower = new Uint8Array(dates.length);
  dates.forEach((date, t) => {
    for (const person of scenario.people) {
      const away = person.away.some((span) => spanHolds(span, date));
      const own = away ? 0 : (person.minutesByDay[date] ?? person.minutesByWeekday[weekdayOf(date)]);
      if (own <= 0) continue;
      minutes[t] += own;
      atHome[t]++;
      if (person.tows) tower[t] = 1;
    }
  });
  return { minutes, atHome, tower };
}
