import { figures, voice, type Half } from "../half.js";

/** Asked as birds take a week's ground, and on each weekly walk for grass grown too long. */
export const upperCoverHalf: Half = {
  id: "upper-cover",
  bindCell(season) {
    const say = voice(season, "upper-cover");
    const [wished, barrier, birdsPrice, long, longPrice] = ["birds-wished", "birds-barrier", "birds-price", "long", "long-price"].map((key) => figures(season, "upper-cover", key));
    return {
      lot(s, g) {
        if (!season.groups[g].bird) return;
        if (s.cover > barrier(s.cell, g)) say.breach(s, g, (s.cover - barrier(s.cell, g)) / 100);
        say.charge(s, g, ((s.cover - wished(s.cell, g)) / 1000) * birdsPrice(s.cell, g));
      },
      walk(s, day) {
        const over = s.cover - long(s.cell, -1);
        if (over > 0 && season.cells[s.cell].open[day]) say.charge(s, -1, (over / 1000) * s.open * longPrice(s.cell, -1));
      },
    };
  },
};
