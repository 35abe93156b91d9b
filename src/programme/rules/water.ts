import { farmFigure, farmWide, figures, voice, type Half } from "../half.js";

/** Water in the cell or within a walk, or carted within what can be carted. */
export const waterHalf: Half = {
  id: "water",
  bindCell(season) {
    const say = voice(season, "water");
    const [free, most, price, minutes] = ["walk-free", "walk-most", "walk-price", "cart-minutes"].map((key) => figures(season, "water", key));
    const perMinute = season.scenario.prices.labourPerHour / 60;
    return {
      enter(s, g, first, last) {
        const { water, waterWalkM } = season.scenario.cells[s.cell];
        const days = last - first + 1;
        if (water === "none" || waterWalkM > most(s.cell, g)) say.breach(s, g, days);
        say.charge(s, g, (Math.max(0, waterWalkM - free(s.cell, g)) / 100) * price(s.cell, g) * days);
        if (water === "carted") say.charge(s, g, minutes(s.cell, g) * perMinute * days);
      },
    };
  },
  bindRows(season) {
    const most = farmFigure(season, "water", "carted-most");
    if (!Number.isFinite(most) || !farmWide(season, "water")) return [];
    const carted = season.scenario.cells.map((cell) => cell.water === "carted");
    return [{
      rule: "water", name: "litres carted", unit: "L", limit: new Float64Array(season.days).fill(most), weight: 1 / 100,
      stand: (g, place, t) => (place >= 0 && carted[place] ? season.groups[g].litres[t] : 0),
    }];
  },
};
