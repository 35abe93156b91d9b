import { figures, voice, type Half } from "../half.js";

/** Asked when grazers or pigs enter: enough grass stands, lower and at a price on spring's first pass. */
export const entryCoverHalf: Half = {
  id: "entry-cover",
  bindCell(season) {
    const say = voice(season, "entry-cover");
    const [full, first, pigs, price, firstDays] = ["grazers", "first-pass", "pigs", "first-pass-price", "first-pass-days"].map((key) => figures(season, "entry-cover", key));
    return {
      graze(s, g, day) {
        const firstPass = !s.grazedThisSeason && day < firstDays(s.cell, g);
        const least = firstPass ? Math.min(first(s.cell, g), full(s.cell, g)) : full(s.cell, g);
        if (s.cover < least) say.breach(s, g, (least - s.cover) / 100);
        if (firstPass) say.charge(s, g, ((full(s.cell, g) - s.cover) / 1000) * s.open * price(s.cell, g));
      },
      work(s, g) {
        if (season.groups[g].pig && s.cover < pigs(s.cell, g)) say.breach(s, g, (pigs(s.cell, g) - s.cover) / 100);
      },
    };
  },
};
