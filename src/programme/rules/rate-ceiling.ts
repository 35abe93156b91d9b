import { YARD } from "../../season/season.js";
import { farmFigure, farmWide, type Half } from "../half.js";

/** Live weight out on ground, day by day, where a ceiling is set. */
export const rateCeilingHalf: Half = {
  id: "rate-ceiling",
  bindRows(season) {
    const most = farmFigure(season, "rate-ceiling", "most");
    if (!Number.isFinite(most) || !farmWide(season, "rate-ceiling")) return [];
    const limit = Float64Array.from({ length: season.days }, (_, t) => most * season.cells.reduce((sum, cell) => sum + (cell.inHand[t] ? cell.areaHa : 0), 0));
    return [{ rule: "rate-ceiling", name: "live weight out", unit: "kg", limit, weight: 1 / 500, stand: (g, place, t) => (place === YARD ? 0 : season.groups[g].liveWeight[t]) }];
  },
};
