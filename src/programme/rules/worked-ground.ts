import { figures, voice, type Half } from "../half.js";

/** Asked on each grazing day while ground that birds worked is shut: enough of the cell is open. */
export const workedGroundHalf: Half = {
  id: "worked-ground",
  bindCell(season) {
    const say = voice(season, "worked-ground");
    const least = figures(season, "worked-ground", "least-open");
    return {
      bite(s, g) {
        if (s.lots.length === 0 || !(s.pigLots === 0)) return;
        const share = (s.open / season.cells[s.cell].areaHa) * 100;
        if (share < least(s.cell, g) - 1e-9) say.breach(s, g, 1 + (least(s.cell, g) - share) / 100);
      },
    };
  },
};
