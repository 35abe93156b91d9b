/** What windows have proven is said only of a plan that a whole round of them left as it was, and holds of it. */
import { describe, expect, it } from "vitest";
import { redoneWords } from "../../src/decide/redone-words.js";
import { handRule } from "../../src/programme/hand-rule.js";
import { mend } from "../../src/programme/window/mend.js";
import { buildSeason } from "../../src/season/build-season.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { draftOf } from "../programme/drafts.js";

const FARM = tinyFarm({ cells: [cell("A1"), cell("A2"), cell("A3")], groups: [group("Cows"), group("Heifers")] });
const season = buildSeason(FARM);
const pass = { groups: [0], days: 14 };

describe("redoneWords", () => {
  it("names the groups and days of a settled plan", () => {
    const words = redoneWords(season, { mended: { windows: 30, better: 2, settled: true, proven: [pass, { groups: [0, 1], days: 6 }] }, proven: false });
    expect(words).toHaveLength(1);
    expect(words[0]).toContain("14 days of Cows, 6 days of Cows and Heifers");
  });

  it.each([
    ["no window was done", { mended: null, proven: false }],
    ["the last round still found a better plan", { mended: { windows: 9, better: 3, settled: false, proven: [pass] }, proven: false }],
    ["no pass was proven to the end", { mended: { windows: 9, better: 0, settled: true, proven: [] }, proven: false }],
    ["the whole season was", { mended: { windows: 9, better: 0, settled: true, proven: [pass] }, proven: true }],
  ])("says nothing where %s", (_, race) => {
    expect(redoneWords(season, race)).toEqual([]);
  });
});

describe("mend", () => {
  it("is settled once a whole round finds nothing, and not before", async () => {
    const draft = draftOf(season);
    handRule(draft);
    const watch = { stop: () => false, better: () => undefined };
    const first = await mend(draft, [pass], highsSolver(), 1, watch);
    expect(first.better).toBeGreaterThan(0);
    expect(first.settled).toBe(false);
    const cost = draft.cost;
    const again = await mend(draft, [pass], highsSolver(), 5, watch);
    expect(again.settled).toBe(true);
    expect(draft.cost).toBeLessThanOrEqual(cost);
    expect((await mend(draft, [pass], highsSolver(), 1, watch)).better).toBe(0);
  });

  it("is not settled when it was stopped", async () => {
    const draft = draftOf(season);
    handRule(draft);
    expect((await mend(draft, [pass], highsSolver(), 3, { stop: () => true, better: () => undefined })).settled).toBe(false);
  });
});
