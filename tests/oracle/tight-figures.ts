import type { RuleId, Use } from "../../src/rules/rule.js";
import type { Chance } from "./chance.js";

export type Rules = Partial<Record<RuleId, { use?: Use; figures?: Record<string, number | null> }>>;

/** Figures of every rule that has some, drawn so that they bind within a few days. */
export function tightFigures(c: Chance): Rules {
  const of = (figures: Record<string, number | null>): { figures: Record<string, number | null> } => ({ figures });
  return {
    "entry-cover": of({ grazers: c.between(1800, 2300), "first-pass": c.between(1200, 1800), "first-pass-days": c.whole(0, 5), pigs: c.between(800, 1800), "first-pass-price": c.between(0, 80) }),
    "upper-cover": of({ "birds-wished": c.between(1500, 2300), "birds-barrier": c.between(2300, 3200), "birds-price": c.between(0, 9), long: c.between(1800, 2600), "long-price": c.between(0, 40) }),
    "residual-cover": of({ grazers: c.between(1000, 1700) }),
    "demand-met": of({ "least-standing": c.pick([50, 500, 1400]) }),
    "stay-limit": of({ cattle: c.whole(1, 3), sheep: c.whole(1, 3), goats: c.whole(1, 3), horses: 1, limit: c.whole(1, 5), "nil-growth": 5, price: c.between(0, 8) }),
    "rest-period": of({ floor: c.whole(0, 3), flush: c.whole(1, 4), midsummer: c.whole(2, 8), "flush-until": c.whole(118, 150), "midsummer-from": c.whole(152, 196), price: c.between(0, 5) }),
    "clean-ground": of({ "turkeys after layers": c.whole(0, 6), "turkeys after broilers": c.whole(0, 6), worms: c.whole(0, 8), "worms-price": c.between(0, 3), "young-pigs-next-year": c.whole(0, 1), "hay-after-birds": c.whole(0, 1) }),
    "poultry-rest": of({ layers: c.whole(0, 8), broilers: c.whole(2, 12), turkeys: c.whole(0, 8), geese: c.whole(0, 8) }),
    "pig-rest": of({ rest: c.whole(0, 12) }),
    "pig-pressure": of({ most: c.between(300, 1500), opened: c.between(100, 1500), "unopened-price": c.between(0, 6) }),
    "after-pigs": of({ cover: c.between(400, 1200), back: c.whole(0, 4), reseeded: c.whole(1, 6), reseed: c.whole(0, 1) }),
    "worked-ground": of({ birds: c.whole(0, 3), "least-open": c.pick([25, 60, 90]) }),
    "follow-window": of({ first: c.whole(1, 2), last: c.whole(2, 3), price: c.between(0, 8) }),
    "ground-wants": of({ "opening-price": c.between(0, 400), "scratching-price": c.between(0, 400), "fertility-price": c.between(0, 400), "fertility-target": c.between(10, 60) }),
    "grass-in-hand": of({ wish: c.whole(1, 9), spring: c.whole(1, 9), price: c.between(0, 5) }),
    "closing-cover": of({ wish: c.between(1500, 2600), price: c.between(0, 90), "wet-days": c.whole(0, 4), "wet-price": c.between(0, 4) }),
    "density-ceiling": of({ most: c.pick([null, null, 6000, 15000]) }),
    "rate-ceiling": of({ most: c.pick([null, null, 1500, 4000]) }),
    "nitrogen-ceiling": of({ cell: c.between(50, 80), price: c.between(0, 4), holding: c.pick([1, 3, 6, 50]), "holding-price": c.between(0, 4) }),
    people: of({ morning: c.whole(0, 40), "each-group": c.whole(0, 20), dusk: c.whole(0, 20), haul: c.whole(0, 25), pace: c.whole(20, 60) }),
    "fence-kit": of({ "energisers-each": c.whole(0, 1) }),
    water: of({ "walk-free": c.pick([0, 60]), "walk-most": c.pick([200, 400]), "walk-price": c.between(0, 3), "cart-minutes": c.whole(0, 30), "carted-most": c.pick([null, 60, 200]) }),
    shade: of({ "first-month": c.pick([4, 6, 11]), "last-month": c.pick([8, 1]), "pigs-price": c.between(0, 4), "grazers-price": c.between(0, 3) }),
    "hay-stock": of({ "short-share": c.whole(0, 200), "cut-from": c.between(1800, 2600), stubble: c.between(1200, 1800), "making-loss": c.whole(0, 40), together: c.between(0, 0.3) }),
  };
}

/** Figures in which a season of a few days has room to move. */
export function mildFigures(): Rules {
  return {
    "entry-cover": { figures: { grazers: 1500, "first-pass": 1200 } },
    "residual-cover": { figures: { grazers: 1000 } },
    "rest-period": { figures: { floor: 1, flush: 2, midsummer: 3 } },
    "clean-ground": { figures: { "turkeys after layers": 1, "turkeys after broilers": 1, worms: 2 } },
    "poultry-rest": { figures: { layers: 2, broilers: 2, turkeys: 2, geese: 2 } },
    "pig-rest": { figures: { rest: 2 } },
    "after-pigs": { figures: { back: 2, reseeded: 3 } },
    "worked-ground": { figures: { birds: 2 } },
    people: { figures: { morning: 10, "each-group": 2, dusk: 5 } },
    "hay-stock": { figures: { "cut-from": 2500, stubble: 1500, together: 0.1 } },
  };
}
