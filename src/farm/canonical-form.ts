import { child, entriesOf, plainOf, type Entry, type MapNode, type Plain, type Tree } from "./tree.js";

/**
 * The long form as one line of JSON in a fixed order of keys (RFC 8785), without notes: what a farm's print is taken
 * of. Remarks and layout do not count; the order of groups and cells does, for plans and sheets keep it.
 *
 * @param onMap what the map says of the farm, by name; none where it names no map
 */
export function canonicalForm(long: MapNode, onMap: Readonly<Record<string, string>> | null = null): string {
  const cells = entriesOf(child(long, "fields")).flatMap((field) => entriesOf(child(field.value, "cells")).map((cell) => cell.key));
  const groups = entriesOf(child(long, "groups")).map((group) => group.key);
  return canonical({ farm: withoutNotes(plainOf(withoutHandover(long))), cells, groups, ...(onMap ? { map: onMap } : {}) });
}

/** What helpers' sheets tell beside the plan changes no plan: it may be written or mended without a plan becoming another farm's. */
const BESIDE = { farm: ["paths"], fields: ["way", "public-path"], cells: ["public-path"], groups: ["feed", "take", "births"], kit: ["lies", "least-voltage", "least-voltage-wool"] } as const;

function withoutHandover(long: MapNode): MapNode {
  const each = (tree: Tree, keys: readonly string[], inner: (one: Tree) => Tree = (one) => one): Tree => mapped(tree, (_, value) => inner(without(value, keys)));
  const cellsToo = (field: Tree): Tree => mapped(field, (key, value) => (key === "cells" ? each(value, BESIDE.cells) : value));
  const bare = mapped(without(long, BESIDE.farm), (key, value) => {
    if (key === "fields") return each(value, BESIDE.fields, cellsToo);
    if (key === "groups") return each(value, BESIDE.groups);
    return key === "kit" ? without(value, BESIDE.kit) : value;
  });
  if (bare.kind !== "map") return long;
  const empty = ({ key, value }: Entry): boolean => key === "kit" && value.kind === "map" && value.entries.length === 0;
  return { ...bare, entries: bare.entries.filter((entry) => !empty(entry)) };
}

function without(tree: Tree, keys: readonly string[]): Tree {
  return tree.kind === "map" ? { ...tree, entries: tree.entries.filter(({ key }) => !keys.includes(key)) } : tree;
}

function mapped(tree: Tree, change: (key: string, value: Tree) => Tree): Tree {
  return tree.kind === "map" ? { ...tree, entries: tree.entries.map((entry) => ({ ...entry, value: change(entry.key, entry.value) })) } : tree;
}

/** JSON with keys in the order of their code units; all values here are texts, lists and maps. */
export function canonical(value: Plain): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (isList(value)) return `[${value.map(canonical).join(",")}]`;
  const keys = Object.keys(value).sort();
  return `{${keys.map((key) => `${JSON.stringify(key)}:${canonical(value[key]!)}`).join(",")}}`;
}

/** A note is a text; a group or cell that somebody calls "note" is a map and counts. */
function withoutNotes(value: Plain): Plain {
  if (typeof value === "string") return value;
  if (isList(value)) return value.map(withoutNotes);
  const kept = Object.entries(value).filter(([key, inner]) => key !== "note" || typeof inner !== "string");
  return Object.fromEntries(kept.map(([key, inner]) => [key, withoutNotes(inner)]));
}

function isList(value: Plain): value is readonly Plain[] {
  return Array.isArray(value);
}
