import { AWAY, YARD } from "../../season/season.js";
import type { Draft } from "../draft.js";
import type { Builder } from "./builder.js";
import type { FreeDays } from "./cards.js";

/** Days of a window on which a haul may begin: its own, and the morning after. */
function haulDays(draft: Draft, { group, from, to }: FreeDays): number[] {
  const days: number[] = [];
  for (let t = from; t <= Math.min(to + 1, draft.season.days - 1); t++) {
    if (draft.place[group][t] !== AWAY && !(t === to + 1 && draft.season.groups[group].arrives[t])) days.push(t);
  }
  return days;
}

/** Field of a fixed place, or -1 for yard and nowhere. */
function fieldOf(draft: Draft, group: number, day: number): number {
  const place = day < 0 ? AWAY : draft.place[group][day];
  return place >= 0 ? draft.season.cells[place].field : -1;
}

/** in(t) - in(t - 1) - haul(t) <= 0 for each field: going into a field is a haul. */
export function fieldRows(draft: Draft, b: Builder, f: FreeDays): void {
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

/** Columns of yard days and of yard spells begun, the morning after the free days with them. Forbidden ones have a price with `breaking`. */
export function addYard(draft: Draft, b: Builder, { group, from, to }: FreeDays, breaking: number | null): void {
  const { season, tables, keep, place } = draft;
  const own = season.groups[group];
  const yardAt = (t: number): number => t * tables.width;
  const most = (over: number): number => (over > 0 && breaking === null ? 0 : 1);
  const price = (over: number): number => over * (breaking ?? 0);
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
      const cost = tables.standMoney[group][at] + (keep && keep.place[group][t] !== YARD ? keep.price : 0) + price(tables.standOver[group][at]);
      column = b.column({ kind: "yard", group, day: t }, cost, most(tables.standOver[group][at]), true);
      b.put(`placed ${group} ${t}`, column, 1);
      tables.rows.forEach((row, r) => b.put(`day ${r} ${t}`, column, row.stand?.[group][at] ?? 0));
      b.put("hay", column, -own.hayKg[t]);
    }
    const wasYard = t > 0 && !own.arrives[t] && t === from && place[group][t - 1] === YARD ? 1 : 0;
    const name = `yard start ${group} ${t}`;
    const start = b.column({ kind: "yard-start", group, day: t }, tables.startMoney[group][at] + price(tables.startOver[group][at]), most(tables.startOver[group][at]), false);
    b.row(name, -Infinity, wasYard - (fixedNext ? 1 : 0));
    if (column >= 0) b.put(name, column, 1);
    b.put(name, start, -1);
    if (before >= 0 && !own.arrives[t]) b.put(name, before, -1);
    tables.rows.forEach((row, r) => b.put(`day ${r} ${t}`, start, row.start?.[group][at] ?? 0));
    before = column;
  }
}

/** Columns of hauls, one a field and day. */
export function addHauls(draft: Draft, b: Builder, f: FreeDays): void {
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
