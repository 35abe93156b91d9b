import { figures, voice, type Half } from "../half.js";

/** Asked after each day's grazing. */
export const residualCoverHalf: Half = {
  id: "residual-cover",
  bindCell(season) {
    const say = voice(season, "residual-cover");
    const residual = figures(season, "residual-cover", "grazers");
    return {
      bite(s, g) {
        const least = residual(s.cell, g);
        if (s.cover < least) say.breach(s, g, (least - s.cover) / 100);
      },
    };
  },
};
