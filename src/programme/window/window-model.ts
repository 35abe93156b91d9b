import { AWAY } from "../../season/season.js";
import type { Draft } from "../draft.js";
import type { Model } from "../solver.js";
import { Builder, type Column } from "./builder.js";
import type { Card, FreeDays } from "./cards.js";
import { addShorts, farmRows } from "./farm-rows.js";
import { addHauls, addYard, fieldRows } from "./group-days.js";

export type { Column } from "./builder.js";

export interface WindowModel {
  readonly model: Model;
  readonly columns: readonly Column[];
}

/**
 * The window as a programme: one card a cell, every freed group in one place every free day, yard spells and hauls,
 * and the rules across cells on what the rest of the plan leaves. With `breaking`, money for each step by which a rule
 * is broken, none is out of the question any more.
 */
export function windowModel(draft: Draft, free: readonly FreeDays[], cards: readonly (readonly Card[])[], breaking: number | null = null): WindowModel {
  const b = new Builder();
  cards.forEach((_, c) => b.row(`one card of ${draft.season.cells[c].name}`, 1, 1));
  for (const f of free) {
    for (let t = f.from; t <= f.to; t++) if (draft.place[f.group][t] !== AWAY) b.row(`placed ${f.group} ${t}`, 1, 1);
    fieldRows(draft, b, f);
  }
  dayRows(draft, b, free);
  farmRows(draft, b, free, cards);
  for (const own of cards) for (const card of own) addCard(draft, b, card, breaking ?? 0);
  for (const f of free) addYard(draft, b, f, breaking);
  for (const f of free) addHauls(draft, b, f);
  addShorts(draft, b, breaking);
  if (breaking !== null) addDayShorts(draft, b, breaking);
  return { model: b.model(), columns: b.columns };
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

/** What a day's row may be over at a price. */
function addDayShorts({ season, tables }: Draft, b: Builder, breaking: number): void {
  tables.rows.forEach(({ row }, r) => {
    for (let t = 0; t < season.days; t++) {
      const name = `day ${r} ${t}`;
      if (b.has(name)) b.put(name, b.column({ kind: "short", what: name }, breaking * row.weight, Infinity, false), -1);
    }
  });
}

function addCard(draft: Draft, b: Builder, card: Card, breaking: number): void {
  const { season, tables, keep } = draft;
  const { cell, stays, state } = card;
  let cost = state.money + breaking * state.over;
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
