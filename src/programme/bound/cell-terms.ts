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
  day(group: number, t: number): number;
  start(group: number, t: number, sinceGrazed: number | null): number;
  stay(group: number, t: number, days: number): number;
  mayStay(group: number, t: number): boolean;
  mayLeave(group: number, t: number): boolean;
  /** Takes new prices. */
  price(prices: CellPrices): void;
}

export function cellTerms(season: Season, cell: number, levels: Levels, own: StayPrices): CellTerms {
  const grazers = [...own.grazing.keys()];
  const rest = restTerms(season, cell, grazers);
  const follows = season.groups.map((_, g) => followTerms(season, cell, g));
  const nitrogen = season.groups.map((group) => sumsBefore(group.nitrogen));
  let p: CellPrices = { reward: [], rowStart: [], nitrogen: 0, strips: [] };
  return {
    movers: [...own.standing.keys()],
    grazers,
    ...rest,
    day(g, t) {
      const strip = season.scenario.groups[g].strip;
      const strips = strip ? (p.strips[g] * strip.areaHa) / strip.days : 0;
      return (own.standing.get(g)?.day[t] ?? Infinity) - (p.reward[g][t + 1] - p.reward[g][t]) + season.groups[g].nitrogen[t] * p.nitrogen + strips;
    },
    start(g, t, sinceGrazed) {
      const strip = season.scenario.groups[g].strip;
      // Positions begun are days / strip.days rounded up: where they are worth something, the first counts whole.
      const whole = strip && p.strips[g] < 0 && !season.groups[g].pig ? p.strips[g] * strip.areaHa * (1 - 1 / strip.days) : 0;
      const { from, to, money } = follows[g];
      const gap = sinceGrazed === null ? Infinity : sinceGrazed + 1;
      const free = (gap >= from && gap <= to) || (sinceGrazed === null && rest.recovered < to);
      return (own.standing.get(g)?.start[t] ?? Infinity) + (free ? 0 : money) + p.rowStart[g][t] + whole;
    },
    stay(g, t, days) {
      const table = own.grazing.get(g);
      if (!table) return Infinity;
      return table[t * levels.most + days - 1] - (p.reward[g][t + days] - p.reward[g][t]) + p.rowStart[g][t] + (nitrogen[g][t + days] - nitrogen[g][t]) * p.nitrogen;
    },
    mayStay: (g, t) => t < season.days && season.groups[g].present[t] === 1 && !season.groups[g].arrives[t],
    mayLeave: (g, t) => own.mayLeave[g][t] === 1,
    price(prices) {
      p = prices;
    },
  };
}

function restTerms(season: Season, cell: number, grazers: readonly number[]): Pick<CellTerms, "floor" | "recovered" | "restMoney"> {
  if (grazers.length === 0 || !grazers.every((g) => askedIn(season, "rest-period", cell, g))) return { floor: 0, recovered: 0, restMoney: () => 0 };
  const usual = usualRest(season);
  const of = (key: string): number[] => grazers.map((g) => figures(season, "rest-period", key)(cell, g));
  const price = Math.min(...of("price"));
  const floor = Math.min(...of("floor"));
  const recovered = Math.ceil(Math.max(floor, ...of("flush"), ...of("midsummer")));
  return {
    floor,
    recovered,
    restMoney(from, to) {
      let least = Infinity;
      for (const g of grazers) least = Math.min(least, usual(cell, g, to));
      return Math.max(0, least - (to - from)) * price;
    },
  };
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
