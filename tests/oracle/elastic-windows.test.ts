/** What breaks least in a window where every rule may give: as little as the least of all ways to live the season breaks. */
import { beforeAll, describe, expect, it } from "vitest";
import { handRule } from "../../src/programme/hand-rule.js";
import { lessenWindow } from "../../src/programme/window/elastic.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import { useOf, type Scenario } from "../../src/farm/scenario.js";
import type { Season } from "../../src/season/season.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { draftOf } from "../programme/drafts.js";
import { everyWay, underTheMower } from "./enumerate.js";
import { TINY_SIZES, tinySeason } from "./tiny-seasons.js";

const SEASONS = 24;

let highs: PricingSolver;
beforeAll(() => {
  highs = highsSolver();
});

/** A tiny season with its yards shut: nowhere to go but onto the ground. */
function yardless(seed: number): Scenario {
  const scenario = tinySeason(TINY_SIZES[seed % TINY_SIZES.length], 300 + seed);
  return { ...scenario, yards: scenario.yards.map((yard) => ({ ...yard, room: seed % 2 === 0 ? 0 : yard.room, open: seed % 2 === 0 ? yard.open : [] })) };
}

/** What the least of all ways breaks, all of them tried. */
function leastOfAll(season: Season): number {
  const draft = draftOf(season);
  let least = Infinity;
  everyWay(season, null, ({ place, cuts }) => {
    // Windows put nobody where he may never go, nor under the mower.
    if (underTheMower(season, { place, cuts }) || place.some((days, g) => days.some((p) => p >= 0 && !season.groups[g].mayEnter[p]))) return;
    draft.load(place, cuts);
    least = Math.min(least, draft.over);
  });
  return least;
}

/** Broken wholes of the farm count one step for being broken at all, which a window's straight prices leave out. */
const straight = (scenario: Scenario): boolean => (["grass-in-hand", "nitrogen-ceiling"] as const).every((rule) => useOf(scenario, rule, null, null) !== "hard");

describe("elastic windows", () => {
  it("break as little as the least of every way to live a tiny season", { timeout: 60_000 }, async () => {
    let [seen, broken, lessened] = [0, 0, 0];
    for (let seed = 0; seed < SEASONS; seed++) {
      const scenario = yardless(seed);
      if (!straight(scenario)) continue;
      const draft = draftOf(scenario);
      const free = draft.season.groups.map((group, g) => ({ group: g, from: group.present.indexOf(1), to: group.present.lastIndexOf(1) })).filter((f) => f.from >= 0);
      if (free.length === 0) continue;
      handRule(draft);
      const before = draft.over;
      let end = "better";
      for (let round = 0; round < 8 && end === "better"; round++) end = await lessenWindow(draft, free, highs, { cards: 20_000, nodes: 2000, guardSeconds: 20, give: Infinity });
      const least = leastOfAll(draft.season);
      expect({ seed, end, over: draft.over }).toEqual({ seed, end: "proven", over: expect.closeTo(least, 1) });
      seen++;
      if (least > 0) broken++;
      if (draft.over < before - 0.01) lessened++;
    }
    expect(seen).toBeGreaterThan(15);
    expect(broken).toBeGreaterThan(10);
    expect(lessened).toBeGreaterThan(6);
  });
});
