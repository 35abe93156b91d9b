import { useOf } from "../../farm/scenario.js";
import { farmFigure, farmWide } from "../../programme/half.js";
import { grassWish } from "../../programme/rules/grass-in-hand.js";
import type { Model, ModelRow } from "../../programme/solver.js";
import type { Season } from "../../season/season.js";
import { groundsOf, type Ground } from "./grounds.js";
import { needsOf, type GroupWeek } from "./needs.js";
import { coverOn, waysOf, weeksIn, type Ways } from "./ways.js";

/** Columns and rows of the budget's programme; areas in ha, feed in tonnes of dry matter, money. */
export interface Programme {
  readonly season: Season;
  readonly grounds: readonly Ground[];
  readonly ways: Ways;
  readonly weeks: readonly { readonly first: number; readonly days: number }[];
  /** By group, then by week. */
  readonly needs: readonly (readonly GroupWeek[])[];
  /** Sets of groups that share the same grounds; by ground, which set. */
  readonly doorOf: readonly number[];
  readonly doors: readonly (readonly number[])[];
  readonly model: Model;
  readonly at: Places;
  readonly months: readonly number[];
}

/** Where each column and row of a kind stands. */
export interface Places {
  /** Column of a way is its index. Then grass by door, group and week; hay days and given-hay days by group and week. */
  eat(door: number, group: number, week: number): number;
  hay(group: number, week: number): number;
  given(group: number, week: number): number;
  readonly short: number;
  /** Rows. */
  readonly starts: readonly number[];
  readonly givenRows: readonly number[];
  need(group: number, week: number): number;
  readonly store: number;
}

const T = 1000;
/** Grass beats hay at the same price, and hay is fed no sooner than it must be. */
const RATHER_GRASS = 0.01;

/** The budget of a season as a linear programme: as little money as may be for hay, yard days, and what rules charge for the use of grass. */
export function programmeOf(season: Season): Programme {
  const grounds = groundsOf(season);
  const ways = waysOf(season, grounds);
  const weeks = weeksIn(season);
  const needs = needsOf(season, weeks);
  const keys = [...new Set(grounds.map((ground) => ground.groups.join()))];
  const doorOf = grounds.map((ground) => keys.indexOf(ground.groups.join()));
  const doors = keys.map((key) => (key === "" ? [] : key.split(",").map(Number)));
  const months = [...new Set(weeks.map(({ first }) => season.month[first]!))];
  const base = { season, grounds, ways, weeks, needs, doorOf, doors, months };
  return { ...base, ...built(base) };
}

type Base = Omit<Programme, "model" | "at">;

function built(base: Base): Pick<Programme, "model" | "at"> {
  const { season, weeks, needs, doors, ways } = base;
  const [W, G, n] = [weeks.length, season.groups.length, ways.ways.length];
  const eat = (door: number, group: number, week: number): number => n + (door * G + group) * W + week;
  const hayAt = n + doors.length * G * W;
  const hay = (group: number, week: number): number => hayAt + group * W + week;
  const given = (group: number, week: number): number => hayAt + G * W + group * W + week;
  const short = hayAt + 2 * G * W;
  const walks = useOf(season.scenario, "grass-in-hand", null, null) === "off" ? [] : season.walks.filter((t) => season.grazersTaken[t]! > 0);
  const columns = short + 1 + walks.length;
  const rows: ModelRow[] = [];
  const cost = new Float64Array(columns);
  const upper = new Float64Array(columns).fill(Infinity);
  ways.ways.forEach((way, i) => (cost[i] = way.money));
  const starts = momentRows(base, rows);
  doors.forEach((groups, door) => weeks.forEach((_, w) => {
    groups.forEach((g) => { if (needs[g]![w]!.outDays === 0) upper[eat(door, g, w)] = 0; });
    season.groups.forEach((_g, g) => { if (!groups.includes(g)) upper[eat(door, g, w)] = 0; });
    supplyRow(base, rows, door, w, (g) => eat(door, g, w));
  }));
  const needAt = rows.length;
  for (let g = 0; g < G; g++) {
    for (let w = 0; w < W; w++) {
      const { takenT, outDays, dayMoney } = needs[g]![w]!;
      const daily = outDays > 0 ? takenT / outDays : 0;
      cost[hay(g, w)] = dayMoney.hay + dayMoney.yard + RATHER_GRASS * (1 + (W - w) / W);
      cost[given(g, w)] = dayMoney.yard + RATHER_GRASS;
      if (outDays === 0) upper[hay(g, w)] = upper[given(g, w)] = 0;
      const own = doors.flatMap((groups, door) => (groups.includes(g) ? [eat(door, g, w)] : []));
      rows.push({ name: `${season.groups[g]!.name}, week ${w}: fed`, least: takenT, most: takenT, columns: [...own, hay(g, w), given(g, w)], values: [...own.map(() => 1), daily, daily] });
    }
  }
  const store = storeRow(base, rows, hay, short);
  cost[short] = farmWide(season, "hay-stock") ? (season.scenario.prices.hayPerKg * T * farmFigure(season, "hay-stock", "short-share")) / 100 : 0;
  const givenRows = base.months.map((month) => {
    const own = needs.flatMap((_, g) => weeks.flatMap(({ first }, w) => (season.month[first] === month ? [{ at: given(g, w), kg: needs[g]![w]!.hayDayKg }] : [])));
    return rows.push({ name: `hay given in month ${month}`, least: -Infinity, most: 0, columns: own.map(({ at }) => at), values: own.map(({ kg }) => kg / T) }) - 1;
  });
  walks.forEach((t, i) => {
    cost[short + 1 + i] = farmFigure(season, "grass-in-hand", "price");
    walkRow(base, rows, t, short + 1 + i);
  });
  const model = { columns, cost, lower: new Float64Array(columns), upper, whole: new Uint8Array(columns), rows: trimmed(rows, upper) };
  return { model, at: { eat, hay, given, short, starts, givenRows, need: (g, w) => needAt + g * W + w, store } };
}

