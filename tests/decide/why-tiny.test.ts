/**
 * Seasons of a few days, every way to live them tried by the check alone: what is said to be never allowed stands in no way that
 * keeps every rule, and what a stay or a cell's day costs is what the cheapest ways with and without it differ by.
 */
import { afterAll, describe, expect, it } from "vitest";
import { hostOf, samePlace, stayOn, type Question } from "../../src/decide/why-forced.js";
import { neverThere } from "../../src/decide/why-never.js";
import { leavesEmpty } from "../../src/decide/why-search.js";
import { placesFor, whyGroup } from "../../src/decide/why.js";
import type { Scenario } from "../../src/farm/scenario.js";
import type { Plan } from "../../src/plan/plan.js";
import { planOf } from "../../src/programme/plan-of.js";
import { addDays, daysBetween, spanHolds } from "../../src/quantity/calendar.js";
import type { RuleId } from "../../src/rules/rule.js";
import { buildSeason } from "../../src/season/build-season.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { everyWay, judged } from "../oracle/enumerate.js";
import { TINY_SIZES, tinySeason } from "../oracle/tiny-seasons.js";
import { inThisThread } from "./in-this-thread.js";

const SLOW = 300_000;
const SEEDS = Array.from({ length: 6 }, (_, i) => 505 + i);
const EFFORT = { look: 300, proper: 3000, seed: 3 };
const seen = { never: 0, kept: 0, allowed: 0, exact: 0, noneFound: 0, missed: 0, days: 0, exactDays: 0, rules: new Set<RuleId>() };

/** A plan that keeps every rule, and its cost. */
interface Kept {
  readonly plan: Plan;
  readonly cost: number;
}

/** All ways that keep every rule, nothing mown but what the owner fixed. */
function keptWays(scenario: Scenario): readonly Kept[] {
  const season = buildSeason(scenario);
  const kept: Kept[] = [];
  everyWay(season, null, (way) => {
    const { report } = judged(season, way);
    if (report.breaches.length === 0) kept.push({ plan: planOf(season, way), cost: report.cost });
  });
  return kept;
}

function unmown(scenario: Scenario): Scenario {
  return { ...scenario, cells: scenario.cells.map((cell) => ({ ...cell, mow: false })) };
}

function questionsOf(scenario: Scenario): readonly Question[] {
  const days = Array.from({ length: daysBetween(scenario.season.firstDay, scenario.season.lastDay) + 1 }, (_, t) => addDays(scenario.season.firstDay, t));
  return scenario.groups.flatMap(({ name, here }) => {
    const own = days.filter((day) => here.some((span) => spanHolds(span, day)) && hostOf(scenario, name, day) === name);
    return own.flatMap((day) => placesFor(scenario, name).map((place) => ({ group: name, place, day })));
  });
}

function stands({ plan }: Kept, { group, place, day }: Question): boolean {
  const stay = stayOn(plan, group, day);
  return stay !== null && samePlace(stay, place);
}

const cheapest = (ways: readonly Kept[]): number => ways.reduce((least, { cost }) => Math.min(least, cost), Infinity);

describe.each(TINY_SIZES)("$name", (size) => {
  it("never says never of a stay that some way of living the season has", { timeout: SLOW }, () => {
    for (const seed of SEEDS) {
      const scenario = tinySeason(size, seed);
      const ways = keptWays(scenario);
      for (const question of questionsOf(scenario)) {
        const never = neverThere(scenario, question);
        const some = ways.find((way) => stands(way, question));
        if (some) seen.kept++;
        if (never.length === 0) continue;
        seen.never++;
        for (const { rule } of never) seen.rules.add(rule);
        expect(some && { seed, question, never, stays: some.plan.stays }).toBeUndefined();
      }
    }
  });

  it("costs each stay and the cell's day what the cheapest ways differ by, or a little more where the search missed one", { timeout: SLOW }, async () => {
    for (const seed of SEEDS.slice(0, 4)) await holdCosts(unmown(tinySeason(size, seed)), seed);
  });
});

async function holdCosts(scenario: Scenario, seed: number): Promise<void> {
  const ways = keptWays(scenario);
  if (ways.length === 0) return;
  const least = cheapest(ways);
  const start = ways.find(({ cost }) => cost === least)!;
  const asked = questionsOf(scenario).filter((question) => stands(start, question));
  const { group, day, place } = asked[(seed * 31) % asked.length]!;
  const services = { threads: inThisThread(highsSolver()), stop: { asked: false }, onSearch: () => undefined };
  const why = await whyGroup(scenario, start.plan, { group, day, only: null }, services, EFFORT);
  expect(why.cheapestCost).toBeCloseTo(least, 6);
  for (const { question, kind, more, replanned } of why.places) {
    const truth = cheapest(ways.filter((way) => stands(way, question)));
    if (kind === "allowed") {
      // a look says "at most"; a proper search is a search all the same
      expect(more! + least).toBeGreaterThanOrEqual(truth - 1e-6);
      if (!replanned) continue;
      seen.allowed++;
      if (more! + least < truth + 1e-6) seen.exact++;
    } else if (kind === "none-found") {
      seen.noneFound++;
      if (truth < Infinity) seen.missed++;
    } else expect(truth).toBe(Infinity);
  }
  if (place.cell === null) return;
  const without = cheapest(ways.filter(({ plan }) => leavesEmpty(plan, place.cell!, day)));
  if (!why.without) return;
  seen.days++;
  expect(why.without.more + least).toBeGreaterThanOrEqual(without - 1e-6);
  if (why.without.more + least < without + 1e-6) seen.exactDays++;
}

afterAll(() => {
  // Enough of each was looked at, and no search said that there is none where there is one.
  expect(Math.min(seen.never - 300, seen.kept - 500, seen.allowed - 25, seen.days - 10, seen.rules.size - 8)).toBeGreaterThanOrEqual(0);
  expect({ missed: seen.missed, exact: seen.exact >= 0.9 * seen.allowed, days: seen.exactDays >= 0.9 * seen.days }).toEqual({ missed: 0, exact: true, days: true });
});
