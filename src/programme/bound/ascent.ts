import type { Prices, SeasonBound } from "./bound.js";

/** Progress of the bound: always true, whenever it is taken. */
export interface BoundWatch {
  stop(): boolean;
  better(bound: number, step: number): void;
}

const KEYS = ["presence", "starts", "rows", "nitrogen", "pigStrips", "birdStrips", "hay", "rest"] as const;
const FIRST_DECAY = 0.9;
const SECOND_DECAY = 0.99;

/** A bound and the prices that give it. */
export interface Raised {
  readonly value: number;
  readonly prices: Prices;
}

/**
 * Raises the bound by ascent with momentum and a step for each price, over a number of steps chosen beforehand; no
 * chance in it. Answers the best bound seen and its prices.
 */
export function raiseBound(bound: SeasonBound, steps: number, watch: BoundWatch, from: Prices = bound.zero(), rates = { first: 0.08, last: 0.002 }): Raised {
  const prices = copy(from);
  bound.clip(prices);
  const scale = scales(bound);
  const momentum = bound.zero();
  const square = bound.zero();
  let best = { value: -Infinity, prices: copy(prices) };
  for (let step = 1; step <= steps && !watch.stop(); step++) {
    const { value, slope } = bound.judge(prices);
    if (value > best.value) {
      best = { value, prices: copy(prices) };
      watch.better(value, step);
    }
    const rate = rates.first * (rates.last / rates.first) ** (step / steps);
    const heat = 1 - FIRST_DECAY ** step;
    const spread = 1 - SECOND_DECAY ** step;
    for (const key of KEYS) {
      const [p, g, m, s, size] = [prices[key], slope[key], momentum[key], square[key], scale[key]];
      for (let i = 0; i < p.length; i++) {
        if (!Number.isFinite(g[i])) continue;
        m[i] = FIRST_DECAY * m[i] + (1 - FIRST_DECAY) * g[i];
        s[i] = SECOND_DECAY * s[i] + (1 - SECOND_DECAY) * g[i] * g[i];
        if (m[i] !== 0) p[i] += (rate * size[i] * (m[i] / heat)) / (Math.sqrt(s[i] / spread) + 1e-9);
      }
    }
    bound.clip(prices);
  }
  return best;
}

/** How far a price may go in one step: by what a yard day of the group costs, and by what N and strips are worth. */
function scales(bound: SeasonBound): Prices {
  const { season, tables, fields } = bound;
  const scale = bound.zero();
  season.groups.forEach((group, g) => {
    let days = 0;
    let money = 0;
    group.present.forEach((present, t) => {
      if (!present) return;
      days++;
      money += tables.standMoney[g][t * tables.width];
    });
    const size = fields * season.days;
    scale.presence.fill(days ? money / days : 1, g * size, (g + 1) * size);
    scale.starts.fill(days ? money / days : 1, g * size, (g + 1) * size);
  });
  tables.rows.forEach(({ row }, r) => scale.rows.fill(row.weight, r * season.days, (r + 1) * season.days));
  scale.nitrogen.fill(0.5);
  scale.pigStrips.fill(100);
  scale.birdStrips.fill(100);
  scale.rest.fill(5);
  scale.hay.fill(season.scenario.prices.hayPerKg);
  return scale;
}

function copy(p: Prices): Prices {
  return {
    presence: p.presence.slice(), starts: p.starts.slice(), rows: p.rows.slice(), nitrogen: p.nitrogen.slice(),
    pigStrips: p.pigStrips.slice(), birdStrips: p.birdStrips.slice(), hay: p.hay.slice(), rest: p.rest.slice(),
  };
}
