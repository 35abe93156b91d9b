/** Days that are hard on a sheet: names of all sorts, forty cells, eleven moves, nobody at home, the evening before, the last day. */
import { describe, expect, it } from "vitest";
import { NO_CALLS } from "../../src/farm/calls.js";
import { addDays } from "../../src/quantity/calendar.js";
import { daySheetHtml } from "../../src/sheets/day/day-sheet-html.js";
import { daySheet } from "../../src/sheets/day/day-sheet.js";
import type { Sheet } from "../../src/sheets/made.js";
import { orderedPlan } from "../../src/plan/standings.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { TINY_MADE, TINY_REPORT } from "../golden/tiny-season.js";
import { BROWSER, usePress } from "./print-checks.js";
import { faultsOf } from "./well-formed.js";
import { largeSeason } from "./large-season.js";

const words = englishWords();
const given = (day: string) => ({ day, printedOn: "2027-04-01", calls: NO_CALLS });

/** Eleven groups that all move to other ground on the third day. */
function elevenMoves(): Sheet {
  const cells = Array.from({ length: 22 }, (_, i) => cell(`P${i + 1}`, { field: i < 11 ? "Lower ground" : "Upper ground" }));
  const groups = Array.from({ length: 11 }, (_, i) => group(`Herd ${i + 1}`, { letter: `C${"abcdefghijk"[i]!}` }));
  const scenario = tinyFarm({ days: 8, firstDay: "2027-05-03", cells, groups });
  const stays = groups.flatMap(({ name }, i) => [
    { group: name, cell: cells[i]!.name, yard: null, firstDay: "2027-05-03", lastDay: "2027-05-04" },
    { group: name, cell: cells[i + 11]!.name, yard: null, firstDay: "2027-05-05", lastDay: "2027-05-10" },
  ]);
  return { scenario, plan: orderedPlan(stays, [], scenario), report: { ...TINY_REPORT, firstDay: "2027-05-03", cells: [], charges: [] }, made: TINY_MADE };
}

function nobodyHome(): Sheet {
  const sheet = plannedFarm("withy-end");
  return { ...sheet, scenario: { ...sheet.scenario, people: sheet.scenario.people.map((person) => ({ ...person, away: [sheet.scenario.season] })) } };
}

const large = largeSeason();
const withy = plannedFarm("withy-end");
const { firstDay, lastDay } = withy.scenario.season;

const DAYS: readonly (readonly [what: string, sheet: Sheet, day: string])[] = [
  ["eleven moves", elevenMoves(), "2027-05-05"],
  ["nobody at home on a day of a tow", nobodyHome(), "2027-06-16"],
  ["eight groups with all sorts of names on forty cells", large, addDays(large.scenario.season.firstDay, 5)],
  ["the same on a day without a move", large, addDays(large.scenario.season.firstDay, 7)],
  ["the evening before the season", withy, addDays(firstDay, -1)],
  ["the first day", withy, firstDay],
  ["the last day", withy, lastDay],
];

describe.each(DAYS)("%s", (_, sheet, day) => {
  const press = usePress();

  it("is well-formed, lets nothing break out of the page, and tells every task", () => {
    const html = daySheetHtml(sheet, words, { ...given(day), paper: "a4" });
    expect(faultsOf(html)).toEqual([]);
    expect(html).not.toMatch(/<script|<b>Top|<i>/);
    for (const { number } of daySheet(sheet, words, given(day)).parts.flatMap(({ tasks }) => tasks)) expect(html).toContain(`<div class="number">${number}</div>`);
  });

  it.skipIf(!BROWSER)("prints as many pages as it says, nothing cut, nothing over another", async () => {
    // The first two, which are longest, on the shorter paper too.
    for (const paper of DAYS.slice(0, 2).some(([, one]) => one === sheet) ? (["a4", "letter"] as const) : (["a4"] as const)) {
      const html = daySheetHtml(sheet, words, { ...given(day), paper });
      expect(await press.faults(html, paper, { pages: html.split('<section class="page"').length - 1 })).toEqual([]);
    }
  }, 60_000);
});

describe("who does it", () => {
  it("tells that nobody of the farm is at home, and that a tow waits", () => {
    const text = JSON.stringify(daySheet(nobodyHome(), words, given("2027-06-16")).head);
    expect(text).toContain("Nobody of the farm is at home");
    expect(text).toContain("Nobody at home tows");
  });
});
