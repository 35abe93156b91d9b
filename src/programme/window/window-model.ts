import { AWAY, YARD } from "../../season/season.js";
import type { Draft } from "../draft.js";
import { farmFigure } from "../half.js";
import { useOf } from "../../farm/scenario.js";
import { grassWish } from "../rules/grass-in-hand.js";
import type { Model, ModelRow } from "../solver.js";
import type { Card, FreeDays } from "./cards.js";

/** What a column of the window's programme stands for. */
export type Column =
  | { readonly kind: "card"; readonly card: Card }
  | { readonly kind: "yard"; readonly group: number; readonly day: number }
  | { readonly kind: "yard-start"; readonly group: number; readonly day: number }
  | { readonly kind: "haul"; readonly group: number; readonly field: number; readonly day: number }
  | { readonly kind: "short"; readonly what: string };

export interface WindowModel {
  readonly model: Model;
  readonly columns: readonly Column[];
}

/** Collects columns and rows by name while a window's programme is built. */
class Builder {
  readonly columns: Column[] = [];
  readonly cost: number[] = [];
  readonly upper: number[] = [];
  readonly whole: number[] = [];
  private readonly rows = new Map<string, { least: number; most: number; columns: number[]; values: number[] }>();

  column(column: Column, cost: number, upper: number, whole: boolean): number {
    this.columns.push(column);
    this.cost.push(cost);
    this.upper.push(upper);
    this.whole.push(whole ? 1 : 0);
    return this.columns.length - 1;
  }

  row(name: string, least: number, most: number): void {
    this.rows.set(name, { least, most, columns: [], values: [] });
  }

  has(name: string): boolean {
    return this.rows.has(name);
  }

  put(name: string, column: number, value: number): void {
    const row = this.rows.get(name);
    if (!row || value === 0) return;
    const at = row.columns.length - 1;
    if (at >= 0 && row.columns[at] === column) row.values[at] += value;
    else {
      row.columns.push(column);
      row.values.push(value);
    }
  }

  model(): Model {
    const rows: ModelRow[] = [...this.rows].map(([name, row]) => ({ name, ...row }));
    const columns = this.columns.length;
    return { columns, cost: Float64Array.from(this.cost), lower: new Float64Array(columns), upper: Float64Array.from(this.upper), whole: Uint8Array.from(this.whole), rows };
  }
}

/**
 * The window as a programme: one card a cell, every freed group in one place every free day, yard spells and hauls,
 * and the rules across cells on what the rest of the plan leaves.
 */
export function windowModel(draft: Draft, free: readonly FreeDays[], cards: readonly (readonly Card[])[]): WindowModel {
  const b = new Builder();
  cards.forEach((_, c) => b.row(`one card of ${draft.season.cells[c].name}`, 1, 1));
  for (const f of free) {
    for (let t = f.from; t <= f.to; t++) if (draft.place[f.group][t] !== AWAY) b.row(`placed ${f.group} ${t}`, 1, 1);
    fieldRows(draft, b, f);
  }
  dayRows(draft, b, free);
  farmRows(draft, b, free, cards);
  for (const own of cards) for (const card of own) addCard(draft, b, card);
  for (const f of free) addYard(draft, b, f);
  for (const f of free) addHauls(draft, b, f);
  addShorts(draft, b);
  return { model: b.model(), columns: b.columns };
}

/** Days of a window on which a haul may begin: its own, and the morning after. */
function haulDays(draft: Draft, { group, from, to }: FreeDays): number[] {
  const days: number[] = [];
  for (let t = from; t <= Math.min(to + 1, draft.season.days - 1); t++) if (draft.place[group][t] !== AWAY && !(t === to + 1 && draft.season.groups[group].arrives[t])) days.push(t);
  return days;
}

/** Field of a fixed place, or -1 for yard and nowhere. */
function fieldOf(draft: Draft, group: number, day: number): number {
  const place = day < 0 ? AWAY : draft.place[group][day];
  return place >= 0 ? draft.season.cells[place].field : -1;
}

/** in(t) - in(t - 1) - haul(t) <= 0 for each field: going into a field is a haul. */
function fieldRows(draft: Draft, b: Builder, f: FreeDays): void {
  const { group, from, to } = f;
  const { scenario, groups } = draft.season;
  for (const t of haulDays(draft, f)) {
    scenario.fields.forEach((_, field) => {
      const before = t === from && !groups[group].arrives[t] && fieldOf(draft, group, t - 1) === field ? 1 : 0;
      const after = t === to + 1 && fieldOf(draft, group, t) === field ? 1 : 0;
      b.row(`field ${group} ${field} ${t}`, -Infinity, before - after);
    });
  }
}

