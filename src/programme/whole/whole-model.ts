import { useOf } from "../../farm/scenario.js";
import { farmFigure, farmWide } from "../half.js";
import type { PathTables } from "../path-tables.js";
import { grassWish } from "../rules/grass-in-hand.js";
import type { Model } from "../solver.js";
import { Rows } from "./rows.js";
import type { Season } from "../../season/season.js";
import type { WholeCard } from "./all-cards.js";

/** The whole season as one programme: its first columns are the cards, in their order. */
export interface WholeModel {
  readonly model: Model;
  readonly cards: readonly WholeCard[];
  readonly rows: Rows;
}

/**
 * One card a cell, every group in one place every day of its own, yard spells, hauls, the mower's coming, and all
 * rules across cells. An answer costs what the plan costs, to the last charge, but for `always`.
 */
export function wholeModel(season: Season, tables: PathTables, cards: readonly WholeCard[]): WholeModel {
  const b = new Rows();
  for (const card of cards) b.column(cardMoney(tables, card), 1, true);
  season.cells.forEach((_, c) => b.row(`one card ${c}`, 1, 1));
  tables.rows.forEach(({ row }, r) => row.limit.forEach((most, t) => b.row(`day ${r} ${t}`, -Infinity, Math.max(most, -1e9))));
  season.groups.forEach((_, g) => addGroup(season, tables, b, g));
  addFarm(season, b, cards);
  cards.forEach((card, i) => addCard(season, tables, b, card, i));
  return { model: b.model(), cards, rows: b };
}

/** Money of a card: its own, and its stays' days and starts. */
export function cardMoney({ width, startMoney, standMoney }: PathTables, { cell, stays, totals }: WholeCard): number {
  let cost = totals.money;
  for (const { group, first, last } of stays) {
    cost += startMoney[group][first * width + cell + 1];
    for (let t = first; t <= last; t++) cost += standMoney[group][t * width + cell + 1];
  }
  return cost;
}

/** Rows and columns of a group's days: one place a day, yard days, yard spells begun, hauls. */
function addGroup(season: Season, tables: PathTables, b: Rows, g: number): void {
  const { present, arrives, hayKg } = season.groups[g];
  const { rows, width, standMoney, standOver, startMoney, startOver, haulMoney } = tables;
  let before = -1;
  for (let t = 0; t < season.days; t++) {
    if (!present[t]) {
      before = -1;
      continue;
    }
    const at = t * width;
    b.row(`placed ${g} ${t}`, 1, 1);
    b.row(`yard ${g} ${t}`, -Infinity, 0);
    const yard = b.column(standMoney[g][at], standOver[g][at] > 0 ? 0 : 1, true);
    const start = b.column(startMoney[g][at], startOver[g][at] > 0 ? 0 : 1, false);
    b.put(`placed ${g} ${t}`, yard, 1);
    b.put(`yard ${g} ${t}`, yard, 1);
    b.put(`yard ${g} ${t}`, start, -1);
    if (before >= 0 && !arrives[t]) b.put(`yard ${g} ${t}`, before, -1);
    b.later("hay", yard, -hayKg[t]);
    rows.forEach((row, r) => {
      b.put(`day ${r} ${t}`, yard, row.stand?.[g][at] ?? 0);
      b.put(`day ${r} ${t}`, start, row.start?.[g][at] ?? 0);
    });
    season.scenario.fields.forEach((_, field) => {
      b.row(`field ${g} ${field} ${t}`, -Infinity, 0);
      const haul = b.column(haulMoney[g][field], 1, false);
      b.put(`field ${g} ${field} ${t}`, haul, -1);
      rows.forEach((row, r) => b.put(`day ${r} ${t}`, haul, row.haul?.[g][field] ?? 0));
    });
    before = yard;
  }
}

