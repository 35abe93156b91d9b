import type { WholeBound } from "./whole-bound.js";
import type { WholePrices } from "./whole-prices.js";

const KEYS = ["presence", "starts", "rows", "nitrogen", "pigStrips", "birdStrips", "hay"] as const;
const FIRST_DECAY = 0.9;
const SECOND_DECAY = 0.99;

/** Best prices found, what they prove, and where the groups' ways then went. */
export interface Climbed {
  readonly value: number;
  readonly prices: WholePrices;
  /** By group x days + day, the places of that day, yard first: share of the ways that stood there; days and moves of all ways, by group. */
  readonly stood: { readonly share: Float64Array; readonly days: Float64Array; readonly moves: Float64Array };
  readonly steps: number;
}

/** Raises the bound from given prices by ascent with momentum and a step for each price, as the season's bound does. */
export function climb(whole: WholeBound, from: WholePrices, most: number, rates: { first: number; last: number }, enough: number, stop: () => boolean): Climbed {
  const prices = copyOf(from);
  const [momentum, square, scale] = [whole.zero(), whole.zero(), scales(whole)];
  let best = { value: -Infinity, prices: copyOf(from) };
  const stood = new Stood(whole);
  let step = 1;
  for (; step <= most && best.value < enough && (step === 1 || !stop()); step++) {
    const { value, slope, ways } = whole.judge(prices);
    if (value > best.value) best = { value, prices: copyOf(prices) };
    if (step > most / 2) stood.add(ways);
    const rate = rates.first * (rates.last / rates.first) ** (step / most);
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
    clip(whole, prices);
  }
  return { ...best, stood: stood.shares(), steps: step - 1 };
}

/** Where groups' ways went while the bound was raised. */
class Stood {
  private readonly width: number;
  private readonly counts: Float64Array;
  private readonly days: Float64Array;
  private readonly moves: Float64Array;
  private times = 0;

  constructor({ bound: { season } }: WholeBound) {
    this.counts = new Float64Array(season.groups.length * season.days * (season.cells.length + 1));
    this.days = new Float64Array(season.groups.length);
    this.moves = new Float64Array(season.groups.length);
    this.width = season.cells.length + 1;
  }

  add(ways: readonly Int16Array[]): void {
    this.times++;
    ways.forEach((way, g) => way.forEach((place, t) => {
      if (place < -1) return;
      this.counts[(g * way.length + t) * this.width + place + 1]++;
      this.days[g]++;
      if (t === 0 || way[t - 1] !== place) this.moves[g]++;
    }));
  }

  shares(): Climbed["stood"] {
    return { share: this.counts.map((count) => count / Math.max(1, this.times)), days: this.days, moves: this.moves };
  }
}

/** Keeps prices where they are true. */
function clip({ bound }: WholeBound, p: WholePrices): void {
  bound.clip({ ...p, rest: new Float64Array(0) });
}

/** How far a price may go in one step: what a yard day of the group costs, and what rows, nitrogen and strips are worth. */
function scales(whole: WholeBound): WholePrices {
  const { season, tables } = whole.bound;
  const scale = whole.zero();
  const size = season.cells.length * season.days;
  season.groups.forEach(({ present }, g) => {
    let [days, money] = [0, 0];
    present.forEach((here, t) => {
      if (!here) return;
      days++;
      money += tables.standMoney[g][t * tables.width];
    });
    for (const key of ["presence", "starts"] as const) scale[key].fill(days > 0 ? money / days : 1, g * size, (g + 1) * size);
  });
  tables.rows.forEach(({ row }, r) => scale.rows.fill(row.weight, r * season.days, (r + 1) * season.days));
  scale.nitrogen.fill(0.5);
  scale.pigStrips.fill(100);
  scale.birdStrips.fill(100);
  scale.hay.fill(season.scenario.prices.hayPerKg);
  return scale;
}

function copyOf(p: WholePrices): WholePrices {
  return {
    presence: p.presence.slice(), starts: p.starts.slice(), rows: p.rows.slice(),
    nitrogen: p.nitrogen.slice(), pigStrips: p.pigStrips.slice(), birdStrips: p.birdStrips.slice(), hay: p.hay.slice(),
  };
}