/** Rows by day with what the fixed groups and days leave. */
function dayRows(draft: Draft, b: Builder, free: readonly FreeDays[]): void {
  const { season, tables, used } = draft;
  const from = Math.min(...free.map((f) => f.from));
  const to = Math.min(Math.max(...free.map((f) => f.to)) + 1, season.days - 1);
  const own = draft.usedBy(free.map((f) => ({ group: f.group, from: f.from, to: f.to + 1 })));
  tables.rows.forEach(({ row }, r) => {
    for (let t = from; t <= to; t++) {
      let fixed = used[r][t] - own[r][t];
      for (const f of free) if (t === f.to + 1) fixed += afterUse(draft, r, f);
      b.row(`day ${r} ${t}`, -Infinity, Math.max(row.limit[t] - fixed, -1e9));
    }
  });
}

/** What the stay after the free days uses on its first day, hauls and yard starts apart. */
function afterUse(draft: Draft, r: number, { group, to }: FreeDays): number {
  const { season, tables } = draft;
  const t = to + 1;
  const place = t < season.days ? draft.place[group][t] : AWAY;
  if (place === AWAY) return 0;
  const at = t * tables.width + place + 1;
  const row = tables.rows[r];
  const starts = place >= 0 || season.groups[group].arrives[t];
  const haul = season.groups[group].arrives[t] && place >= 0 ? (row.haul?.[group][season.cells[place].field] ?? 0) : 0;
  return (row.stand?.[group][at] ?? 0) + (starts ? (row.start?.[group][at] ?? 0) : 0) + haul;
}

function addCard(draft: Draft, b: Builder, card: Card): void {
  const { season, tables, keep } = draft;
  const { cell, stays, state } = card;
  let cost = state.money;
  for (const { group, first, last } of stays) {
    cost += tables.startMoney[group][first * tables.width + cell + 1];
    for (let t = first; t <= last; t++) {
      cost += tables.standMoney[group][t * tables.width + cell + 1];
      if (keep && keep.place[group][t] !== cell) cost += keep.price;
    }
  }
  const column = b.column({ kind: "card", card }, cost, 1, true);
  b.put(`one card of ${season.cells[cell].name}`, column, 1);
  const { field } = season.cells[cell];
  for (const { group, first, last } of stays) {
    const strip = season.scenario.groups[group].strip;
    for (let t = first; t <= last; t++) {
      b.put(`placed ${group} ${t}`, column, 1);
      const at = t * tables.width + cell + 1;
      const steps = strip !== null && t > first && (t - first) % strip.days === 0;
      tables.rows.forEach((row, r) => b.put(`day ${r} ${t}`, column, (row.stand?.[group][at] ?? 0) + (t === first ? (row.start?.[group][at] ?? 0) : 0) + (steps ? (row.step?.[group][t] ?? 0) : 0)));
    }
    if (b.has(`field ${group} ${field} ${first}`)) b.put(`field ${group} ${field} ${first}`, column, 1);
    if (!season.groups[group].arrives[last + 1]) b.put(`field ${group} ${field} ${last + 1}`, column, -1);
  }
  state.grass.forEach((kg, w) => b.put(`grass ${w}`, column, kg));
  state.nitrogenByYear.forEach((kg, y) => b.put(`nitrogen ${y}`, column, kg));
  b.put("hay", column, state.hayMade);
  for (let i = 0; i < state.cuts.length; i += 2) b.put(`mown ${state.cuts[i]}`, column, state.cuts[i + 1]);
}

function addYard(draft: Draft, b: Builder, { group, from, to }: FreeDays): void {
  const { season, tables, keep, place } = draft;
  const own = season.groups[group];
  const yardAt = (t: number): number => t * tables.width;
  let before = -1;
  for (let t = from; t <= Math.min(to + 1, season.days - 1); t++) {
    const fixedNext = t === to + 1;
    if (place[group][t] === AWAY || (fixedNext && place[group][t] !== YARD)) {
      before = -1;
      continue;
    }
    const at = yardAt(t);
    let column = -1;
    if (!fixedNext) {
      const cost = tables.standMoney[group][at] + (keep && keep.place[group][t] !== YARD ? keep.price : 0);
      column = b.column({ kind: "yard", group, day: t }, cost, tables.standOver[group][at] > 0 ? 0 : 1, true);
      b.put(`placed ${group} ${t}`, column, 1);
      tables.rows.forEach((row, r) => b.put(`day ${r} ${t}`, column, row.stand?.[group][at] ?? 0));
      b.put("hay", column, -own.hayKg[t]);
    }
    const wasYard = t > 0 && !own.arrives[t] && t === from && place[group][t - 1] === YARD ? 1 : 0;
    const name = `yard start ${group} ${t}`;
    const start = b.column({ kind: "yard-start", group, day: t }, tables.startMoney[group][at], tables.startOver[group][at] > 0 ? 0 : 1, false);
    b.row(name, -Infinity, wasYard - (fixedNext ? 1 : 0));
    if (column >= 0) b.put(name, column, 1);
    b.put(name, start, -1);
    if (before >= 0 && !own.arrives[t]) b.put(name, before, -1);
    tables.rows.forEach((row, r) => b.put(`day ${r} ${t}`, start, row.start?.[group][at] ?? 0));
    before = column;
  }
}

