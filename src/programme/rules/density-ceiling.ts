import { figures, voice, type Half } from "../half.js";

/** Asked on each grazing day, where a ceiling is set. */
export const densityCeilingHalf: Half = {
  id: "density-ceiling",
  bindCell(season) {
    const say = voice(season, "density-ceiling");
    const most = figures(season, "density-ceiling", "most");
    return {
      bite(s, g, day) {
        const density = season.groups[g].liveWeight[day] / Math.max(s.open, 1e-6);
        if (density > most(s.cell, g) + 1e-6) say.breach(s, g, density / most(s.cell, g));
      },
    };
  },
};
