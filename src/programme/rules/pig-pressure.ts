import { figures, voice, type Half } from "../half.js";

/** Asked when pigs enter: pig-days on a strip, over the days they stand on it, and a last strip left too soon. */
export const pigPressureHalf: Half = {
  id: "pig-pressure",
  bindCell(season) {
    const say = voice(season, "pig-pressure");
    const [most, opened, price] = ["most", "opened", "unopened-price"].map((key) => figures(season, "pig-pressure", key));
    return {
      work(s, g, first, last) {
        const { head, strip, kind } = season.scenario.groups[g];
        if (kind !== "pigs" || !strip) return;
        const pressure = (head * Math.min(strip.days, last - first + 1)) / strip.areaHa;
        if (pressure > most(s.cell, g) + 1e-6) say.breach(s, g, pressure / most(s.cell, g));
        const left = (last - first + 1) % strip.days;
        if (left > 0 && (head * left) / strip.areaHa < opened(s.cell, g)) say.charge(s, g, price(s.cell, g));
      },
    };
  },
};
