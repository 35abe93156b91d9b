import type { Season } from "../../season/season.js";
import { voice, type Half } from "../half.js";

/** Asked as a week's lot is split: it fits the open ground. Hauls of pens cost minutes. */
export const penStepsHalf: Half = {
  id: "pen-steps",
  bindCell(season) {
    const say = voice(season, "pen-steps");
    return {
      lot(s, g, _day, area) {
        if (area > s.open + 1e-9) say.breach(s, g, 1 + (area - s.open) / season.cells[s.cell].areaHa);
      },
    };
  },
  bindMoney(season) {
    return [{ rule: "pen-steps", haul: (g, field) => (isPen(season, g) ? haulMoney(season, g, field) : 0) }];
  },
};

/** True for a group that lives in a pen or net. */
export function isPen(season: Season, group: number): boolean {
  return season.scenario.groups[group].strip?.pen != null;
}

/** Money of a group's haul into a field: its minutes and the haul's own price. */
export function haulMoney(season: Season, group: number, field: number): number {
  const { labourPerHour, haul } = season.scenario.prices;
  return (season.haulMinutes[group][field] * labourPerHour) / 60 + haul;
}