/** Columns that may be nothing only are left out of rows. */
function trimmed(rows: readonly ModelRow[], upper: Float64Array): readonly ModelRow[] {
  return rows.map((row) => {
    const kept = row.columns.map((_, i) => i).filter((i) => upper[row.columns[i]!]! > 0);
    return kept.length === row.columns.length ? row : { ...row, columns: kept.map((i) => row.columns[i]!), values: kept.map((i) => row.values[i]!) };
  });
}

/** What comes to a moment goes on from it; gives the rows of the stands of the first morning. */
function momentRows({ ways: { ways, moments }, grounds }: Base, rows: ModelRow[]): readonly number[] {
  const own = moments.map(() => ({ columns: [] as number[], values: [] as number[] }));
  ways.forEach((way, i) => {
    own[way.from]!.columns.push(i);
    own[way.from]!.values.push(1);
    if (way.to === null) return;
    own[way.to]!.columns.push(i);
    own[way.to]!.values.push(-1);
  });
  const starts: number[] = [];
  moments.forEach(({ ground, stand, day }, m) => {
    const area = stand === null ? 0 : grounds[ground]!.stands[stand]!.areaHa;
    if (stand !== null) starts.push(rows.length);
    rows.push({ name: `ground ${ground}, day ${day}`, least: area, most: area, ...own[m]! });
  });
  return starts;
}

function supplyRow({ ways: { ways }, doorOf, season }: Base, rows: ModelRow[], door: number, w: number, eat: (g: number) => number): void {
  const own = ways.map((_, i) => i).filter((i) => ways[i]!.kind === "graze" && ways[i]!.week === w && doorOf[ways[i]!.ground] === door);
  const eaters = season.groups.map((_, g) => g);
  rows.push({
    name: `week ${w}: grass`, least: 0, most: 0,
    columns: [...own, ...eaters.map(eat)], values: [...own.map((i) => ways[i]!.taken / T), ...eaters.map(() => -1)],
  });
}

/** In store, made and fed against what winter needs; what is fed on days that the owner's own dates keep animals in is fixed. */
function storeRow({ season, ways: { ways }, needs, weeks }: Base, rows: ModelRow[], hay: (g: number, w: number) => number, short: number): number {
  const { inStoreKg, winterNeedKg } = season.scenario.hay;
  const fixed = needs.flat().reduce((sum, need) => sum + need.fixedHayKg, 0);
  const cuts = ways.map((_, i) => i).filter((i) => ways[i]!.hay > 0);
  const fed = needs.flatMap((_, g) => weeks.map((_week, w) => ({ at: hay(g, w), kg: needs[g]![w]!.hayDayKg })));
  return rows.push({
    name: "hay", least: (winterNeedKg - inStoreKg + fixed) / T, most: Infinity,
    columns: [short, ...cuts, ...fed.map(({ at }) => at)], values: [1, ...cuts.map((i) => ways[i]!.hay / T), ...fed.map(({ kg }) => -kg / T)],
  }) - 1;
}

/** Days of grass ahead on a weekly walk, against the wish. */
function walkRow({ season, ways: { ways, moments }, grounds }: Base, rows: ModelRow[], t: number, short: number): void {
  const daily = season.grazersTaken[t]! / T;
  const columns: number[] = [];
  const values: number[] = [];
  ways.forEach((way, i) => {
    const ground = grounds[way.ground]!;
    const from = moments[way.from]!;
    if (from.day > t || way.day <= t || !ground.like.open[t] || !ground.groups.some((g) => season.groups[g]!.grazer)) return;
    const above = coverOn(season, ground, from, t) - ground.figures.residual;
    if (above <= 0) return;
    columns.push(i);
    values.push(above / T);
  });
  rows.push({ name: `walk on day ${t}`, least: daily * grassWish(season, t), most: Infinity, columns: [...columns, short], values: [...values, daily] });
}
