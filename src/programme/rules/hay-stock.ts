import { farmFigure, farmWide, figures, voice, type Half } from "../half.js";

/** Cuts: when they are worth making and what mowing costs; hay fed and made against the winter's need. */
export const hayStockHalf: Half = {
  id: "hay-stock",
  bindCell(season) {
    const say = voice(season, "hay-stock");
    const from = figures(season, "hay-stock", "cut-from");
    return {
      mow(s, _day, byOwner) {
        if (byOwner) return;
        if (!season.cells[s.cell].mow || s.lots.length > 0) say.breach(s, -1, 10);
        if (s.cover < from(s.cell, -1)) say.breach(s, -1, (from(s.cell, -1) - s.cover) / 100);
      },
    };
  },
  bindFarm(season) {
    if (!farmWide(season, "hay-stock")) return [];
    const { hay, prices } = season.scenario;
    const together = farmFigure(season, "hay-stock", "together");
    const share = farmFigure(season, "hay-stock", "short-share") / 100;
    return [{
      rule: "hay-stock",
      judge({ hayFed, hayMade, cutArea }) {
        const short = Math.max(0, hay.winterNeedKg - (hay.inStoreKg + hayMade - hayFed));
        let mowing = 0;
        for (const area of cutArea.values()) mowing += Math.max(together, area) * prices.mowingPerHa;
        return { money: short * prices.hayPerKg * share + mowing, over: 0 };
      },
    }];
  },
};
