import { isoDate, spanHolds } from "../../quantity/calendar.js";
import { YARD } from "../../season/season.js";
import type { Half } from "../half.js";

/** Room and open dates of yards, and the price of a day in one. */
export const yardRoomHalf: Half = {
  id: "yard-room",
  bindRows(season) {
    return season.scenario.yards.flatMap((yard, y) => {
      if (yard.room === null) return [];
      const head = season.scenario.groups.map((group) => group.head);
      return [{
        rule: "yard-room" as const, name: `head in ${yard.name}`, unit: "head", limit: new Float64Array(season.days).fill(yard.room), weight: 1,
        stand: (g: number, place: number) => (place === YARD && season.groups[g].yard === y ? head[g] : 0),
      }];
    });
  },
  bindPath(season) {
    const open = season.scenario.yards.map((yard) => Uint8Array.from({ length: season.days }, (_, t) => (yard.open.some((span) => spanHolds(span, isoDate(season.firstDay + t))) ? 1 : 0)));
    return [{ rule: "yard-room", stand: (g, place, t) => (place === YARD && !open[season.groups[g].yard][t] ? 1 : 0) }];
  },
  bindMoney(season) {
    const cost = season.groups.map((group) => season.scenario.yards[group.yard].costPerDay);
    return [{ rule: "yard-room", stand: (g, place) => (place === YARD ? cost[g] : 0) }];
  },
};
