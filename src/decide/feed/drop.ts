import type { ModelRow, PricingSolver } from "../../programme/solver.js";
import { buildSeason } from "../../season/build-season.js";
import { grownCover } from "../../science/growth.js";
import { feedBudget, feedWeeks, type FeedBudget } from "../feed-budget.js";
import type { Ground } from "./grounds.js";
import { surpluses } from "./pinch.js";
import { GUARD_SECONDS, type Programme } from "./model.js";

/** Cells to leave out of the round and mow, as day indices; `back` is null where they are not ready again in the season. */
export interface Drop {
  readonly cells: readonly string[];
  readonly areaHa: number;
  /** Not grazed from this day on; 0 where not grazed before the cut. */
  readonly from: number;
  readonly cutOn: number;
  readonly back: number | null;
  /** Hay as stored, kg. */
  readonly hayKg: number;
  /** Grass above the residual on open ground at the end of the week of the cut, and days of feed it is. */
  readonly standingKg: number;
  readonly daysInHand: number | null;
}

export interface Drops {
  readonly drops: readonly Drop[];
  /** What hay the cuts are worth making for: the winter's, or hay to sell or keep; null where no cut pays. */
  readonly pays: "winter" | "price" | null;
}

/** The same with the budget in which cells are mown whole: those for the winter's hay, or none but the owner's. */
export interface Mown extends Drops {
  readonly budget: FeedBudget;
}

/** More hay fed than without the cuts would be a poor bargain: days that are let pass as rounding to whole cells. */
const MORE_HAY_DAYS = 0.5;
/** Hay that no winter ever needs, kg: every tonne made is then worth its price. */
const ALL_IT_CAN_MAKE = 1e7;

/**
 * Cells to drop for a cut: where the budget mows, by whole named cells, tried again as such. Where it mows nothing though grass
 * is ahead, the cuts that pay when hay is worth its price.
 */
export async function drops(budget: FeedBudget, solver: PricingSolver): Promise<Mown> {
  const plain = await mownAsChosen(budget.programme, [], solver);
  if (!plain) throw new Error("a season without cuts beside the owner's has no budget");
  const own = await dropsOf(budget, plain, solver);
  if (own.drops.length > 0) return { ...own, pays: "winter" };
  if (surpluses(plain.weeks).length === 0) return { drops: [], pays: null, budget: plain };
  const { scenario } = budget.programme.season;
  const sold = await feedBudget(buildSeason({ ...scenario, hay: { ...scenario.hay, winterNeedKg: scenario.hay.inStoreKg + ALL_IT_CAN_MAKE } }), solver);
  const priced = await dropsOf(sold, plain, solver);
  return { drops: priced.drops, pays: priced.drops.length > 0 ? "price" : null, budget: plain };
}

/** Ground and week of a cut, with the cells that make it up best. */
interface Chosen {
  readonly ground: number;
  readonly week: number;
  readonly cells: readonly number[];
  readonly areaHa: number;
  readonly from: number;
  readonly cutOn: number;
  readonly hayPerHa: number;
}

async function dropsOf(mown: FeedBudget, plain: FeedBudget, solver: PricingSolver): Promise<Pick<Mown, "drops" | "budget">> {
  const most = hayDays(plain.weeks) + MORE_HAY_DAYS;
  for (let chosen = chosenCells(mown); chosen.length > 0; chosen = chosen.slice(0, -1)) {
    const budget = await mownAsChosen(mown.programme, chosen, solver);
    if (budget && hayDays(budget.weeks) <= most) return { drops: chosen.map((one) => dropOf(mown.programme, one, budget.weeks)), budget };
  }
  return { drops: [], budget: plain };
}

const hayDays = (weeks: FeedBudget["weeks"]): number => weeks.reduce((sum, { groups }) => sum + groups.reduce((days, one) => days + one.hayDays, 0), 0);

