import type { Finding } from "./finding.js";
import { farmShape, INNER_KEYS } from "./shape.js";
import { entriesOf, isNothing, type Entry, type MapNode } from "./tree.js";

/** Keys of the farm itself under which names stand, or that no field or group has: they are known wherever they stand. */
const TOP_KEYS = ["fields", "groups", "pens", "yards", "people", "kit", "prices", "holds", "housing-orders", "standstills"];
const NAMED = ["fields", "groups", "pens", "yards", "people"];

interface Raising {
  readonly findings: Finding[];
  /** Keys of the farm found further in. */
  readonly top: Entry[];
  readonly has: (key: string) => boolean;
}

/**
 * A field, group, pen, yard or person that is set in too far, and so stands inside the one before it, is read where it
 * belongs, and so is "groups" itself; each with one finding.
 */
export function raised(root: MapNode, findings: Finding[]): MapNode {
  const raising: Raising = { findings, top: [], has: (key) => root.entries.some((entry) => entry.key === key) };
  const entries = root.entries.map((entry) => {
    if (!NAMED.includes(entry.key) || entry.value.kind !== "map") return entry;
    const names = topRaised(entry.value, entry, raising).entries;
    return { ...entry, value: { ...entry.value, entries: names.flatMap((name) => namesRaised(name, entry.key, raising)) } };
  });
  return { ...root, entries: [...entries, ...raising.top.flatMap((entry) => raised({ ...root, entries: [entry] }, findings).entries)] };
}

function tooFar(raising: Raising, entry: Entry, owner: Entry, things: string): void {
  const alone = entriesOf(entry.value)[0]?.at.column === entry.at.column;
  const next = `move ${alone ? "its line" : "it and the lines below it"} left to the column of ${owner.key}`;
  raising.findings.push({ ...entry.at, code: "level", found: `${entry.key} is set in too far, it stands inside ${owner.key}`, allowed: `${things} start in one column`, next });
}

/** Keys of the farm out of a map of names, or out of one of them; one with nothing in it takes the lines after it along. */
function topRaised(map: MapNode, owner: Entry, raising: Raising): MapNode {
  const at = map.entries.findIndex(({ key, value }) => TOP_KEYS.includes(key) && !raising.has(key) && (value.kind === "map" || isNothing(value)));
  const found = map.entries[at];
  if (found === undefined) return map;
  const empty = found.value.kind !== "map";
  const rest = map.entries.slice(at + 1);
  if (empty && rest.length === 0) return map;
  const taken: Entry = empty ? { ...found, value: { kind: "map", entries: rest, ...found.at } } : found;
  tooFar(raising, taken, owner, "fields, groups and the other keys of the farm");
  raising.top.push(taken);
  return topRaised({ ...map, entries: [...map.entries.slice(0, at), ...(empty ? [] : rest)] }, owner, raising);
}

/** One named thing, and after it those that stood inside it. */
function namesRaised(entry: Entry, things: string, raising: Raising): readonly Entry[] {
  if (entry.value.kind !== "map") return [entry];
  const own: Entry[] = [];
  const out: Entry[] = [];
  for (const inner of topRaised(entry.value, entry, raising).entries) {
    if (isThing(inner, things)) out.push(inner);
    else if (things === "fields" && inner.key === "cells" && inner.value.kind === "map") own.push({ ...inner, value: { ...inner.value, entries: inner.value.entries.filter((cell) => !isField(cell, out)) } });
    else own.push(inner);
  }
  for (const inner of out) tooFar(raising, inner, entry, things);
  return [{ ...entry, value: { ...entry.value, entries: own } }, ...out.flatMap((inner) => namesRaised(inner, things, raising))];
}

/** A map whose keys are those of such a thing, under a name that is none of its keys. */
function isThing({ key, value }: Entry, things: string): boolean {
  const keys = INNER_KEYS[things]!;
  if (keys.includes(key) || Object.hasOwn(farmShape.shape, key) || value.kind !== "map") return false;
  const known = value.entries.filter((entry) => keys.includes(entry.key)).length;
  return known > 0 && known * 2 >= value.entries.length;
}

/** Among cells, one that has cells is a field. */
function isField(cell: Entry, out: Entry[]): boolean {
  const field = entriesOf(cell.value).some((entry) => entry.key === "cells");
  if (field) out.push(cell);
  return field;
}
