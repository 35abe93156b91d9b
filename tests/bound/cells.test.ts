/** No exact season of a cell, whatever the prices, is cheaper than what the cell's bound says. */
import { describe, expect, it } from "vitest";
import type { Prices, SeasonBound } from "../../src/programme/bound/bound.js";
import { raiseBound } from "../../src/programme/bound/ascent.js";
import { studyFarm } from "../../src/bench/study-farms.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { chanceOf, type Chance } from "../oracle/chance.js";
import { randomCard, type RandomCard } from "./cards.js";
import { boundOf, draftOf, FARMS, partsOf } from "./farms.js";
import { cardAt, pricesFor, randomPrices } from "./prices.js";

const CARDS = 50;
const RANDOM_PRICES = 8;
const AIMED = 2;

function cardsOf(draft: ReturnType<typeof draftOf>, cell: number, chance: Chance, most = CARDS): RandomCard[] {
  const cards: RandomCard[] = [];
  for (let tries = 0; tries < 20 * most && cards.length < most; tries++) {
    const card = randomCard(draft, cell, chance);
    if (card) cards.push(card);
  }
  return cards;
}

/** Cards of one cell that beat its bound at some prices. */
function beaten(bound: SeasonBound, cell: number, cards: readonly RandomCard[], prices: Prices): string[] {
  const value = partsOf(bound).judgeCell(cell, prices, bound.zero());
  return cards.flatMap((card) => {
    const cost = cardAt(bound, card, prices);
    return cost < value - 1e-6 ? [`${cost} < ${value}: ${JSON.stringify(card)}`] : [];
  });
}

describe.each(FARMS)("$name", ({ scenario }) => {
  it("has no card below its cell's bound", { timeout: 60_000 }, () => {
    const chance = chanceOf(11);
    const draft = draftOf(scenario);
    const bound = boundOf(draft);
    const raised = raiseBound(bound, 12, { stop: () => false, better: () => undefined }).prices;
    const around = Array.from({ length: RANDOM_PRICES }, (_, i) => randomPrices(bound, chance, i % 2 ? raised : undefined));
    let stays = 0;
    draft.season.cells.forEach((_, cell) => {
      const cards = cardsOf(draft, cell, chance);
      expect(cards).toHaveLength(CARDS);
      stays += cards.reduce((sum, card) => sum + card.stays.length, 0);
      const aimed = cards.slice(0, AIMED).map((card) => pricesFor(bound, card, chance.between(1, 30)));
      for (const prices of [bound.zero(), raised, ...around, ...aimed]) expect(beaten(bound, cell, cards, prices).slice(0, 2)).toEqual([]);
    });
    expect(stays).toBeGreaterThan(CARDS * draft.season.cells.length);
  });

  it("comes near a card that the prices are made for", { timeout: 60_000 }, () => {
    const chance = chanceOf(12);
    const draft = draftOf(scenario);
    const bound = boundOf(draft, 0.02);
    const gaps = draft.season.cells.flatMap((_, cell) => {
      const card = randomCard(draft, cell, chance);
      if (!card || card.stays.length === 0) return [];
      const prices = pricesFor(bound, card, 200);
      const paid = 200 * card.stays.reduce((sum, stay) => sum + stay.last - stay.first + 1.5, 0);
      return [(cardAt(bound, card, prices) - partsOf(bound).judgeCell(cell, prices, bound.zero())) / paid];
    });
    // A bound of nothing at all would be true as well: at these prices it must not be far below.
    expect(gaps.length).toBeGreaterThan(2);
    expect(gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length).toBeLessThan(0.5);
  });
});

/** Long enough for grass to grow out of birds' reach, for rests and second stays; the winter's hay is lacking, and cuts pay. */
function longFarm(groups: number, seed: number): Scenario {
  const farm = studyFarm({ name: "long", cells: 4, groups, days: 150 }, seed);
  const own = farm.rules.farm["hay-stock"];
  const rules = { ...farm.rules, farm: { ...farm.rules.farm, "hay-stock": { ...own, figures: { ...own.figures, "cut-from": 2400 } } } };
  return { ...farm, rules, hay: { ...farm.hay, winterNeedKg: 9000 }, prices: { ...farm.prices, hayPerKg: 2 } };
}

describe.each([2, 3, 4])("a long season of %i groups", (groups) => {
  it("has no card below its cell's bound at prices made for that very card", { timeout: 120_000 }, () => {
    const chance = chanceOf(40 + groups);
    const draft = draftOf(longFarm(groups, groups));
    const bound = boundOf(draft);
    const seen = { mown: 0, long: 0, again: 0 };
    draft.season.cells.forEach((_, cell) => {
      for (const card of cardsOf(draft, cell, chance, 4 * CARDS)) {
        expect(beaten(bound, cell, [card], pricesFor(bound, card, 200))).toEqual([]);
        const birds = card.stays.filter(({ group }) => draft.season.groups[group].bird);
        if (card.cuts.length > 0) seen.mown++;
        if (birds.some(({ first, last }) => last - first >= 20)) seen.long++;
        if (birds.length > 1) seen.again++;
      }
    });
    expect(Math.min(seen.mown, seen.long, seen.again)).toBeGreaterThan(10);
  });
});