function addHauls(draft: Draft, b: Builder, f: FreeDays): void {
  const { tables, season } = draft;
  for (const t of haulDays(draft, f)) {
    season.scenario.fields.forEach((_, field) => {
      const name = `field ${f.group} ${field} ${t}`;
      const column = b.column({ kind: "haul", group: f.group, field, day: t }, tables.haulMoney[f.group][field], 1, false);
      b.put(name, column, -1);
      tables.rows.forEach((row, r) => b.put(`day ${r} ${t}`, column, row.haul?.[f.group][field] ?? 0));
    });
  }
}

/** Rules of the whole farm that some choice of cards could touch. */
function farmRows(draft: Draft, b: Builder, free: readonly FreeDays[], cards: readonly (readonly Card[])[]): void {
  const { season } = draft;
  const worst = (of: (card: Card) => number, pick: (...values: number[]) => number): number => cards.reduce((sum, own) => sum + own.map(of).reduce((a, v) => pick(a, v)), 0);
  if (useOf(season.scenario, "grass-in-hand", null, null) !== "off") {
    season.walks.forEach((t, w) => {
      const wanted = grassWish(season, t) * season.grazersTaken[t];
      if (wanted > 0 && worst((card) => card.state.grass[w], Math.min) < wanted) b.row(`grass ${w}`, wanted, Infinity);
    });
  }
  if (useOf(season.scenario, "nitrogen-ceiling", null, null) !== "off") {
    const most = holdingNitrogen(draft);
    for (let y = 0; y < 3; y++) if (worst((card) => card.state.nitrogenByYear[y], Math.max) > most) b.row(`nitrogen ${y}`, -Infinity, most);
  }
  const { hay } = season.scenario;
  if (useOf(season.scenario, "hay-stock", null, null) === "off") return;
  b.row("hay", hay.winterNeedKg - hay.inStoreKg + hayFedOutside(draft, free), Infinity);
  for (const t of cutDays(draft)) b.row(`mown ${t}`, -Infinity, farmFigure(season, "hay-stock", "together"));
}

function hayFedOutside(draft: Draft, free: readonly FreeDays[]): number {
  let kg = draft.hayFed;
  for (const { group, from, to } of free) for (let t = from; t <= to; t++) if (draft.place[group][t] === YARD) kg -= draft.season.groups[group].hayKg[t];
  return kg;
}

/** Evenings with a cut. The mower's coming is paid whatever the cards; ground mown beyond that is theirs. */
function cutDays({ season, cuts }: Draft): number[] {
  return [...new Set([...season.cells.flatMap((cell) => cell.ownerCuts.map((cut) => cut.day)), ...cuts.flat()])];
}

function holdingNitrogen({ season }: Draft): number {
  return farmFigure(season, "nitrogen-ceiling", "holding") * season.cells.reduce((sum, cell) => sum + cell.areaHa, 0);
}

/** What may be short or over at a price; by a hard rule, not at all. */
function addShorts(draft: Draft, b: Builder): void {
  const { season } = draft;
  const upper = (rule: "grass-in-hand" | "nitrogen-ceiling"): number => (useOf(season.scenario, rule, null, null) === "hard" ? 0 : Infinity);
  season.walks.forEach((t, w) => {
    if (!b.has(`grass ${w}`)) return;
    const price = farmFigure(season, "grass-in-hand", "price") / season.grazersTaken[t];
    b.put(`grass ${w}`, b.column({ kind: "short", what: `grass ${w}` }, price, upper("grass-in-hand"), false), 1);
  });
  for (let y = 0; y < 3; y++) {
    if (b.has(`nitrogen ${y}`)) b.put(`nitrogen ${y}`, b.column({ kind: "short", what: `nitrogen ${y}` }, farmFigure(season, "nitrogen-ceiling", "holding-price"), upper("nitrogen-ceiling"), false), -1);
  }
  if (b.has("hay")) {
    const price = season.scenario.prices.hayPerKg * (farmFigure(season, "hay-stock", "short-share") / 100);
    b.put("hay", b.column({ kind: "short", what: "hay" }, price, Infinity, false), 1);
  }
  for (const t of cutDays(draft)) {
    if (b.has(`mown ${t}`)) b.put(`mown ${t}`, b.column({ kind: "short", what: `mown ${t}` }, season.scenario.prices.mowingPerHa, Infinity, false), -1);
  }
}