/** Whole cells near to the hectares that the budget mows, last in the round first; each cell once. */
function chosenCells({ programme, answer }: FeedBudget): readonly Chosen[] {
  const { ways: { ways, moments }, grounds } = programme;
  const mown = ways.map((way, i) => ({ way, ha: answer[i]! })).filter(({ way, ha }) => way.kind === "cut" && ha > 1e-6);
  const keys = [...new Set(mown.map(({ way }) => `${way.week}/${way.ground}`))].sort((a, b) => Number(a.split("/")[0]) - Number(b.split("/")[0]));
  const used = new Set<number>();
  return keys.flatMap((key) => {
    const own = mown.filter(({ way }) => `${way.week}/${way.ground}` === key).sort((a, b) => b.ha - a.ha);
    const { way } = own[0]!;
    const ground = grounds[way.ground]!;
    const from = moments[way.from]!;
    const wanted = own.reduce((sum, { ha }) => sum + ha, 0);
    const cells = nearest(programme, from.stand === null ? ground.cells : ground.stands[from.stand]!.cells, wanted, used);
    if (cells.length === 0) return [];
    cells.forEach((cell) => used.add(cell));
    const areaHa = areaOf(programme, cells);
    return [{ ground: way.ground, week: way.week, cells, areaHa, from: from.day, cutOn: way.day - 1, hayPerHa: own.reduce((sum, one) => sum + one.way.hay * one.ha, 0) / wanted }];
  });
}

function nearest(programme: Programme, cells: readonly number[], wantedHa: number, used: ReadonlySet<number>): readonly number[] {
  const taken: number[] = [];
  let area = 0;
  for (const cell of [...cells].reverse().filter((c) => !used.has(c))) {
    const more = programme.season.cells[cell]!.areaHa;
    if (Math.abs(area + more - wantedHa) >= Math.abs(area - wantedHa)) continue;
    taken.push(cell);
    area += more;
  }
  return taken.sort((a, b) => a - b);
}

function areaOf({ season }: Programme, cells: readonly number[]): number {
  return cells.reduce((sum, c) => sum + season.cells[c]!.areaHa, 0);
}

/** The budget with these cells mown in these weeks and no other wished cut; null where that cannot be. */
async function mownAsChosen(programme: Programme, chosen: readonly Chosen[], solver: PricingSolver): Promise<FeedBudget | null> {
  const { model, ways: { ways } } = programme;
  const upper = model.upper.slice();
  const planned = (week: number, ground: number) => chosen.some((one) => one.week === week && one.ground === ground);
  ways.forEach((way, i) => {
    if (way.kind === "cut" && !planned(way.week, way.ground)) upper[i] = 0;
  });
  const rows = chosen.map(({ ground, week, areaHa }): ModelRow => {
    const columns = ways.flatMap((way, i) => (way.kind === "cut" && way.ground === ground && way.week === week ? [i] : []));
    return { name: `cut of ground ${ground} in week ${week}`, least: areaHa, most: areaHa, columns, values: columns.map(() => 1) };
  });
  const solved = await solver.relax({ ...model, upper, rows: [...model.rows, ...rows] }, GUARD_SECONDS);
  if (solved.kind !== "optimal") return null;
  return { programme, answer: solved.columns, money: solved.value, weeks: feedWeeks(programme, solved.columns, solved.rowPrices) };
}

function dropOf(programme: Programme, { ground, week, cells, areaHa, from, cutOn, hayPerHa }: Chosen, weeks: FeedBudget["weeks"]): Drop {
  const { standingKg, daysInHand } = weeks[week]!;
  return {
    cells: cells.map((c) => programme.season.cells[c]!.name), areaHa, from, cutOn, hayKg: hayPerHa * areaHa, standingKg, daysInHand,
    back: readyAfter(programme, programme.grounds[ground]!, cutOn + 1),
  };
}

/** First morning on which open ground that was mown has grown to the entry cover again. */
function readyAfter({ season }: Programme, { like, figures }: Ground, mown: number): number | null {
  for (let t = mown; t < season.days; t++) {
    if (like.open[t] && grownCover(figures.stubble, like.rates[t]! - like.rates[mown]!, season.ceiling) >= figures.entry) return t;
  }
  return null;
}
