/** Month and week sheets on paper, as Chromium lays them out. */
import { describe, expect, it } from "vitest";
import { monthSheetHtml } from "../../src/sheets/month/month-sheet.js";
import { weekSheetHtml } from "../../src/sheets/week/week-sheet.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { BROWSER, usePress } from "./print-checks.js";

describe.each(["a4", "letter"] as const)("month and week sheets on %s", (paper) => {
  const press = usePress();
  const words = englishWords();
  const sheet = plannedFarm("withy-end");

  it.skipIf(!BROWSER)("print a month on one page, whole and readable", async () => {
    expect(await press.faults(monthSheetHtml(sheet, words, { month: "2027-07", paper }), paper, { pages: 1 })).toEqual([]);
  });

  it.skipIf(!BROWSER)("print a week, whole and readable", async () => {
    const html = weekSheetHtml(sheet, words, { week: "2027-06-16", paper });
    expect(await press.faults(html, paper, { pages: html.split('<section class="page"').length - 1 })).toEqual([]);
  });
});
