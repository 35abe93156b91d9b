import { figures, voice, type Half } from "../half.js";

/** Asked when pigs enter: pig-days on a strip, over the days they stand on it. */
export const pigPressureHalf: Half = {
  id: "pig-pressure",
  bindCell(season) {
    const say = voice(season, "pig-pressure");
    const most = figures(season, "pig-pressure", "most");
    return {
      work(s, g, first, last) {
        const { head, strip, kind } = season.scenario.groups[g];
        if (kind !== "pigs" || !strip) return;
        const pressure = (head * Math.min(strip.days, last - first + 1)) / strip.areaHa;
        if (pressure > most(s.cell, g) + 1e-6) say.breach(s, g, pressure / most(s.cell, g));
      },
    };
  },
};
