/**
 * More of what a farm has never makes its cheapest season dearer, and the order in which it is written down changes nothing:
 * on seasons so short that every way to live them is tried.
 */
import { describe, expect, it } from "vitest";
import type { Scenario } from "../../src/farm/scenario.js";
import { buildSeason } from "../../src/season/build-season.js";
import { cell } from "../fixtures/tiny-farm.js";
import { draftOf } from "../programme/drafts.js";
import { everyWay, judged, type Way, copyOf } from "./enumerate.js";
import { tinySeason, type TinySize } from "./tiny-seasons.js";

const SLOW = 120_000;
/** So small that a cell more can be tried in full as well. */
const SIZES: readonly TinySize[] = [
  { name: "grazers, one cell", days: 8, cells: 1, groups: ["grazers"] },
  { name: "grazers, two cells", days: 5, cells: 2, groups: ["grazers"] },
  { name: "grazers and birds", days: 4, cells: 1, groups: ["grazers", "birds"] },
  { name: "birds and pigs", days: 4, cells: 1, groups: ["birds", "pigs"] },
  { name: "two groups of grazers", days: 3, cells: 2, groups: ["grazers", "grazers"] },
  { name: "grazers and pigs", days: 3, cells: 2, groups: ["grazers", "pigs"] },
];
const SEEDS = Array.from({ length: 36 }, (_, i) => 400 + i);
const seasonOf = (seed: number): Scenario => tinySeason(SIZES[seed % SIZES.length], seed);

/** The least cost of all ways without a cut of the planner's; Infinity where none keeps the rules. The check judges the best. */
function least(scenario: Scenario): number {
  const draft = draftOf(scenario);
  let best: { readonly cost: number; readonly way: Way } | null = null;
  everyWay(draft.season, null, (way) => {
    draft.load(way.place, way.cuts);
    if (draft.over === 0 && draft.cost < (best?.cost ?? Infinity)) best = { cost: draft.cost, way: copyOf(way) };
  });
  if (!best) return Infinity;
  const { cost, way } = best as { cost: number; way: Way };
  const { report, keeps } = judged(buildSeason(scenario), way);
  expect({ keeps, cost: report.cost }).toEqual({ keeps: true, cost: expect.closeTo(cost, 6) });
  return cost;
}

/** Off is what ground itself costs: long grass, wants left undone, cover short at the end. With these a cell more may well cost more. */
function withoutChargesOfGround(scenario: Scenario): Scenario {
  const { farm } = scenario.rules;
  const off = { "upper-cover": { ...farm["upper-cover"], use: "off" as const }, "closing-cover": { ...farm["closing-cover"], use: "off" as const } };
  const cells = scenario.cells.map((own) => ({ ...own, wants: [] }));
  return { ...scenario, cells, rules: { farm: { ...farm, ...off }, fields: {}, groups: {} } };
}

function withCell(scenario: Scenario): Scenario {
  const fresh = cell("Z", { field: scenario.fields[0].name, coverKgPerHa: 2500 });
  return {
    ...scenario, cells: [...scenario.cells, fresh],
    fields: scenario.fields.map((field, i) => (i === 0 ? { ...field, cells: [...field.cells, "Z"] } : field)),
    groups: scenario.groups.map((group) => ({ ...group, mayEnter: [...group.mayEnter, "Z"] })),
  };
}

const more = (figure: number | null, by: number): number | null => (figure === null ? null : figure + by);

const MORE: Readonly<Record<string, (scenario: Scenario) => Scenario>> = {
  ground: withCell,
  kit: (s) => ({ ...s, kit: { ...s.kit, nets: more(s.kit.nets, 1), reels: more(s.kit.reels, 2), energisers: more(s.kit.energisers, 1) } }),
  "kit that is not counted": (s) => ({ ...s, kit: { ...s.kit, nets: null, reels: null, energisers: null } }),
  "minutes of people": (s) => ({ ...s, people: s.people.map((p) => ({ ...p, minutesByWeekday: p.minutesByWeekday.map((m) => m + 45), minutesByDay: {}, away: [] })) }),
  hay: (s) => ({ ...s, hay: { ...s.hay, inStoreKg: s.hay.inStoreKg + 400 } }),
  "room in the yard": (s) => ({ ...s, yards: s.yards.map((yard) => ({ ...yard, room: null, open: [s.season] })) }),
};

describe("more", () => {
  const found = new Map<number, number>();
  const plain = (seed: number): number => {
    if (!found.has(seed)) found.set(seed, least(withoutChargesOfGround(seasonOf(seed))));
    return found.get(seed)!;
  };

  it.each(Object.keys(MORE))("%s never costs more", { timeout: SLOW }, (what) => {
    let [cheaper, tried] = [0, 0];
    for (const seed of SEEDS) {
      const cost = least(MORE[what](withoutChargesOfGround(seasonOf(seed))));
      expect({ seed, what, dearer: cost > plain(seed) + 1e-6 ? cost - plain(seed) : 0 }).toEqual({ seed, what, dearer: 0 });
      if (Number.isFinite(cost)) tried++;
      if (cost < plain(seed) - 1e-6) cheaper++;
    }
    expect(tried).toBeGreaterThan(15);
    // or it is not more of anything
    expect(cheaper).toBeGreaterThan(0);
  });
});

describe("the order in which a farm is written down", () => {
  const reversed = <T>(list: readonly T[]): T[] => [...list].reverse();

  it.each<[string, (scenario: Scenario) => Scenario]>([
    ["of its groups", (s) => ({ ...s, groups: reversed(s.groups) })],
    ["of its cells", (s) => ({ ...s, cells: reversed(s.cells), fields: s.fields.map((field) => ({ ...field, cells: reversed(field.cells) })), groups: s.groups.map((g) => ({ ...g, mayEnter: reversed(g.mayEnter) })) })],
    ["of its fields, yards and people", (s) => ({ ...s, fields: reversed(s.fields), yards: reversed(s.yards), people: reversed(s.people) })],
  ])("%s does not change what its cheapest season costs", { timeout: SLOW }, (_, permuted) => {
    let finite = 0;
    for (const seed of SEEDS) {
      const [first, second] = [least(seasonOf(seed)), least(permuted(seasonOf(seed)))];
      if (Number.isFinite(first)) finite++;
      expect({ seed, cost: second }).toEqual({ seed, cost: Number.isFinite(first) ? expect.closeTo(first, 6) : Infinity });
    }
    expect(finite).toBeGreaterThan(15);
  });
});
