import { figures, voice, type Half } from "../half.js";

/** Asked when pigs enter: fresh strips enough, counting last year's. */
export const pigRestHalf: Half = {
  id: "pig-rest",
  bindCell(season) {
    const say = voice(season, "pig-rest");
    const rest = figures(season, "pig-rest", "rest");
    return {
      work(s, g, first, _last, area) {
        if (!season.groups[g].pig) return;
        let fresh = season.cells[s.cell].areaHa;
        for (const use of s.worked) if (use.kind === "pigs" && first - use.last - 1 < rest(s.cell, g)) fresh -= use.area;
        if (area > fresh + 1e-9) say.breach(s, g, 1 + (area - fresh) / season.cells[s.cell].areaHa);
      },
    };
  },
};
