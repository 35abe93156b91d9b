/** The programme's simulator lives a plan as the check's replay does: the same grass every morning, the same money by rule. */
import { describe, expect, it } from "vitest";
import { studyFarm } from "../../src/bench/study-farms.js";
import { checkPlan } from "../../src/check/check-plan.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { buildSeason } from "../../src/season/build-season.js";
import type { CellState } from "../../src/programme/cell-state.js";
import type { Draft } from "../../src/programme/draft.js";
import { handRule } from "../../src/programme/hand-rule.js";
import { chargesOf, planOf } from "../../src/programme/plan-of.js";
import { anneal } from "../../src/programme/search.js";
import { snapshot, type Snapshot } from "../../src/programme/snapshot.js";
import { RULE_IDS } from "../../src/rules/rule.js";
import { chanceOf } from "../oracle/chance.js";
import { tinySeason, type TinySize } from "../oracle/tiny-seasons.js";
import { draftOf } from "./drafts.js";
import { scramble } from "./plans.js";

interface Event {
  readonly day: number;
  /** Null for a cut. */
  readonly stay: { readonly group: number; readonly first: number; readonly last: number } | null;
  readonly byOwner: boolean;
  readonly makesHay: boolean;
}

/** What happens in a cell by a draft's places and cuts, in order. */
function eventsOf(draft: Draft, cell: number): Event[] {
  const { season, occupant, cuts } = draft;
  const events: Event[] = [];
  for (let t = 0; t < season.days; ) {
    const group = occupant[cell * season.days + t];
    let end = t + 1;
    while (end < season.days && occupant[cell * season.days + end] === group && !(group >= 0 && season.groups[group].arrives[end])) end++;
    if (group >= 0) events.push({ day: t, stay: { group, first: t, last: end - 1 }, byOwner: false, makesHay: false });
    t = end;
  }
  for (const { day, makesHay } of season.cells[cell].ownerCuts) events.push({ day, stay: null, byOwner: true, makesHay });
  for (const day of cuts[cell]) events.push({ day, stay: null, byOwner: false, makesHay: true });
  return events.sort((a, b) => a.day - b.day);
}

/** The cell on the morning of a day; null inside a stay of birds or pigs, which takes its ground by whole weeks. */
function morningOf(draft: Draft, cell: number, events: readonly Event[], day: number): CellState | null {
  const { simulator, season } = draft;
  const s = simulator.fresh(cell);
  for (const { stay, day: on, byOwner, makesHay } of events) {
    if (on >= day) break;
    if (!stay) simulator.cut(s, on, byOwner, makesHay);
    else if (stay.last < day) simulator.stay(s, stay.group, stay.first, stay.last);
    else if (season.scenario.groups[stay.group].strip) return null;
    else simulator.stay(s, stay.group, stay.first, day - 1);
  }
  simulator.advance(s, day);
  return s;
}

/** Holds every morning of every cell, and on a valid plan every rule's money; answers how many mornings there were. */
function holdPlan(draft: Draft, { place, cuts }: Pick<Snapshot, "place" | "cuts">): number {
  draft.load(place, cuts);
  const { season } = draft;
  const report = checkPlan(season.scenario, planOf(season, { place, cuts }));
  let mornings = 0;
  season.cells.forEach((own, c) => {
    const events = eventsOf(draft, c);
    for (let t = 0; t < season.days; t++) {
      const s = morningOf(draft, c, events, t);
      if (!s) continue;
      mornings++;
      expect({ cell: own.name, t, open: s.open }).toEqual({ cell: own.name, t, open: expect.closeTo(report.cells[c].openHa[t], 9) });
      if (s.open > 1e-6) expect({ cell: own.name, t, cover: s.cover }).toEqual({ cell: own.name, t, cover: expect.closeTo(report.cells[c].coverKgPerHa[t], 6) });
    }
    const [end, state] = [report.cells[c], draft.states[c]];
    expect(state.nitrogen / own.areaHa).toBeCloseTo(end.nitrogenKgPerHa, 6);
    expect(state.opened).toBeCloseTo(end.openedHa, 9);
    expect(state.scratched).toBeCloseTo(end.workedHa, 9);
  });
  const charges = chargesOf(draft);
  if (draft.over === 0) {
    expect(report.breaches).toEqual([]);
    for (const rule of RULE_IDS) expect({ rule, money: charges[rule] }).toEqual({ rule, money: expect.closeTo(report.chargesByRule[rule], 6) });
    expect(draft.cost).toBeCloseTo(report.cost, 6);
  } else expect(report.breaches).not.toEqual([]);
  return mornings;
}

const tight = (groups: TinySize["groups"], days: number, seed: number): Scenario => tinySeason({ name: "tight", days, cells: 4, groups }, seed);

const FARMS: readonly (readonly [string, Scenario])[] = [
  ["a study farm of two groups", studyFarm({ name: "S", cells: 8, groups: 2, days: 60 })],
  ["a study farm of four groups", studyFarm({ name: "M", cells: 9, groups: 4, days: 70 }, 2)],
  ["a study farm of six groups", studyFarm({ name: "L", cells: 9, groups: 6, days: 60 }, 3)],
];

describe.each(FARMS)("%s", (_, scenario) => {
  it("is lived alike in valid plans, from the hand rule's to the best of a short search", { timeout: 60_000 }, () => {
    const draft = draftOf(scenario);
    handRule(draft);
    const plans = [snapshot(draft)];
    anneal(draft, { steps: 4000, hot: 60, cold: 3, lightPenalty: 300, heavyPenalty: 600 }, 9, { stop: () => false, better: (plan) => plans.push(plan) });
    const some = plans.filter((_plan, i) => i === 0 || i === plans.length - 1 || i % Math.ceil(plans.length / 4) === 0);
    expect(some.length).toBeGreaterThan(3);
    for (const plan of some) expect(holdPlan(draftOf(scenario), plan)).toBeGreaterThan(100);
  });
});

describe("tight rules of all kinds", () => {
  it("are lived alike in plans that break many of them", { timeout: 60_000 }, () => {
    let mornings = 0;
    for (let seed = 60; seed < 84; seed++) {
      const groups = ([["grazers", "birds", "pigs"], ["grazers", "companion", "birds"], ["grazers", "grazers", "pigs"]] as const)[seed % 3];
      const draft = draftOf(buildSeason(tight(groups, 16 + (seed % 12), seed)));
      scramble(draft, chanceOf(seed), 5 + (seed % 20));
      // Cuts under somebody's feet are broken for both, and mown by the check alone.
      const cuts = draft.cuts.map((own, c) => own.filter((day) => draft.occupant[c * draft.season.days + day] < 0));
      const under = draft.season.cells.some((cell, c) => cell.ownerCuts.some((cut) => draft.occupant[c * draft.season.days + cut.day] >= 0));
      if (!under) mornings += holdPlan(draftOf(draft.season), { place: draft.place.map((days) => days.slice()), cuts });
    }
    expect(mornings).toBeGreaterThan(1000);
  });
});
