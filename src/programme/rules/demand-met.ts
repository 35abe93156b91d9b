import { YARD } from "../../season/season.js";
import { figures, voice, type Half } from "../half.js";

/** What is eaten must stand; what is fed in the yard is charged as hay. */
export const demandMetHalf: Half = {
  id: "demand-met",
  bindCell(season) {
    const say = voice(season, "demand-met");
    const least = figures(season, "demand-met", "least-standing");
    return {
      bite(s, g) {
        if (s.cover < least(s.cell, g)) say.breach(s, g, 1 + (least(s.cell, g) - s.cover) / 100);
      },
      lot(s, g, _day, area, takenKg) {
        const left = s.cover - takenKg / Math.min(area, Math.max(s.open, 1e-9));
        if (season.groups[g].bird && left < least(s.cell, g)) say.breach(s, g, (least(s.cell, g) - left) / 100);
      },
    };
  },
  bindMoney(season) {
    const price = season.scenario.prices.hayPerKg;
    return [{ rule: "demand-met", stand: (g, place, t) => (place === YARD ? season.groups[g].hayKg[t] * price : 0) }];
  },
};
