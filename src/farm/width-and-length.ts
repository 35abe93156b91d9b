import { AMOUNT_KEYS } from "./amount-keys.js";
import { amountAt, say, type Desk } from "./desk.js";
import { child, entriesOf, type Entry, type MapNode, type Tree } from "./tree.js";

const SIDES = ["width", "length"] as const;
const OTHER_WAYS = ["area", "sides", "boundary"] as const;

/** Stands for a size that was refused, so that nothing more is said of it; no scenario leaves with it. */
const REFUSED = "1 ha";

/** The farm with every field and cell of a `width` and a `length` given the four corners of that rectangle; faults in them are said. */
export function withRectangles(desk: Desk, root: MapNode): MapNode {
  return changed(root, "fields", (fields) => eachMap(fields, (field, name) =>
    rectangle(desk, changed(field, "cells", (cells) => eachMap(cells, (cell, cellName) => rectangle(desk, cell, cellName))), name)));
}

/** A map with the map under one key changed; anything else stays. */
function changed(map: MapNode, key: string, change: (value: MapNode) => MapNode): MapNode {
  return { ...map, entries: map.entries.map((entry) => (entry.key === key && entry.value.kind === "map" ? { ...entry, value: change(entry.value) } : entry)) };
}

function eachMap(map: MapNode, change: (value: MapNode, name: string) => MapNode): MapNode {
  return { ...map, entries: map.entries.map((entry) => (entry.value.kind === "map" ? { ...entry, value: change(entry.value, entry.key) } : entry)) };
}

function rectangle(desk: Desk, map: MapNode, name: string): MapNode {
  const given = entriesOf(map).filter(({ key }) => (SIDES as readonly string[]).includes(key));
  if (given.length === 0) return map;
  const rest = map.entries.filter((entry) => !given.includes(entry));
  const other = OTHER_WAYS.find((key) => child(map, key) !== undefined);
  if (other !== undefined) {
    say(desk, given[0]!.at, { code: "two-ways", found: `${name} has ${other} and ${given[0]!.key}`, allowed: "one of them says how large it is", next: `take out all but ${other}` });
    return { ...map, entries: rest };
  }
  const lengths = given.map((entry) => amountAt(desk, entry.value, `${name}: ${entry.key}`, AMOUNT_KEYS.side));
  if (given.length === 1) {
    const missing = SIDES.find((key) => key !== given[0]!.key)!;
    say(desk, given[0]!.at, { code: "key-missing", found: `${name} has a ${given[0]!.key} without a ${missing}`, allowed: "a rectangle has both", next: `write ${missing}: 60 m` });
  }
  const whole = given.length === 2 && lengths.every((m) => !Number.isNaN(m));
  return { ...map, entries: [...rest, whole ? cornersOf(given[0]!, lengths as [number, number]) : { key: "area", at: given[0]!.at, value: wordAt(given[0]!, REFUSED) }] };
}

function cornersOf(at: Entry, [a, b]: readonly [number, number]): Entry {
  const corners = [[0, 0], [a, 0], [a, b], [0, b]].map(([x, y]) => wordAt(at, `${x} m x ${y} m`));
  const { file, line, column } = at.value;
  return { key: "boundary", at: at.at, value: { kind: "list", items: corners, file, line, column } };
}

function wordAt({ value: { file, line, column } }: Entry, text: string): Tree {
  return { kind: "text", text, plain: false, file, line, column };
}
