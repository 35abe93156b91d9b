import { isoDate, spanHolds } from "../../quantity/calendar.js";
import type { Half } from "../half.js";

/** Birds of the kinds named stand in the yard while an order runs. */
export const housingOrderHalf: Half = {
  id: "housing-order",
  bindPath(season) {
    const ordered = season.scenario.groups.map((group) =>
      Uint8Array.from({ length: season.days }, (_, t) => {
        const date = isoDate(season.firstDay + t);
        return season.scenario.housingOrders.some((order) => order.kinds.includes(group.kind) && spanHolds(order, date)) ? 1 : 0;
      }),
    );
    return [{ rule: "housing-order", stand: (g, place, t) => (place >= 0 ? ordered[g][t] : 0) }];
  },
};