function addCard(season: Season, { rows, width }: PathTables, b: Rows, { cell, stays, totals }: WholeCard, i: number): void {
  b.put(`one card ${cell}`, i, 1);
  const { field } = season.cells[cell];
  for (const { group, first, last } of stays) {
    const strip = season.scenario.groups[group].strip;
    for (let t = first; t <= last; t++) {
      b.put(`placed ${group} ${t}`, i, 1);
      const at = t * width + cell + 1;
      const steps = strip !== null && t > first && (t - first) % strip.days === 0;
      rows.forEach((row, r) => b.put(`day ${r} ${t}`, i, (row.stand?.[group][at] ?? 0) + (t === first ? (row.start?.[group][at] ?? 0) : 0) + (steps ? (row.step?.[group][t] ?? 0) : 0)));
    }
    b.put(`field ${group} ${field} ${first}`, i, 1);
    if (last + 1 < season.days && !season.groups[group].arrives[last + 1]) b.put(`field ${group} ${field} ${last + 1}`, i, -1);
  }
  totals.grass.forEach((kg, w) => b.put(`grass ${w}`, i, kg));
  totals.nitrogenByYear.forEach((kg, y) => b.put(`nitrogen ${y}`, i, kg));
  b.put("hay", i, totals.hayMade);
  for (let k = 0; k < totals.cuts.length; k += 2) {
    b.put(`mown ${totals.cuts[k]}`, i, totals.cuts[k + 1]);
    b.put(`comes ${cell} ${totals.cuts[k]}`, i, 1);
  }
}

/** Rules of the whole farm, with what may be short or over at a price; by a hard rule, not at all. */
function addFarm(season: Season, b: Rows, cards: readonly WholeCard[]): void {
  const { scenario, walks, grazersTaken, cells } = season;
  const most = (rule: "grass-in-hand" | "nitrogen-ceiling"): number => (useOf(scenario, rule, null, null) === "hard" ? 0 : Infinity);
  if (farmWide(season, "grass-in-hand")) {
    walks.forEach((t, w) => {
      const wanted = grassWish(season, t) * grazersTaken[t];
      if (wanted <= 0) return;
      b.row(`grass ${w}`, wanted, Infinity);
      b.put(`grass ${w}`, b.column(farmFigure(season, "grass-in-hand", "price") / grazersTaken[t], most("grass-in-hand"), false), 1);
    });
  }
  const holding = farmFigure(season, "nitrogen-ceiling", "holding") * cells.reduce((sum, cell) => sum + cell.areaHa, 0);
  if (farmWide(season, "nitrogen-ceiling") && Number.isFinite(holding)) {
    for (let y = 0; y < 3; y++) {
      b.row(`nitrogen ${y}`, -Infinity, holding);
      b.put(`nitrogen ${y}`, b.column(farmFigure(season, "nitrogen-ceiling", "holding-price"), most("nitrogen-ceiling"), false), -1);
    }
  }
  if (farmWide(season, "hay-stock")) addHay(season, b, cards);
}

/** Winter's hay, and the mower: it comes for so much ground at least, and is paid by the hectare beyond that. */
function addHay(season: Season, b: Rows, cards: readonly WholeCard[]): void {
  const { hay, prices } = season.scenario;
  const together = farmFigure(season, "hay-stock", "together");
  b.row("hay", hay.winterNeedKg - hay.inStoreKg, Infinity);
  b.put("hay", b.column(prices.hayPerKg * (farmFigure(season, "hay-stock", "short-share") / 100), Infinity, false), 1);
  b.settle("hay");
  const days = new Set(cards.flatMap(({ totals }) => totals.cuts.filter((_, k) => k % 2 === 0)));
  for (const t of days) {
    const comes = b.column(together * prices.mowingPerHa, 1, false);
    const beyond = b.column(prices.mowingPerHa, Infinity, false);
    b.row(`mown ${t}`, -Infinity, 0);
    b.put(`mown ${t}`, comes, -together);
    b.put(`mown ${t}`, beyond, -1);
    season.cells.forEach((_, c) => {
      b.row(`comes ${c} ${t}`, -Infinity, 0);
      b.put(`comes ${c} ${t}`, comes, -1);
    });
  }
}
