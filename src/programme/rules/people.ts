import { YARD, type Season } from "../../season/season.js";
import { farmWide, type Half } from "../half.js";
import { haulMoney, isPen } from "./pen-steps.js";
import { yardsByDay } from "./yard-room.js";

/** Minutes of each day against the people at home; who may move and tow; what moves cost. */
export const peopleHalf: Half = {
  id: "people",
  bindRows(season) {
    if (!farmWide(season, "people")) return [];
    const limit = Float64Array.from(season.minutesAtHome, (minutes, t) => minutes - season.chores[t]);
    return [{
      rule: "people", name: "minutes", unit: "min", limit, weight: 1 / 20,
      start: (g, place, _t, arrives) => moveMinutes(season, g, place, arrives),
      haul: (g, field) => season.haulMinutes[g][field],
      step: (g) => (isPen(season, g) ? (season.scenario.groups[g].strip?.stepMinutes ?? 0) : 0),
    }];
  },
  bindPath(season) {
    const yards = yardsByDay(season);
    return [{
      rule: "people",
      // From one yard to another, by a hold, is a move as well.
      stand: (g, place, t) => (place === YARD && t > 0 && !season.groups[g].arrives[t] && yards[g][t] !== yards[g][t - 1] && !season.groups[g].moveOk[t] ? 1 : 0),
      start: (g, place, t, arrives) => (season.groups[g].moveOk[t] || (arrives && place === YARD) ? 0 : 1),
      step: (g, _place, t) => (season.groups[g].stepOk[t] || !isPen(season, g) ? 0 : 1),
    }];
  },
  bindMoney(season) {
    const perMinute = season.scenario.prices.labourPerHour / 60;
    return [{
      rule: "people",
      start: (g, place, _t, arrives) => moveMinutes(season, g, place, arrives) * perMinute,
      haul: (g, field) => (isPen(season, g) ? 0 : haulMoney(season, g, field)),
    }];
  },
};

function moveMinutes(season: Season, group: number, place: number, arrives: boolean): number {
  const own = season.scenario.groups[group];
  if (place !== YARD) return own.moveMinutes + own.setMinutes;
  return arrives ? 0 : own.moveMinutes;
}
