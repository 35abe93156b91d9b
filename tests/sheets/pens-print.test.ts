/** A pen's sheet on paper, as Chromium lays it out; how many pages it takes hangs on its cells. */
import { describe, expect, it } from "vitest";
import { pensFound } from "../../src/cli/pens.js";
import { penSheet } from "../../src/sheets/pens/page.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { BROWSER, usePress } from "./print-checks.js";

describe("a pen's sheet in print", () => {
  const press = usePress();
  const { scenario, plan } = plannedFarm("withy-end");
  const { pens, cautions } = pensFound(scenario, plan);

  it.skipIf(!BROWSER).each([["Broilers", "a4", 5], ["Broilers", "letter", 5]] as const)("of %s is whole and readable on %s", async (group, paper, pages) => {
    const pen = pens.find((one) => one.group.name === group)!;
    expect(await press.faults(penSheet(scenario, pen, true, cautions, englishWords(), paper), paper, { pages })).toEqual([]);
  });
});
