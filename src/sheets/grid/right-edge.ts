import { daysBetween } from "../../quantity/calendar.js";
import { nitrogenFigure, yardDaysWords } from "../figure-words.js";
import { nextFree } from "../next-free.js";
import type { Layout } from "./layout.js";
import { text } from "./svg.js";

/** At the right: when a cell is next free, and about how much nitrogen it gets; days fed in a yard. */
export function rightEdge(layout: Layout): string {
  const { sheet, right, edge } = layout;
  const cells = layout.cells.map(({ of, y, h }) => {
    const free = nextFree(sheet, of);
    const nitrogen = sheet.report.cells.find((days) => days.cell === of.name)?.nitrogenKgPerHa ?? 0;
    return text(right + 1.6, y + h / 2 + 0.9, free, { pt: 6.8, bold: free === "ready", room: 16.5 }) +
      text(edge - 0.8, y + h / 2 + 0.9, String(nitrogenFigure(nitrogen, sheet.scenario.units)), { pt: 6.8, anchor: "end" });
  });
  const yards = layout.yards.map(({ of, y, h }) => text(right + 1.6, y + h / 2 + 0.9, yardWords(layout, of.name), { pt: 6.2, room: 22.6 }));
  return [...cells, ...yards].join("");
}

/** Days that groups stand in the yard, one group a day counted once; the range of years belongs to a group's own yard. */
function yardWords({ sheet }: Layout, yard: string): string {
  const { scenario, plan, made } = sheet;
  const stays = plan.stays.filter((stay) => stay.yard === yard);
  const planned = stays.reduce((sum, stay) => sum + daysBetween(stay.firstDay, stay.lastDay) + 1, 0);
  const own = scenario.groups.filter((group) => group.yard === yard).map((group) => group.name);
  const guests = stays.some((stay) => !own.includes(stay.group));
  return yardDaysWords(own, planned, guests ? { ...made, hay: null } : made);
}
