/** The season grid on paper, as Chromium lays it out. */
import { describe, expect, it } from "vitest";
import type { Sheet } from "../../src/sheets/made.js";
import { PAPER_NAMES, type PaperName } from "../../src/sheets/paper.js";
import { seasonGridHtml } from "../../src/sheets/season-grid-html.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { TINY, TINY_MADE, TINY_PLAN, TINY_REPORT } from "../golden/tiny-season.js";
import { busySeason } from "./busy-season.js";
import { largeSeason } from "./large-season.js";
import { BROWSER, usePress } from "./print-checks.js";

const words = englishWords();

function gridOn(paper: PaperName, { scenario, plan, report, made }: Sheet): string {
  return seasonGridHtml(scenario, plan, report, made, words, { paper });
}

describe("the season grid in print", () => {
  const press = usePress();

  it.skipIf(!BROWSER).each(PAPER_NAMES)("of a full season is whole and readable on two sheets of %s, in a wide sans and in a narrow one", async (paper) => {
    expect(await press.faults(gridOn(paper, busySeason()), paper, { pages: 2 })).toEqual([]);
  });

  it.skipIf(!BROWSER)("of a planned farm, and of one with a bit of everything, too", async () => {
    expect(await press.faults(gridOn("a4", plannedFarm("withy-end")), "a4", { pages: 2 })).toEqual([]);
    expect(await press.faults(gridOn("a4", { scenario: TINY, plan: TINY_PLAN, report: TINY_REPORT, made: TINY_MADE }), "a4", { pages: 1 })).toEqual([]);
  });

  it.skipIf(!BROWSER).each([["a4", 12], ["letter", 12]] as const)("of 400 days, 40 cells and eight groups is split by days and by field on %s", async (paper, pages) => {
    expect(await press.faults(gridOn(paper, largeSeason()), paper, { pages })).toEqual([]);
  }, 180_000);
});
