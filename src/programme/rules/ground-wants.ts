import { WANTS } from "../../farm/scenario.js";
import { figures, voice, type Half } from "../half.js";

/** Asked at the season's end: the share of each want left undone. */
export const groundWantsHalf: Half = {
  id: "ground-wants",
  bindCell(season) {
    const say = voice(season, "ground-wants");
    const prices = { opening: "opening-price", scratching: "scratching-price", fertility: "fertility-price" } as const;
    const price = Object.fromEntries(WANTS.map((want) => [want, figures(season, "ground-wants", prices[want])]));
    const target = figures(season, "ground-wants", "fertility-target");
    return {
      close(s) {
        const area = season.cells[s.cell].areaHa;
        const done = { opening: s.opened / area, scratching: s.scratched / area, fertility: s.nitrogen / area / target(s.cell, -1) };
        for (const want of season.scenario.cells[s.cell].wants) say.charge(s, -1, area * (1 - Math.min(1, done[want])) * price[want](s.cell, -1));
      },
    };
  },
};
