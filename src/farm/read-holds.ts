import type { Span } from "../quantity/calendar.js";
import { nameAt, say, type Desk } from "./desk.js";
import { takeOwn } from "./own-defaults.js";
import { dayAt, spanAt } from "./read-days.js";
import { BIRDS, type Hold, type HousingOrder, type Kind } from "./scenario.js";
import { child, entriesOf, itemsOf, textOf, type Entry, type MapNode, type Tree } from "./tree.js";

export interface HoldNames {
  readonly groups: readonly string[];
  readonly cells: readonly string[];
  readonly yards: readonly string[];
}

/** Holds: a group in a cell, a group in a yard, or a cut of a cell. */
export function readHolds(desk: Desk, root: MapNode, season: Span, names: HoldNames): readonly Hold[] {
  return entriesOf(child(root, "holds")).flatMap((entry) => readHold(desk, entry, season, names) ?? []);
}

function readHold(desk: Desk, entry: Entry, season: Span, names: HoldNames): Hold | undefined {
  const label = `hold ${entry.key}`;
  const name = (key: string, what: string, all: readonly string[]): string | null => {
    const node = child(entry.value, key);
    return (node && nameAt(desk, node, `${label}: ${key}`, what, all)) ?? null;
  };
  const written = ["group", "cell", "yard", "cut"].filter((key) => child(entry.value, key) !== undefined).join(" ");
  const [group, cell, yard] = [name("group", "groups", names.groups), name("cell", "cells", names.cells), name("yard", "yards", names.yards)];
  if (!["group cell", "group yard", "cell cut"].includes(written)) {
    say(desk, entry.at, { code: "hold-form", found: `${label} has ${written.replaceAll(" ", ", ") || "neither group nor cell"}`, allowed: "a hold is a group in a cell, a group in a yard, or a cut of a cell", next: "write two of group, cell, yard and cut" });
    return undefined;
  }
  const node = child(entry.value, "days");
  const days = node && spanAt(desk, node, `${label}: days`, season);
  const cut = textOf(child(entry.value, "cut"));
  return days && { name: entry.key, days, group, cell, yard, cut: cut === "hay" || cut === "topping" ? cut : null };
}

/** Birds' housing orders; all birds unless kinds are named, known on the day they begin unless said. */
export function readHousingOrders(desk: Desk, root: MapNode, season: Span): readonly HousingOrder[] {
  return entriesOf(child(root, "housing-orders")).flatMap((entry) => {
    const span = daysIn(desk, entry, "housing order", season);
    if (!span) return [];
    const known = child(entry.value, "known");
    const kinds = itemsOf(child(entry.value, "kinds")).flatMap((node) => (textOf(node) as Kind | undefined) ?? []);
    if (kinds.length === 0) takeOwn(desk, "kinds", entry.key, null, "all birds");
    const day = known ? dayAt(desk, known, `${entry.key}: known`) : takeOwn(desk, "known", entry.key, span.firstDay, span.firstDay);
    return [{ ...span, name: entry.key, known: day ?? span.firstDay, kinds: kinds.length > 0 ? kinds : [...BIRDS] }];
  });
}

/** Days on which nothing may come on or go off. */
export function readStandstills(desk: Desk, root: MapNode, season: Span): readonly (Span & { readonly name: string })[] {
  return entriesOf(child(root, "standstills")).flatMap((entry) => {
    const span = daysIn(desk, entry, "standstill", season);
    return span ? [{ ...span, name: entry.key }] : [];
  });
}

function daysIn(desk: Desk, entry: Entry, what: string, season: Span): Span | undefined {
  const node: Tree | undefined = child(entry.value, "days");
  return node && spanAt(desk, node, `${what} ${entry.key}`, season);
}
