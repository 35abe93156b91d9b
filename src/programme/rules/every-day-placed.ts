import { AWAY } from "../../season/season.js";
import type { Half } from "../half.js";

/** Every present day has a place: the row that each group-day of a choice must fill. */
export const everyDayPlacedHalf: Half = {
  id: "every-day-placed",
  bindPath(season) {
    return [{ rule: "every-day-placed", stand: (g, place, t) => (place === AWAY && season.groups[g].present[t] ? 10 : 0) }];
  },
};
