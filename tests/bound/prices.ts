import type { Prices, SeasonBound } from "../../src/programme/bound/bound.js";
import type { Chance } from "../oracle/chance.js";
import type { RandomCard } from "./cards.js";

/** Prices drawn wildly, then clipped to where the bound says that it is true. */
export function randomPrices(bound: SeasonBound, chance: Chance, around: Prices = bound.zero()): Prices {
  const prices = copyOf(around);
  const size = chance.pick([0.5, 5, 20, 80]);
  const sparse = chance.pick([0.1, 0.5, 1]);
  const spread = (list: Float64Array, scale: number): void => {
    for (let i = 0; i < list.length; i++) if (chance.luck(sparse)) list[i] += scale * (chance.unit() + chance.unit() - chance.pick([0.3, 1]));
  };
  spread(prices.presence, size);
  if (chance.luck(0.5)) spread(prices.starts, size);
  spread(prices.rows, size / 50);
  spread(prices.nitrogen, 2);
  spread(prices.pigStrips, 200);
  spread(prices.birdStrips, 200);
  spread(prices.hay, 0.2);
  spread(prices.rest, 1);
  bound.clip(prices);
  return prices;
}

/** Prices at which a card is worth most: its own days and starts are paid well, all others there are fined, and hay is dear where it made some. */
export function pricesFor(bound: SeasonBound, card: RandomCard, paid: number): Prices {
  const prices = bound.zero();
  const { season, fields } = bound;
  const { field } = season.cells[card.cell];
  const at = (group: number, t: number): number => (group * fields + field) * season.days + t;
  season.groups.forEach((_, g) => {
    prices.presence.fill(-paid, at(g, 0), at(g, season.days));
    prices.starts.fill(-paid / 2, at(g, 0), at(g, season.days));
  });
  for (const { group, first, last } of card.stays) {
    prices.presence.fill(paid, at(group, first), at(group, last + 1));
    prices.starts[at(group, first)] = paid / 2;
  }
  if (card.hayMade > 0) prices.hay[0] = Infinity;
  prices.rest.fill((card.stays.length % 3) / 2);
  bound.clip(prices);
  return prices;
}

export function copyOf(p: Prices): Prices {
  return {
    presence: p.presence.slice(), starts: p.starts.slice(), rows: p.rows.slice(), nitrogen: p.nitrogen.slice(),
    pigStrips: p.pigStrips.slice(), birdStrips: p.birdStrips.slice(), hay: p.hay.slice(), rest: p.rest.slice(),
  };
}

/** What a card costs at prices: its own money, what its stays start and use, less what presence is paid. */
export function cardAt({ season, tables, fields }: SeasonBound, { cell, stays, money, hayMade, restShort }: RandomCard, p: Prices): number {
  const { field } = season.cells[cell];
  let cost = money - hayMade * p.hay[0] - restShort * p.rest[field];
  for (const { group, first, last } of stays) {
    const { strip } = season.scenario.groups[group];
    for (let t = first; t <= last; t++) {
      const at = t * tables.width + cell + 1;
      cost += tables.standMoney[group][at] - p.presence[(group * fields + field) * season.days + t];
      if (t === first) cost += tables.startMoney[group][at] - (season.groups[group].grazer ? p.starts[(group * fields + field) * season.days + t] : 0);
      tables.rows.forEach((row, r) => {
        let used = row.stand?.[group][at] ?? 0;
        if (t === first) used += row.start?.[group][at] ?? 0;
        else if (strip && (t - first) % strip.days === 0) used += row.step?.[group][t] ?? 0;
        cost += used * p.rows[r * season.days + t];
      });
    }
  }
  return cost;
}
