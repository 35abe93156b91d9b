import type { Season } from "../../season/season.js";
import { askedIn, figures } from "../half.js";
import { usualRest } from "../rules/rest-period.js";
import type { Levels } from "./levels.js";
import type { StayPrices } from "./stay-prices.js";

/** Prices at which a cell's season is lived: what group-days, rows, kilograms of N and strips are worth. */
export interface CellPrices {
  /** By group: sum of rewards before a day, rows' prices taken off. */
  readonly reward: readonly Float64Array[];
  /** By group: what rows add on a day of starting. */
  readonly rowStart: readonly Float64Array[];
  /** Money of a kg N dropped. */
  readonly nitrogen: number;
  /** By group: money of a hectare of strips taken; negative where the ground wants it. */
  readonly strips: readonly number[];
  /** Worth of a kilogram of hay made. */
  readonly hay: number;
  /** Share of charges for short rests that the cell bears. */
  readonly rest: number;
}

/** What one cell's season costs at given prices, term by term; Infinity where a rule forbids it. */
export interface CellTerms {
  readonly movers: readonly number[];
  readonly grazers: readonly number[];
  /** Fewest days of rest, and days after which no rest is charged. */
  readonly floor: number;
  readonly recovered: number;
  /** Charge of a rest from the morning after grazing to a stay's first day. */
  restMoney(from: number, to: number): number;
  /** The cell's own share of it, at the prices. */
  ownRestMoney(from: number, to: number): number;
  day(group: number, t: number): number;
  start(group: number, t: number, sinceGrazed: number | null): number;
  stay(group: number, t: number, days: number): number;
  mayStay(group: number, t: number): boolean;
  mayLeave(group: number, t: number): boolean;
  /** Worth of a kilogram of hay made. */
  hay(): number;
  /** Takes new prices. */
  price(prices: CellPrices): void;
}

export function cellTerms(season: Season, cell: number, levels: Levels, own: StayPrices): CellTerms {
  const grazers = [...own.grazing.keys()];
  const rest = restTerms(season, cell, grazers);
  const follows = season.groups.map((_, g) => followTerms(season, cell, g));
  const nitrogen = season.groups.map((group) => sumsBefore(group.nitrogen));
  let p: CellPrices = { reward: [], rowStart: [], nitrogen: 0, strips: [], hay: 0, rest: 1 };
  const paid = moversPaid(season, own);
  return {
    movers: [...own.standing.keys()],
    grazers,
    ...rest,
    ownRestMoney: (from, to) => rest.restMoney(from, to) * p.rest,
    day: (g, t) => paid.days[g][t],
    start(g, t, sinceGrazed) {
      const { from, to, money } = follows[g];
      if (sinceGrazed === null) return paid.starts[g][t] + (to === Infinity || rest.recovered < to ? 0 : money);
      return paid.starts[g][t] + (sinceGrazed + 1 >= from && sinceGrazed + 1 <= to ? 0 : money);
    },
    stay(g, t, n) {
      const table = own.grazing.get(g);
      if (!table) return Infinity;
      return table[t * levels.most + n - 1] - (p.reward[g][t + n] - p.reward[g][t]) + p.rowStart[g][t] + (nitrogen[g][t + n] - nitrogen[g][t]) * p.nitrogen;
    },
    mayStay: (g, t) => t < season.days && season.groups[g].present[t] === 1 && !season.groups[g].arrives[t],
    mayLeave: (g, t) => own.mayLeave[g][t] === 1,
    hay: () => p.hay,
    price(prices) {
      p = prices;
      paid.price(p);
    },
  };
}

/** Money of a day and of a start of birds and pigs, worked out once for each set of prices: it is asked very often. */
function moversPaid(season: Season, own: StayPrices): { days: readonly Float64Array[]; starts: readonly Float64Array[]; price(p: CellPrices): void } {
  const days = season.groups.map(() => new Float64Array(season.days).fill(Infinity));
  const starts = season.groups.map(() => new Float64Array(season.days).fill(Infinity));
  const price = (p: CellPrices): void => {
    for (const [g, { day, start }] of own.standing) {
      const strip = season.scenario.groups[g].strip;
      const strips = strip ? (p.strips[g] * strip.areaHa) / strip.days : 0;
      // Positions begun are days / strip.days rounded up: where they are worth something, the first counts whole.
      const whole = strip && p.strips[g] < 0 && !season.groups[g].pig ? p.strips[g] * strip.areaHa * (1 - 1 / strip.days) : 0;
      for (let t = 0; t < season.days; t++) {
        days[g][t] = day[t] - (p.reward[g][t + 1] - p.reward[g][t]) + season.groups[g].nitrogen[t] * p.nitrogen + strips;
        starts[g][t] = start[t] + p.rowStart[g][t] + whole;
      }
    }
  };
  return { days, starts, price };
}

function restTerms(season: Season, cell: number, grazers: readonly number[]): Pick<CellTerms, "floor" | "recovered" | "restMoney"> {
  if (grazers.length === 0 || !grazers.every((g) => askedIn(season, "rest-period", cell, g))) return { floor: 0, recovered: 0, restMoney: () => 0 };
  const usual = usualRest(season);
  const of = (key: string): number[] => grazers.map((g) => figures(season, "rest-period", key)(cell, g));
  const price = Math.min(...of("price"));
  const floor = Math.min(...of("floor"));
  const recovered = Math.ceil(Math.max(floor, ...of("flush"), ...of("midsummer")));
  const least = Float64Array.from({ length: season.days }, (_, t) => Math.min(...grazers.map((g) => usual(cell, g, t))));
  return { floor, recovered, restMoney: (from, to) => Math.max(0, least[to] - (to - from)) * price };
}

function followTerms(season: Season, cell: number, g: number): { from: number; to: number; money: number } {
  const { leader } = season.groups[g];
  const asked = leader >= 0 && season.groups[leader].grazer && askedIn(season, "follow-window", cell, g) && season.scenario.housingOrders.length === 0;
  if (!asked) return { from: -Infinity, to: Infinity, money: 0 };
  const of = (key: string): number => figures(season, "follow-window", key)(cell, g);
  // Where others graze as well, the latest grazing may not be the leader's: it left then or earlier.
  const alone = season.groups.every((group, other) => other === leader || !group.grazer || !group.mayEnter[cell]);
  return { from: alone ? of("first") : -Infinity, to: of("last"), money: of("price") };
}

export function sumsBefore(days: Float64Array): Float64Array {
  const sums = new Float64Array(days.length + 1);
  for (let t = 0; t < days.length; t++) sums[t + 1] = sums[t] + days[t];
  return sums;
}

/** Whether strips of some groups can be priced at all: only while none can be used twice in the season, whoever comes after whom. */
export function stripsOnce(season: Season, cell: number, groups: readonly number[]): boolean {
  return groups.every((earlier) => groups.every((g) => {
    const { kind } = season.scenario.groups[earlier];
    const [rule, key] = kind === "pigs" ? (["pig-rest", "rest"] as const) : (["poultry-rest", kind] as const);
    return askedIn(season, rule, cell, g) && season.days <= figures(season, rule, key)(cell, g);
  }));
}
