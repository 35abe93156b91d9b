/**
 * What each rule's half is for: planned without it, the cheapest way through a tiny season breaks the check or costs
 * other than the programme says; planned with it, it does neither. A half taken out fails the test of its name.
 */
import { describe, expect, it } from "vitest";
import type { Half as RuleHalf } from "../../src/programme/half.js";
import { HALVES, NO_HALF } from "../../src/programme/rules/index.js";
import { RULE_IDS } from "../../src/rules/rule.js";
import { buildSeason } from "../../src/season/build-season.js";
import type { Season } from "../../src/season/season.js";
import { tinyFarm } from "../fixtures/tiny-farm.js";
import { copyOf, everyWay, judged, type Way } from "../oracle/enumerate.js";
import { draftOf, withoutHalf } from "./drafts.js";
import { TEMPTING, type Half } from "./tempting.js";

/** The cheapest way of all that these halves find nothing broken in. */
function cheapest(season: Season, halves: readonly RuleHalf[]): { cost: number; way: Way } {
  const draft = draftOf(season, halves);
  let best: { cost: number; way: Way } | null = null;
  everyWay(season, null, (way) => {
    draft.load(way.place, way.cuts);
    if (draft.over === 0 && (!best || draft.cost < best.cost)) best = { cost: draft.cost, way: copyOf(way) };
  });
  if (!best) throw new Error("no way keeps the rules");
  return best;
}

const rules = Object.keys(TEMPTING) as Half[];

describe.each(rules)("%s", (rule) => {
  const { what, farm } = TEMPTING[rule];
  const season = buildSeason(tinyFarm(farm));

  it(`without its half the best plan ${what === "breaks" ? "breaks the check" : "costs more than the programme knows"}`, () => {
    const { cost, way } = cheapest(season, withoutHalf(rule));
    const { report } = judged(season, way);
    const own = report.breaches.map((breach) => breach.rule);
    if (what === "breaks") expect(own).toContain(rule);
    else {
      expect(own).toEqual([]);
      expect(report.chargesByRule[rule]).toBeGreaterThan(0.1);
      expect(report.cost - cost).toBeCloseTo(report.chargesByRule[rule], 6);
    }
  });

  it("with all halves it keeps every rule, at the check's cost", () => {
    const { cost, way } = cheapest(season, HALVES);
    const { report } = judged(season, way);
    expect(report.breaches).toEqual([]);
    expect(cost).toBeCloseTo(report.cost, 6);
  });
});

it("every rule has a half or a reason for none", () => {
  expect(RULE_IDS.filter((id) => NO_HALF[id] === undefined)).toEqual(RULE_IDS.filter((id) => HALVES.some((half) => half.id === id)));
  expect([...rules].sort()).toEqual(RULE_IDS.filter((id) => NO_HALF[id] === undefined).sort());
});
