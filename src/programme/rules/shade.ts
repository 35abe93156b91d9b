import { figures, voice, type Half } from "../half.js";

/** Asked of each stay: days in the hot months without shade. */
export const shadeHalf: Half = {
  id: "shade",
  bindCell(season) {
    const say = voice(season, "shade");
    const [from, to, pigs, grazers] = ["first-month", "last-month", "pigs-price", "grazers-price"].map((key) => figures(season, "shade", key));
    return {
      enter(s, g, first, last) {
        const { pig, grazer } = season.groups[g];
        if (season.scenario.cells[s.cell].shade || !(pig || grazer)) return;
        let hot = 0;
        for (let t = first; t <= last; t++) if (season.month[t] + 1 >= from(s.cell, g) && season.month[t] + 1 <= to(s.cell, g)) hot++;
        say.charge(s, g, hot * (pig ? pigs(s.cell, g) : grazers(s.cell, g)));
      },
    };
  },
};
