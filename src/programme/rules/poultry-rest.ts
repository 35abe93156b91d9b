import { BIRDS } from "../../farm/scenario.js";
import { figures, voice, type Half } from "../half.js";

/** Asked when birds enter: fresh strips enough, counting birds of other groups and last year's. */
export const poultryRestHalf: Half = {
  id: "poultry-rest",
  bindCell(season) {
    const say = voice(season, "poultry-rest");
    const rests = new Map(BIRDS.map((kind) => [kind as string, figures(season, "poultry-rest", kind)]));
    return {
      work(s, g, first, _last, area) {
        if (!season.groups[g].bird) return;
        let fresh = season.cells[s.cell].areaHa;
        for (const use of s.worked) {
          const rest = rests.get(use.kind);
          if (rest && first - use.last - 1 < rest(s.cell, g)) fresh -= use.area;
        }
        if (area > fresh + 1e-9) say.breach(s, g, 1 + (area - fresh) / season.cells[s.cell].areaHa);
      },
    };
  },
};
