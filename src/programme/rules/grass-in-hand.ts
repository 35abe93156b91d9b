import { useOf } from "../../farm/scenario.js";
import type { Season } from "../../season/season.js";
import { farmFigure, figures, type Half } from "../half.js";

/** Days of grass ahead of the grazers on each weekly walk. */
export const grassInHandHalf: Half = {
  id: "grass-in-hand",
  bindCell(season) {
    const residual = figures(season, "residual-cover", "grazers");
    const grazed = season.cells.map((_, c) => season.groups.some((group) => group.grazer && group.mayEnter[c]));
    return {
      walk(s, day) {
        if (grazed[s.cell] && season.cells[s.cell].open[day]) s.grass[s.walk] = Math.max(0, s.cover - residual(s.cell, -1)) * s.open;
      },
    };
  },
  bindFarm(season) {
    const use = useOf(season.scenario, "grass-in-hand", null, null);
    if (use === "off") return [];
    const price = farmFigure(season, "grass-in-hand", "price");
    const wishes = season.walks.map((t) => grassWish(season, t));
    return [{
      rule: "grass-in-hand",
      judge({ grass }) {
        let money = 0;
        for (let w = 0; w < wishes.length; w++) {
          const daily = season.grazersTaken[season.walks[w]];
          if (daily > 0) money += Math.max(0, wishes[w] - grass[w] / daily) * price;
        }
        return use === "hard" ? { money: 0, over: money > 1e-9 ? 1 + money : 0 } : { money, over: 0 };
      },
    }];
  },
};

/** Days of grass wished ahead on a day, never more than the days left. */
export function grassWish(season: Season, day: number): number {
  const spring = season.dayOfYear[day] <= farmFigure(season, "grass-in-hand", "spring-until");
  return Math.min(farmFigure(season, "grass-in-hand", spring ? "spring" : "wish"), season.days - day);
}
