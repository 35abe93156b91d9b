import { rowOf } from "../science/tables.js";
import { take, type Desk } from "./desk.js";
import type { Kind } from "./scenario.js";

/** Defaults that no table publishes: judgement, all of them, each settable in the farm file. */
export const OWN = {
  distanceM: 100,
  moveMinutes: 15,
  setMinutes: 30,
  towMinutes: 30,
  netMinutes: 40,
  handMinutes: 10,
  pigsStripMinutes: 60,
  pigsCellMinutes: 120,
  pigDaysPerHa: 3500,
  netM: 50,
  reelM: 200,
  assumedOwnerMinutes: 240,
} as const;

/** Money a group and day in a yard besides its feed: bedding, and the work that birds and pigs then do not do. */
export function yardCostOf(kind: Kind, grazer: boolean): number {
  return grazer ? 1 : kind === "pigs" ? 4 : 6;
}

/** A letter by kind for sheets. Geese share their capital with goats, so they take two signs. */
export const KIND_LETTERS: Readonly<Record<Kind, string>> = {
  cattle: "C", sheep: "S", goats: "G", horses: "H", pigs: "P", layers: "L", broilers: "B", turkeys: "T", ducks: "D", geese: "Ge",
};

/** Prices taken when none is written, in money for one kg, hour, hectare and haul; by currency of the country. */
export const USUAL_PRICES = {
  GBP: { hay: 0.15, labour: 14, mowing: 180, haul: 0 },
  USD: { hay: 0.17, labour: 17, mowing: 220, haul: 0 },
} as const;

/** A planner's default of the published tables, taken for a subject; shares come as shares. */
export function takeDefault(desk: Desk, key: string, subject: string, label = key): number {
  const row = rowOf(desk.tables.defaults, key);
  take(desk, label, subject, `${row.value} ${row.unit}`.trim(), row.source, row.status);
  return row.unit === "%" ? row.value / 100 : row.value;
}

/** A default of judgement, taken for a subject. */
export function takeOwn<V>(desk: Desk, key: string, subject: string, value: V, shown: string): V {
  take(desk, key, subject, shown, "judgement", "judgement");
  return value;
}
