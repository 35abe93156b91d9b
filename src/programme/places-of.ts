import { daysBetween } from "../quantity/calendar.js";
import type { Plan } from "../plan/plan.js";
import { AWAY, YARD, type Season } from "../season/season.js";

/**
 * A plan's places by day, as far as this season has them: days of groups or cells that are no longer there stand in the
 * yard, companions go with their hosts. The planner's own cuts are those that the owner has not fixed anyhow.
 */
export function placesOf(season: Season, plan: Plan): { place: Int16Array[]; cuts: number[][] } {
  const first = season.scenario.season.firstDay;
  const place = season.groups.map((group) => Int16Array.from(group.present, (present) => (present ? YARD : AWAY)));
  for (const stay of plan.stays) {
    const g = season.groups.findIndex((group) => group.name === stay.group);
    const cell = season.cells.findIndex((own) => own.name === stay.cell);
    if (g < 0 || cell < 0) continue;
    const from = Math.max(0, daysBetween(first, stay.firstDay));
    const to = Math.min(season.days - 1, daysBetween(first, stay.lastDay));
    for (let t = from; t <= to; t++) if (place[g][t] !== AWAY) place[g][t] = cell;
  }
  const cuts = season.cells.map((cell) =>
    plan.cuts
      .filter((cut) => cut.cell === cell.name && cut.cut === "hay")
      .map((cut) => daysBetween(first, cut.day))
      .filter((day) => day >= 0 && day < season.days && !cell.ownerCuts.some((own) => own.day === day))
      .sort((a, b) => a - b),
  );
  return { place: oneGroupACell(season, place), cuts };
}

/** Of two groups on the same cell and day the first in farm order stays; the other goes to the yard. */
function oneGroupACell(season: Season, place: Int16Array[]): Int16Array[] {
  const taken = new Uint8Array(season.cells.length * season.days);
  for (const own of place) {
    for (let t = 0; t < season.days; t++) {
      if (own[t] < 0) continue;
      const at = own[t] * season.days + t;
      if (taken[at]) own[t] = YARD;
      else taken[at] = 1;
    }
  }
  return place;
}
