/** Season grids of two planned farms, as they were looked at; the page of the smaller one alone, as pages are large. */
import { describe, it } from "vitest";
import { seasonGridHtml } from "../../src/sheets/season-grid-html.js";
import { seasonGridText } from "../../src/sheets/season-grid-text.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { expectGolden } from "../golden/golden.js";

const words = englishWords();

describe("the season grid of planned farms", () => {
  it.each(["withy-end", "rushy-leys"] as const)("is the text that was looked at: %s", (name) => {
    const { scenario, plan, report, made } = plannedFarm(name);
    expectGolden(`${name}/season-grid.txt`, seasonGridText(scenario, plan, report, made, words, { columns: 120 }));
  });

  it("is the page that was looked at", () => {
    const { scenario, plan, report, made } = plannedFarm("rushy-leys");
    expectGolden("rushy-leys/season-grid.html", seasonGridHtml(scenario, plan, report, made, words));
  });
});
