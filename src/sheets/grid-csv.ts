import { addDays, daysBetween, spanHolds, type IsoDate } from "../quantity/calendar.js";
import type { Scenario } from "../farm/scenario.js";
import type { Cut, Plan, Stay } from "../plan/plan.js";
import { guardBox } from "../plan/guarded-box.js";
import type { GridForm } from "../plan/read-grid.js";

/**
 * The plan as a table for spreadsheets (RFC 4180, comma, ISO days), the same whatever the order of stays and cuts. An apostrophe stands before
 * names that a spreadsheet would take for something else (`guardBox`). A byte order mark stands at the head where letters beyond ASCII follow:
 * spreadsheets open other files in the character set of their country.
 *
 * @param form `cell`: a row a cell and yard, letters inside; `day`: a row a day, places inside; `group`: a row a group
 */
export function gridCsv(scenario: Scenario, plan: Plan, form: GridForm = "cell"): string {
  const days = daysOf(scenario);
  const rows = form === "cell" ? cellRows(scenario, plan, days) : groupRows(scenario, plan, days);
  const table = [[form, ...days], ...rows.map((row) => row.map(guardBox))];
  const upright = form === "day" ? table[0]!.map((_, i) => table.map((row) => row[i]!)) : table;
  const text = upright.map((row) => `${row.map(boxed).join(",")}\r\n`).join("");
  return /[^\0-\x7F]/.test(text) ? `\uFEFF${text}` : text;
}

function daysOf(scenario: Scenario): readonly IsoDate[] {
  const { firstDay, lastDay } = scenario.season;
  return Array.from({ length: daysBetween(firstDay, lastDay) + 1 }, (_, i) => addDays(firstDay, i));
}

function boxed(text: string): string {
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function cellRows(scenario: Scenario, plan: Plan, days: readonly IsoDate[]): string[][] {
  const letters = new Map(scenario.groups.map((group) => [group.name, group.letter]));
  const standing = (stays: readonly Stay[], day: IsoDate): string[] =>
    scenario.groups.filter((group) => stays.some((stay) => stay.group === group.name && spanHolds(stay, day))).map((group) => letters.get(group.name)!);
  const cells = scenario.cells.map((cell) => {
    const stays = plan.stays.filter((stay) => stay.cell === cell.name);
    const cuts = plan.cuts.filter((cut) => cut.cell === cell.name);
    return [cell.name, ...days.map((day) => [...standing(stays, day), ...cutsOn(cuts, day).map((cut) => CUT_WORDS[cut])].join(" "))];
  });
  const yards = scenario.yards.map((yard) => {
    const stays = plan.stays.filter((stay) => stay.yard === yard.name);
    return [`yard: ${yard.name}`, ...days.map((day) => standing(stays, day).join(" "))];
  });
  return [...cells, ...yards];
}

const CUT_WORDS = { hay: "cut", topping: "topping" } as const;

/** The kinds of cut of a day, hay first. */
function cutsOn(cuts: readonly Cut[], day: IsoDate): readonly Cut["cut"][] {
  return (["hay", "topping"] as const).filter((kind) => cuts.some((cut) => cut.day === day && cut.cut === kind));
}

function groupRows(scenario: Scenario, plan: Plan, days: readonly IsoDate[]): string[][] {
  const groups = scenario.groups.map((group) => {
    const stays = plan.stays.filter((stay) => stay.group === group.name);
    const nights = days.map((day) => stays.filter((stay) => spanHolds(stay, day)).map((stay) => stay.cell ?? stay.yard!).join(" and ") || "away");
    return [group.name, ...nights.map((night, i) => (moved(nights, i) ? `${nights[i - 1]}>${night}` : night))];
  });
  const cutsOf = (cell: string, day: IsoDate): readonly string[] => cutsOn(plan.cuts.filter((cut) => cut.cell === cell), day).map((kind) => `${cell} ${kind}`);
  const cuts = days.map((day) => scenario.cells.flatMap((cell) => cutsOf(cell.name, day)).join("; "));
  return [...groups, ["cut", ...cuts]];
}

/** A move inside the farm; coming and going are told by `away` alone. */
function moved(nights: readonly string[], i: number): boolean {
  return i > 0 && nights[i] !== nights[i - 1] && nights[i] !== "away" && nights[i - 1] !== "away";
}
