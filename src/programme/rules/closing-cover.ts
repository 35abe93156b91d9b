import { figures, voice, type Half } from "../half.js";

/** Asked at the season's end, and of grazing on wet ground shortly before it. */
export const closingCoverHalf: Half = {
  id: "closing-cover",
  bindCell(season) {
    const say = voice(season, "closing-cover");
    const [wish, price, wetDays, wetPrice] = ["wish", "price", "wet-days", "wet-price"].map((key) => figures(season, "closing-cover", key));
    return {
      bite(s, g, day) {
        if (season.scenario.cells[s.cell].wetGround && day >= season.days - wetDays(s.cell, g)) say.charge(s, g, wetPrice(s.cell, g));
      },
      close(s) {
        if (season.cells[s.cell].inHand[season.days - 1]) say.charge(s, -1, ((wish(s.cell, -1) - s.cover) / 1000) * s.open * price(s.cell, -1));
      },
    };
  },
};
