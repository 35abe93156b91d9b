/** A draft changed run by run is what it would be if judged anew, and a change taken back leaves no trace. */
import { describe, expect, it } from "vitest";
import { studyFarm } from "../../src/bench/study-farms.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { Draft, type Run } from "../../src/programme/draft.js";
import { moveSense, proposeMove } from "../../src/programme/moves.js";
import { chargesOf } from "../../src/programme/plan-of.js";
import { seededRandom } from "../../src/programme/random.js";
import { chanceOf, type Chance } from "../oracle/chance.js";
import { cell, tinyFarm } from "../fixtures/tiny-farm.js";
import { tinySeason } from "../oracle/tiny-seasons.js";
import { cows, hens } from "../rules/animals.js";
import { draftOf } from "./drafts.js";
import { randomCuts, randomRun, scramble, seen } from "./plans.js";

const FARMS: readonly (readonly [string, Scenario])[] = [
  ["a study farm of four groups", studyFarm({ name: "M", cells: 8, groups: 4, days: 80 })],
  ["a study farm of six groups", studyFarm({ name: "L", cells: 9, groups: 6, days: 60 }, 5)],
  ["tight rules of all kinds", tinySeason({ name: "tight", days: 30, cells: 4, groups: ["grazers", "birds", "pigs", "companion"] }, 41)],
  ["tight rules over the year's end", tinySeason({ name: "tight", days: 24, cells: 3, groups: ["grazers", "grazers", "birds"] }, 47)],
];

/** The same places and cuts, judged from nothing. */
function anew(draft: Draft): Draft {
  const fresh = draftOf(draft.season);
  fresh.load(draft.place, draft.cuts);
  return fresh;
}

function sameJudgement(draft: Draft): void {
  const fresh = anew(draft);
  const scale = Math.max(1, Math.abs(fresh.cost));
  expect(Math.abs(draft.cost - fresh.cost) / scale).toBeLessThan(1e-6);
  expect(Math.abs(draft.over - fresh.over)).toBeLessThan(1e-6 * Math.max(1, fresh.over));
  expect(Math.abs(draft.hayFed - fresh.hayFed)).toBeLessThan(1e-6 * Math.max(1, fresh.hayFed));
}

/** One change, as the search makes them or quite at random. */
function someChange(draft: Draft, chance: Chance, propose: () => ReturnType<typeof proposeMove>): { runs: readonly Run[]; cut: ReturnType<typeof randomCuts> | null } | null {
  if (chance.luck(0.6)) return propose();
  if (chance.luck(0.1)) return { runs: [], cut: randomCuts(draft, chance) };
  const run = randomRun(draft, chance);
  return run && { runs: [run], cut: null };
}

