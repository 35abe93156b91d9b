import type { Model, ModelRow, PricingSolver } from "../../programme/solver.js";
import type { FeedBudget } from "../feed-budget.js";
import { GUARD_SECONDS, type Programme } from "./model.js";

/** What the land carries of some groups: head of each, in today's proportion. */
export interface Carries {
  /** Groups it is asked of, others of the grazers away; birds and pigs as they are. */
  readonly groups: readonly string[];
  readonly withoutHay: Carried;
  readonly withHay: Carried;
}

export interface Carried {
  /** Whole head by group. */
  readonly head: readonly number[];
  /** Head there may be as a multiple of today's. */
  readonly times: number;
  /** Place of the week that stands in the way of more; null where it is no single week. */
  readonly week: number | null;
}

/** The greatest herd looked for, as a multiple of today's: beyond it grass is no matter. */
const MOST_TIMES = 10_000;

/** Each group of grazers alone on the land, then all together: without hay, and with the hay that is in store or made in the season. */
export async function carries(budget: FeedBudget, solver: PricingSolver): Promise<readonly Carries[]> {
  const { season, needs } = budget.programme;
  const grazers = season.groups.map((_, g) => g).filter((g) => season.groups[g]!.grazer && needs[g]!.some(({ takenT }) => takenT > 0));
  const asked = grazers.length > 1 ? [...grazers.map((g) => [g]), grazers] : grazers.map((g) => [g]);
  const found: Carries[] = [];
  for (const groups of asked) {
    found.push({
      groups: groups.map((g) => season.groups[g]!.name),
      withoutHay: await carried(budget, groups, false, solver), withHay: await carried(budget, groups, true, solver),
    });
  }
  return found;
}

async function carried(budget: FeedBudget, groups: readonly number[], hay: boolean, solver: PricingSolver): Promise<Carried> {
  const { programme } = budget;
  const model = carryModel(budget, groups, hay);
  const solved = await solver.relax(model, GUARD_SECONDS);
  if (solved.kind !== "optimal") throw new Error(`what the land carries has no answer: ${solved.kind}`);
  const times = solved.columns[programme.at.count]!;
  const head = groups.map((g) => Math.floor(times * programme.season.scenario.groups[g]!.head + 1e-6));
  return { times, head, week: hay ? null : narrowest(programme, groups, solved.rowPrices) };
}

/** The week whose feed holds the herd down most, unless several do alike. */
function narrowest({ weeks, rowOf, needs }: Programme, groups: readonly number[], prices: Float64Array): number | null {
  const holds = weeks.map((_, w) => Math.max(...groups.map((g) => Math.abs(prices[rowOf.need(g, w)]!) * needs[g]![w]!.takenT)));
  const most = Math.max(...holds);
  return most > 0.5 ? holds.indexOf(most) : null;
}

/**
 * The budget turned round: as many head as may be. The herd is one more column; the need of its groups grows with it. No more
 * is short of the closing cover than in the budget itself.
 */
function carryModel({ programme, answer }: FeedBudget, groups: readonly number[], hay: boolean): Model {
  const { model, at, season, needs, weeks, rowOf } = programme;
  const herd = at.count;
  const cost = new Float64Array(herd + 1);
  cost[herd] = -1;
  const upper = Float64Array.from([...model.upper, MOST_TIMES]);
  const rows = [...model.rows];
  season.groups.forEach((group, g) => {
    if (!group.grazer) return;
    weeks.forEach((_, w) => {
      const { takenT } = needs[g]![w]!;
      const row = rows[rowOf.need(g, w)]!;
      const held = groups.includes(g);
      rows[rowOf.need(g, w)] = { ...row, least: 0, most: 0, columns: [...row.columns, ...(held ? [herd] : [])], values: [...row.values, ...(held ? [-takenT] : [])] };
      if (!hay && mayGraze(programme, g, w)) upper[at.hay(g, w)] = 0;
    });
  });
  rows[rowOf.store] = hay ? hayRow(programme, groups) : noRow("hay is no matter");
  const walks = new Set(programme.walks.map((t) => `walk on day ${t}`));
  const kept = rows.map((row) => (walks.has(row.name) ? noRow(row.name) : row));
  return { columns: herd + 1, cost, lower: new Float64Array(herd + 1), upper, whole: new Uint8Array(herd + 1), rows: [...kept, closingRow(programme, answer)] };
}

const noRow = (name: string): ModelRow => ({ name, least: -Infinity, most: Infinity, columns: [], values: [] });

/** Some ground of the group's may be grazed in the week. */
function mayGraze({ ways: { ways }, grounds }: Programme, g: number, w: number): boolean {
  return ways.some((way) => way.kind === "graze" && way.week === w && grounds[way.ground]!.groups.includes(g));
}

/** Hay fed to the herd, on days kept in too, is in store or made; the winter's is not kept back, nor the little that birds and pigs take. */
function hayRow({ model, rowOf, season, needs, at, weeks }: Programme, groups: readonly number[]): ModelRow {
  const row = model.rows[rowOf.store]!;
  const fixed = groups.reduce((sum, g) => sum + needs[g]!.reduce((kg, week) => kg + week.fixedHayKg, 0), 0) / 1000;
  const others = new Set([at.short, ...season.groups.flatMap((_, g) => (groups.includes(g) ? [] : weeks.map((_week, w) => at.hay(g, w))))]);
  const kept = row.columns.map((_, i) => i).filter((i) => !others.has(row.columns[i]!));
  return {
    name: "hay on the farm", least: -season.scenario.hay.inStoreKg / 1000, most: Infinity,
    columns: [...kept.map((i) => row.columns[i]!), at.count], values: [...kept.map((i) => row.values[i]!), -fixed],
  };
}

function closingRow({ ways: { ways } }: Programme, answer: Float64Array): ModelRow {
  const closing = ways.flatMap((way, i) => (way.closingShort > 0 ? [i] : []));
  const now = closing.reduce((sum, i) => sum + Math.max(0, answer[i]!) * ways[i]!.closingShort, 0);
  return { name: "closing cover", least: -Infinity, most: now + 1e-6, columns: closing, values: closing.map((i) => ways[i]!.closingShort) };
}
