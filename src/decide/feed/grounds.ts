import { askedIn, figures } from "../../programme/half.js";
import type { Season, SeasonCell } from "../../season/season.js";

/** Grass that stands alike on the first morning. */
export interface Stand {
  readonly cover: number;
  readonly areaHa: number;
  readonly cells: readonly number[];
  /** Latest grazing before the season, a negative day; null when there was none. */
  readonly lastGrazed: number | null;
}

/** Covers, kg DM/ha, days and money that rules ask of some ground. */
export interface GroundFigures {
  readonly residual: number;
  readonly entry: number;
  readonly firstPass: number;
  readonly firstPassDays: number;
  readonly firstPassPrice: number;
  /** Shortest rest, and the charge of a day short of the usual. */
  readonly restFloor: number;
  readonly restPrice: number;
  readonly closingWish: number;
  readonly closingPrice: number;
  readonly cutFrom: number;
  readonly stubble: number;
  readonly makingLoss: number;
  readonly long: number;
  readonly longPrice: number;
}

/** Cells that grow, open, close and are cut alike, and that the same groups may enter: one ground to the budget. */
export interface Ground {
  readonly cells: readonly number[];
  readonly areaHa: number;
  /** Mean size of a cell, ha: what one charge for a stay is spread over. */
  readonly cellHa: number;
  /** The first of its cells: growth, open days and cuts are the same in all. */
  readonly like: SeasonCell;
  readonly stands: readonly Stand[];
  /** Groups that may enter, as indices. */
  readonly groups: readonly number[];
  /** Some grazer may enter. */
  readonly grazed: boolean;
  readonly figures: GroundFigures;
}

/** Takes the farm's cells together as far as a budget by week can: the fewer grounds, the shorter its programme. */
export function groundsOf(season: Season): readonly Ground[] {
  const figuresOf = groundFigures(season);
  const all = season.cells.map((_, c) => ({ c, own: figuresOf(c), groups: groupsIn(season, c) }));
  const alike = together(all, ({ c, own, groups }) => {
    const { growth, inHand, open, ownerCuts, mow } = season.cells[c]!;
    return [growth.join(), inHand.join(""), open.join(""), JSON.stringify(ownerCuts), mow, groups.join(), Object.values(own).join()].join("|");
  });
  return alike.map((members) => {
    const cells = members.map(({ c }) => c);
    const areaHa = areaOf(season, cells);
    const { groups, own } = members[0]!;
    return {
      cells, areaHa, cellHa: areaHa / cells.length, like: season.cells[cells[0]!]!, stands: standsOf(season, cells), groups,
      grazed: groups.some((g) => season.groups[g]!.grazer), figures: own,
    };
  });
}

function standsOf(season: Season, cells: readonly number[]): readonly Stand[] {
  return together(cells, (c) => `${season.cells[c]!.startCover.toFixed(3)} ${season.cells[c]!.lastGrazed}`).map((own) => {
    const { startCover, lastGrazed } = season.cells[own[0]!]!;
    return { cover: startCover, lastGrazed, areaHa: areaOf(season, own), cells: own };
  });
}

function areaOf(season: Season, cells: readonly number[]): number {
  return cells.reduce((sum, c) => sum + season.cells[c]!.areaHa, 0);
}

function groupsIn(season: Season, cell: number): readonly number[] {
  return season.groups.map((_, g) => g).filter((g) => season.groups[g]!.mayEnter[cell]);
}

/** Of what groups ask differently, the least that lets one of the grazers in; ground of birds and pigs alone asks nothing. */
function groundFigures(season: Season): (cell: number) => GroundFigures {
  const grazers = season.groups.map((_, g) => g).filter((g) => season.groups[g]!.grazer);
  const of = (rule: Parameters<typeof figures>[1], key: string) => figures(season, rule, key);
  const asks = [["residual-cover", "grazers"], ["entry-cover", "grazers"], ["entry-cover", "first-pass"], ["rest-period", "floor"]] as const;
  const [residual, entry, firstPass, floor] = asks.map(([rule, key]) => {
    const figure = of(rule, key);
    return (cell: number): number => {
      const own = grazers.filter((g) => season.groups[g]!.mayEnter[cell]).map((g) => (askedIn(season, rule, cell, g) ? figure(cell, g) : 0));
      return own.length > 0 ? Math.min(...own) : 0;
    };
  }) as [(c: number) => number, (c: number) => number, (c: number) => number, (c: number) => number];
  const farm = (rule: Parameters<typeof figures>[1], key: string) => {
    const figure = of(rule, key);
    return (cell: number): number => (askedIn(season, rule, cell, -1) ? figure(cell, -1) : 0);
  };
  const least = of("demand-met", "least-standing");
  const [days, price, restPrice, wish, closingPrice, long, longPrice] = ([
    ["entry-cover", "first-pass-days"], ["entry-cover", "first-pass-price"], ["rest-period", "price"], ["closing-cover", "wish"], ["closing-cover", "price"],
    ["upper-cover", "long"], ["upper-cover", "long-price"],
  ] as const).map(([rule, key]) => farm(rule, key));
  const [cutFrom, stubble, loss] = ["cut-from", "stubble", "making-loss"].map((key) => of("hay-stock", key));
  return (c) => ({
    residual: Math.max(residual(c), least(c, -1)), entry: entry(c), firstPass: Math.min(firstPass(c), entry(c)), firstPassDays: days!(c), firstPassPrice: price!(c),
    restFloor: floor(c), restPrice: restPrice!(c), closingWish: wish!(c), closingPrice: closingPrice!(c),
    cutFrom: cutFrom!(c, -1), stubble: stubble!(c, -1), makingLoss: loss!(c, -1) / 100, long: long!(c), longPrice: longPrice!(c),
  });
}

/** Items with the same key, in the order in which keys first come. */
function together<T>(items: readonly T[], key: (item: T) => string): readonly (readonly T[])[] {
  const by = new Map<string, T[]>();
  for (const item of items) {
    const own = by.get(key(item));
    if (own) own.push(item);
    else by.set(key(item), [item]);
  }
  return [...by.values()];
}