describe.each(FARMS)("%s", (_, scenario) => {
  it("costs after each change what it costs judged anew", { timeout: 60_000 }, () => {
    const chance = chanceOf(3);
    const draft = draftOf(scenario);
    const [sense, random] = [moveSense(draft.season), seededRandom(5)];
    let changes = 0;
    for (let i = 0; i < 600; i++) {
      const change = someChange(draft, chance, () => proposeMove(draft, sense, random));
      if (!change) continue;
      draft.apply(change.runs, change.cut);
      changes++;
      if (i % 3 === 0) sameJudgement(draft);
    }
    expect(changes).toBeGreaterThan(200);
  });

  it("is just as it was after a change is taken back", { timeout: 60_000 }, () => {
    const chance = chanceOf(4);
    const draft = draftOf(scenario);
    scramble(draft, chance, 60);
    const [sense, random] = [moveSense(draft.season), seededRandom(6)];
    for (let i = 0; i < 250; i++) {
      const change = someChange(draft, chance, () => proposeMove(draft, sense, random));
      if (!change) continue;
      const before = seen(draft);
      const undo = draft.apply(change.runs, change.cut);
      undo();
      expect(seen(draft)).toBe(before);
      if (chance.luck(0.5)) draft.apply(change.runs, change.cut);
    }
  });

  it("gives up only changes that are as much worse as it was told, and leaves no trace of them", { timeout: 60_000 }, () => {
    const chance = chanceOf(6);
    const draft = draftOf(scenario);
    scramble(draft, chance, 40);
    let given = 0;
    for (let i = 0; i < 300; i++) {
      const run = randomRun(draft, chance);
      if (!run) continue;
      const patience = { penalty: chance.between(1, 200), worse: chance.between(0, 60) };
      const worth = draft.cost + patience.penalty * draft.over;
      const before = seen(draft);
      const undo = draft.attempt([run], null, patience);
      if (undo) {
        undo();
        continue;
      }
      given++;
      expect(seen(draft)).toBe(before);
      const back = draft.apply([run]);
      expect(draft.cost + patience.penalty * draft.over - worth).toBeGreaterThan(patience.worse - 1e-6);
      back();
    }
    expect(given).toBeGreaterThan(10);
  });

  it("is to the cent the draft judged anew after changes kept, taken back and given up in any order", { timeout: 60_000 }, () => {
    const chance = chanceOf(9);
    const draft = draftOf(scenario);
    const [sense, random] = [moveSense(draft.season), seededRandom(7)];
    const ends = { kept: 0, back: 0, given: 0 };
    for (let i = 0; i < 1500; i++) {
      const change = someChange(draft, chance, () => proposeMove(draft, sense, random));
      if (!change) continue;
      const undo = draft.attempt(change.runs, change.cut, { penalty: 100, worse: chance.between(0, 80) });
      if (!undo) ends.given++;
      else if (chance.luck(0.3)) {
        undo();
        ends.back++;
      } else ends.kept++;
      if (i % 50 === 49) sameJudgement(draft);
    }
    for (const count of Object.values(ends)) expect(count).toBeGreaterThan(20);
  });

  it("takes back the latest change only", () => {
    const chance = chanceOf(10);
    const draft = draftOf(scenario);
    const [first, second] = Array.from({ length: 40 }, () => randomRun(draft, chance)).filter((run) => run !== null);
    const undo = draft.apply([first!]);
    draft.apply([second!]);
    expect(undo).toThrow("only the latest");
  });

  it("has charges by rule that come to its cost", () => {
    const draft = draftOf(scenario);
    scramble(draft, chanceOf(7), 80);
    expect(Object.values(chargesOf(draft)).reduce((sum, money) => sum + money, 0)).toBeCloseTo(draft.cost, 6);
  });

  it("charges each group-day that differs from a plan it is to keep to", () => {
    const chance = chanceOf(8);
    const base = draftOf(scenario);
    scramble(base, chance, 40);
    const place = base.place.map((days) => days.slice());
    const draft = new Draft(base.season, base.simulator, undefined, { place, price: 7 });
    draft.load(place, base.cuts);
    expect(draft.changed).toBe(0);
    expect(draft.cost).toBeCloseTo(base.cost, 6);
    scramble(draft, chance, 20);
    const differ = place.reduce((sum, days, g) => sum + days.reduce((own, p, t) => own + (p === draft.place[g][t] ? 0 : 1), 0), 0);
    expect(draft.changed).toBe(differ);
    expect(draft.cost).toBeCloseTo(anew(draft).cost + 7 * differ, 5);
  });
});

describe("moves that a search proposes", () => {
  it("leave each group in one place and each cell to one group, wherever groups stand", () => {
    // The hens stand in the far field, in which they may not be: no cell there is theirs.
    const scenario = tinyFarm({
      days: 30, cells: [cell("A"), cell("B"), cell("C", { field: "Far", notFor: ["Hens"] })], groups: [cows(), hens({ follows: "Cows" })],
    });
    const draft = draftOf(scenario);
    draft.apply([{ group: 1, from: 5, to: 25, place: 2 }]);
    const [sense, random] = [moveSense(draft.season), seededRandom(8)];
    for (let i = 0; i < 3000; i++) {
      const found = proposeMove(draft, sense, random);
      if (!found) continue;
      for (const { from, to } of found.runs) expect({ i, from, to, inSeason: from >= 0 && from <= to && to < 30 }).toEqual({ i, from, to, inSeason: true });
      const undo = draft.apply(found.runs, found.cut);
      for (let t = 0; t < 30; t++) {
        const places = draft.place.map((days) => days[t]);
        expect({ i, places, held: [0, 1, 2].map((c) => draft.occupant[c * 30 + t]) }).toEqual({ i, places, held: [0, 1, 2].map((c) => places.indexOf(c)) });
      }
      if (i % 2) undo();
    }
  });
});
