import type { Season } from "../../season/season.js";
import { figures, voice, type Half } from "../half.js";

/** Asked when grazers enter: days since the latest grazing, against the floor and the season's usual rest. */
export const restPeriodHalf: Half = {
  id: "rest-period",
  bindCell(season) {
    const say = voice(season, "rest-period");
    const [floor, price] = ["floor", "price"].map((key) => figures(season, "rest-period", key));
    const usual = usualRest(season);
    return {
      graze(s, g, first) {
        if (s.lastGrazed === null) return;
        const rest = first - s.lastGrazed - 1;
        if (rest < floor(s.cell, g)) say.breach(s, g, floor(s.cell, g) - rest);
        say.charge(s, g, (usual(s.cell, g, first) - rest) * price(s.cell, g));
      },
    };
  },
};

/** The season's usual rest before a stay that begins on a day: flush, midsummer, and a straight line between. */
export function usualRest(season: Season): (cell: number, group: number, first: number) => number {
  const [flush, midsummer, until, from] = ["flush", "midsummer", "flush-until", "midsummer-from"].map((key) => figures(season, "rest-period", key));
  return (cell, group, first) => {
    if (season.dayOfYear[first] <= until(cell, group)) return flush(cell, group);
    const along = (season.dayOfYear[first] - until(cell, group)) / (from(cell, group) - until(cell, group));
    return flush(cell, group) + Math.min(1, along) * (midsummer(cell, group) - flush(cell, group));
  };
}
