import type { Feed } from "../../decide/feed.js";
import type { Scenario } from "../../farm/scenario.js";
import { addDays } from "../../quantity/calendar.js";
import { UNITS } from "../../quantity/units.js";
import { dayMonth } from "../day-words.js";
import { escaped } from "../grid/svg.js";

/** The drawing's figures as a table, rounded to 10 kg or 10 lb. */
export function feedTable({ season, units }: Scenario, { weeks, pinches, surpluses }: Feed): string {
  const unit = units === "US" ? "lb" : "kg";
  const figure = (kg: number): string => String(Math.round(kg / UNITS.weight[unit]! / 10) * 10 || 0);
  const within = (spans: Feed["pinches"], w: number): boolean => spans.some(({ from, to }) => w >= from && w <= to);
  const heads = ["week from", "grown", "eaten as grass", "fed as hay", "cut", "standing", "days ahead", "days wanted", ""];
  const rows = weeks.map((week, w) => {
    const days = week.daysInHand === null ? ["", ""] : [String(Math.round(week.daysInHand)), String(week.daysWished)];
    const mark = within(pinches, w) ? "short" : within(surpluses, w) ? "spare" : "";
    const figures = [week.grownKg, week.eatenKg, week.hayKg + week.keptInHayKg, week.ownCutKg + week.cutKg, week.standingKg].map(figure);
    return [dayMonth(addDays(season.firstDay, week.day)), ...figures, ...days, mark];
  });
  const cells = (tag: "th" | "td", boxes: readonly string[]): string => boxes.map((box) => `<${tag}>${escaped(box)}</${tag}>`).join("");
  return `<table>
<caption>Week by week in a usual year, ${unit} of dry matter. Standing: above what must be left, on open ground, when the week ends.</caption>
<thead><tr>${cells("th", heads)}</tr></thead>
<tbody>
${rows.map((row) => `<tr>${cells("td", row)}</tr>`).join("\n")}
</tbody>
</table>`;
}
