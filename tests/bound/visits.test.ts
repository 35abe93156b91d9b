/** No grazing group's days of a valid plan cost less than its cheapest way round the fields, whatever the prices. */
import { expect, it } from "vitest";
import { studyFarm } from "../../src/bench/study-farms.js";
import { fieldRest } from "../../src/programme/bound/field-rest.js";
import { routeGround } from "../../src/programme/bound/route.js";
import { GrazerVisits, type VisitPrices } from "../../src/programme/bound/visits.js";
import type { Draft } from "../../src/programme/draft.js";
import { figures } from "../../src/programme/half.js";
import { handRule } from "../../src/programme/hand-rule.js";
import { usualRest } from "../../src/programme/rules/rest-period.js";
import { anneal } from "../../src/programme/search.js";
import { snapshot, type Snapshot } from "../../src/programme/snapshot.js";
import { YARD } from "../../src/season/season.js";
import { chanceOf, type Chance } from "../oracle/chance.js";
import { draftOf } from "./farms.js";

interface Lived {
  readonly field: number;
  readonly first: number;
  readonly last: number;
  readonly short: number;
}

/** Stays of a group, with what each is charged for a rest since the group's own latest stay in that cell, the last season's apart. */
function staysOf({ season }: Draft, days: Int16Array, g: number): Lived[] {
  const usual = usualRest(season);
  const price = figures(season, "rest-period", "price");
  const latest = new Map<number, number>();
  const stays: Lived[] = [];
  for (let t = 0; t < season.days; ) {
    let end = t + 1;
    while (end < season.days && days[end] === days[t] && !season.groups[g].arrives[end]) end++;
    if (days[t] >= YARD) {
      const before = latest.get(days[t]);
      const short = before === undefined ? 0 : Math.max(0, usual(days[t], g, t) - (t - before - 1)) * price(days[t], g);
      if (days[t] >= 0) latest.set(days[t], end - 1);
      stays.push({ field: days[t] < 0 ? YARD : season.cells[days[t]].field, first: t, last: end - 1, short: days[t] < 0 ? 0 : short });
    }
    t = end;
  }
  return stays;
}

/** Prices that pay a group's own days and starts, and fine all others. */
function pricesFor({ season }: Draft, stays: readonly Lived[], chance: Chance): VisitPrices {
  const fields = season.scenario.fields.length;
  const size = fields * season.days;
  const paid = chance.pick([0, 5, 50, 200]);
  const presence = Float64Array.from({ length: size }, () => paid + chance.between(0, 5));
  const starts = Float64Array.from({ length: size }, () => paid / 4 + chance.between(0, 5));
  for (const { field, first, last } of stays) {
    if (field === YARD) continue;
    presence.fill(-paid, field * season.days + first, field * season.days + last + 1);
    starts[field * season.days + first] = -paid / 4;
  }
  const yard = (most: number): Float64Array => Float64Array.from({ length: season.days }, () => chance.between(0, most));
  const rest = Float64Array.from({ length: fields }, () => chance.pick([0, 0.5, 1]));
  return { presence, starts, yardStand: yard(paid + 10), yardStart: yard(10), haul: new Float64Array(size), rest };
}

/** What a group's stays cost at prices: days, starts, hauls, and the ways' share of charges for short rests. */
function costOf({ season, tables }: Draft, stays: readonly Lived[], g: number, p: VisitPrices): number {
  let cost = 0;
  stays.forEach(({ field, first, last, short }, i) => {
    const arrives = i === 0 || stays[i - 1].last < first - 1 || season.groups[g].arrives[first] === 1;
    for (let t = first; t <= last; t++) cost += field === YARD ? tables.standMoney[g][t * tables.width] + p.yardStand[t] : p.presence[field * season.days + t];
    if (field === YARD) cost += tables.startMoney[g][first * tables.width] + p.yardStart[first];
    else {
      cost += p.starts[field * season.days + first] + short * p.rest[field];
      if (arrives || stays[i - 1].field !== field) cost += tables.haulMoney[g][field];
    }
  });
  return cost;
}

it.each([[5, 1, 100], [8, 2, 120], [3, 1, 120], [9, 6, 90]])("on %i cells with %i groups in %i days", { timeout: 120_000 }, (cells, groups, days) => {
  const draft = draftOf(studyFarm({ name: "V", cells, groups, days }, cells));
  handRule(draft);
  const plans: Snapshot[] = [snapshot(draft)];
  anneal(draft, { steps: 30_000, hot: 60, cold: 3, lightPenalty: 300, heavyPenalty: 600 }, 5, { stop: () => false, better: (plan) => plans.push(plan) });
  const chance = chanceOf(cells);
  let again = 0;
  draft.season.groups.forEach((group, g) => {
    if (!group.grazer) return;
    const visits = new GrazerVisits(draft.season, draft.tables, routeGround(draft.season, draft.tables, g));
    for (const plan of plans.filter(({ over }) => over === 0).slice(-25)) {
      const stays = staysOf(draft, plan.place[g], g);
      again += stays.filter(({ short }) => short > 0).length;
      for (let i = 0; i < 4; i++) {
        const prices = pricesFor(draft, stays, chance);
        expect(costOf(draft, stays, g, prices)).toBeGreaterThanOrEqual(visits.cheapest(prices).value - 1e-6);
      }
    }
  });
  expect(again).toBeGreaterThan(0);
});

it("charges a field of one cell what its rest is short of", () => {
  const draft = draftOf(studyFarm({ name: "V1", cells: 1, groups: 1, days: 100 }, 1));
  const { floor, recovered, money } = fieldRest(draft.season, 0);
  // by the published rests of the rule: 18 at least, 21 in the flush, 42 from midsummer on, at 0.4 a day
  expect([floor, recovered]).toEqual([18, 42]);
  expect(money(30, 19)).toBeCloseTo(3 * 0.4, 9);
  expect(money(30, 43)).toBe(0);
});
