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
        const [begins, ends] = [from(s.cell, g), to(s.cell, g)];
        let hot = 0;
        for (let t = first; t <= last; t++) if (isHot(season.month[t] + 1, begins, ends)) hot++;
        say.charge(s, g, hot * (pig ? pigs(s.cell, g) : grazers(s.cell, g)));
      },
    };
  },
};

/** Hot months may run over the year's end, as they do in the south. */
function isHot(month: number, first: number, last: number): boolean {
  return first <= last ? first <= month && month <= last : month >= first || month <= last;
}
