import { daysBetween } from "../../quantity/calendar.js";
import type { Group } from "../../farm/scenario.js";
import type { Words } from "../../words/words.js";
import { toldYardDays } from "../amounts.js";
import { nitrogenFigure } from "../figure-words.js";
import type { Sheet } from "../made.js";
import { nextFree } from "../next-free.js";
import type { Layout, Row } from "./layout.js";
import { text } from "./svg.js";

/** At the right: when a cell is next free, and about how much nitrogen it gets; days that groups stand in a yard. */
export function rightEdge(layout: Layout): string {
  const { sheet, right, edge, words } = layout;
  const cells = layout.cells.map(({ of, y, h }) => {
    const free = nextFree(sheet, of, words);
    const nitrogen = sheet.report.cells.find((days) => days.cell === of.name)?.nitrogenKgPerHa ?? 0;
    return text(right + 2, y + h / 2 + 0.9, free, { pt: 6.8, bold: free === words.say("free.ready"), room: 16.2 }) +
      text(edge - 0.8, y + h / 2 + 0.9, String(nitrogenFigure(nitrogen, sheet.scenario.units)), { pt: 6.8, anchor: "end" });
  });
  return [...cells, ...layout.yards.map((row) => yardLines(layout, row))].join("");
}

const ROOM = 22.2;

/** One line for one group, two for more. */
function yardLines({ sheet, right, words }: Layout, { of, y, h }: Row<{ readonly name: string }>): string {
  const told = yardWords(sheet, of.name, words);
  if (told.length < 2) return told.map((one) => text(right + 2, y + h / 2 + 0.9, one, { pt: 6.2, room: ROOM })).join("");
  const half = Math.ceil(told.length / 2);
  const lines = [told.slice(0, half), told.slice(half)].map((some) => some.join(", "));
  return lines.map((one, i) => text(right + 2, y + h / 2 - 0.3 + 2.1 * i, one, { pt: 5.4, room: ROOM })).join("");
}

/** "11 days (5 to 25)"; where several groups stand in the yard, each with its letter, as days of different animals do not add up. */
export function yardWords(sheet: Sheet, yard: string, words: Words): readonly string[] {
  const groups = sheet.scenario.groups.filter((group) => daysIn(sheet, group, yard) > 0);
  return groups.map((group) => {
    const planned = daysIn(sheet, group, yard);
    const told = toldYardDays(planned, planned === daysIn(sheet, group, null) ? kindsOfYear(sheet, group) : [], words);
    return groups.length > 1 ? `${group.letter} ${told}` : told;
  });
}

/** Days that a group stands in one yard, or, for null, in any. */
function daysIn({ plan }: Sheet, group: Group, yard: string | null): number {
  const stays = plan.stays.filter((stay) => stay.group === group.name && stay.yard !== null && (yard === null || stay.yard === yard));
  return stays.reduce((sum, stay) => sum + daysBetween(stay.firstDay, stay.lastDay) + 1, 0);
}

/** Days over all yards, where they are known; a group in two of them has no range for either. */
function kindsOfYear({ made: { hay } }: Sheet, { name }: Group): readonly number[] {
  return hay === null ? [] : [hay.dry, hay.usual, hay.wet].flatMap((year) => year.yardDays[name] ?? []);
}
