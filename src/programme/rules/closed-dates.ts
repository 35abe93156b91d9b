import { voice, type Half } from "../half.js";

/** Asked of each stay: every day open to this group, and it may be out. */
export const closedDatesHalf: Half = {
  id: "closed-dates",
  bindCell(season) {
    const say = voice(season, "closed-dates");
    return {
      enter(s, g, first, last) {
        const group = season.groups[g];
        if (!group.mayEnter[s.cell]) say.breach(s, g, last - first + 1);
        const { open } = season.cells[s.cell];
        for (let t = first; t <= last; t++) if (!open[t]) say.breach(s, g, 1);
      },
    };
  },
  bindPath(season) {
    return [{ rule: "closed-dates", stand: (g, place, t) => (place >= 0 && !season.groups[g].out[t] ? 1 : 0) }];
  },
};
