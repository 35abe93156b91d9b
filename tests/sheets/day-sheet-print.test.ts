/** Day sheets on paper, as Chromium lays them out. */
import { describe, expect, it } from "vitest";
import { NO_CALLS } from "../../src/farm/calls.js";
import { daySheetHtml } from "../../src/sheets/day/day-sheet-html.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { BROWSER, usePress } from "./print-checks.js";

const words = englishWords();

describe.each(["a4", "letter"] as const)("day sheets on %s", (paper) => {
  const press = usePress();
  const sheetOf = (farm: "withy-end" | "rushy-leys", day: string): string =>
    daySheetHtml(plannedFarm(farm), words, { day, printedOn: "2027-04-01", calls: NO_CALLS, paper });

  it.skipIf(!BROWSER)("print a day with a move on one page, whole and readable", async () => {
    expect(await press.faults(sheetOf("rushy-leys", "2027-06-13"), paper, { pages: 1 })).toEqual([]);
  });

  // a day of two tows and eight tasks, and the evening before the season
  it.skipIf(!BROWSER)("print as many pages as they say", async () => {
    for (const day of ["2027-06-16", "2027-04-09"]) {
      const html = sheetOf("withy-end", day);
      const pages = html.split('<section class="page"').length - 1;
      expect(await press.faults(html, paper, { pages })).toEqual([]);
    }
  });
});
