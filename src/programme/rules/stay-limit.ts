import { figures, voice, type Half } from "../half.js";

/** Asked when grazers enter: the whole stay against the usual and the limit, unless nothing grows. */
export const stayLimitHalf: Half = {
  id: "stay-limit",
  bindCell(season) {
    const say = voice(season, "stay-limit");
    const [limit, nil, price] = ["limit", "nil-growth", "price"].map((key) => figures(season, "stay-limit", key));
    const usual = season.scenario.groups.map((group, g) => (season.groups[g].grazer ? figures(season, "stay-limit", group.kind) : () => Infinity));
    return {
      graze(s, g, first, last) {
        if (season.cells[s.cell].growth[first] <= nil(s.cell, g)) return;
        const days = last - first + 1;
        if (days > limit(s.cell, g)) say.breach(s, g, days - limit(s.cell, g));
        say.charge(s, g, (days - usual[g](s.cell, g)) * price(s.cell, g));
      },
    };
  },
};
