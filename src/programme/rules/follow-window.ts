import { isoDate, spanHolds } from "../../quantity/calendar.js";
import type { Season } from "../../season/season.js";
import { figures, voice, type Half } from "../half.js";

/** Asked when a follower enters: days since its leader left this cell. Not asked under a housing order. */
export const followWindowHalf: Half = {
  id: "follow-window",
  bindCell(season) {
    const say = voice(season, "follow-window");
    const [from, to, price] = ["first", "last", "price"].map((key) => figures(season, "follow-window", key));
    const ordered = orderedDays(season);
    return {
      enter(s, g, first) {
        const leader = season.groups[g].leader;
        if (leader < 0 || ordered[g][first]) return;
        const gap = first - s.lastOf[leader];
        if (gap < from(s.cell, g) || gap > to(s.cell, g)) say.charge(s, g, price(s.cell, g));
      },
    };
  },
};

/** Days on which a housing order holds for each group's kind. */
function orderedDays(season: Season): Uint8Array[] {
  return season.scenario.groups.map((group) =>
    Uint8Array.from({ length: season.days }, (_, t) => {
      const date = isoDate(season.firstDay + t);
      return season.scenario.housingOrders.some((order) => order.kinds.includes(group.kind) && spanHolds(order, date)) ? 1 : 0;
    }),
  );
}
