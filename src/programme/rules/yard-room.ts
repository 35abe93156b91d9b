import { isoDate, spanHolds } from "../../quantity/calendar.js";
import { YARD, type Season } from "../../season/season.js";
import type { Half } from "../half.js";

/** Room and open dates of yards, and the price of a day in one. */
export const yardRoomHalf: Half = {
  id: "yard-room",
  bindRows(season) {
    const [head, yards] = [headByDay(season), yardsByDay(season)];
    return season.scenario.yards.flatMap((yard, y) => {
      if (yard.room === null) return [];
      return [{
        rule: "yard-room" as const, name: `head in ${yard.name}`, unit: "head", limit: new Float64Array(season.days).fill(yard.room), weight: 1,
        stand: (g: number, place: number, t: number) => (place === YARD && yards[g][t] === y ? head[g][t] : 0),
      }];
    });
  },
  bindPath(season) {
    const dates = Array.from({ length: season.days }, (_, t) => isoDate(season.firstDay + t));
    const open = season.scenario.yards.map((yard) => Uint8Array.from(dates, (date) => (yard.open.some((span) => spanHolds(span, date)) ? 1 : 0)));
    const yards = yardsByDay(season);
    return [{ rule: "yard-room", stand: (g, place, t) => (place === YARD && !open[yards[g][t]][t] ? 1 : 0) }];
  },
  bindMoney(season) {
    const yards = yardsByDay(season);
    const cost = season.scenario.yards.map((yard) => yard.costPerDay);
    return [{ rule: "yard-room", stand: (g, place, t) => (place === YARD ? cost[yards[g][t]] : 0) }];
  },
};

/** The yard that each group's yard days are spent in: the one held for that day, or its own. */
export function yardsByDay({ scenario, groups, days, firstDay }: Season): Int16Array[] {
  return groups.map((group) =>
    Int16Array.from({ length: days }, (_, t) => {
      const hold = scenario.holds.find((h) => h.group === group.name && h.yard !== null && spanHolds(h.days, isoDate(firstDay + t)));
      return hold ? scenario.yards.findIndex((yard) => yard.name === hold.yard) : group.yard;
    }),
  );
}

/** Head that need room with each group: its own, and those of groups that run with it that day. */
function headByDay({ scenario, groups, days, firstDay }: Season): Int32Array[] {
  return groups.map((group, g) =>
    Int32Array.from({ length: days }, (_, t) => {
      const along = (other: (typeof scenario.groups)[number]): boolean =>
        other.runsWith?.with === group.name && [other.runsWith.days, other.here].every((spans) => spans.some((span) => spanHolds(span, isoDate(firstDay + t))));
      return scenario.groups.reduce((sum, other) => sum + (along(other) ? other.head : 0), scenario.groups[g].head);
    }),
  );
}
