import { FREE } from "../../season/season.js";
import type { Half } from "../half.js";

/** Held days stand in their held place; held cuts are made by the season itself. */
export const holdsHalf: Half = {
  id: "holds",
  bindPath(season) {
    return [{ rule: "holds", stand: (g, place, t) => (season.groups[g].held[t] === FREE || season.groups[g].held[t] === place ? 0 : 2) }];
  },
};
