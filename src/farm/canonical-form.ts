import { child, entriesOf, plainOf, type MapNode, type Plain } from "./tree.js";

/**
 * The long form as one line of JSON in a fixed order of keys (RFC 8785), without notes: what a farm's print is taken
 * of. Remarks and layout do not count; the order of groups and cells does, for plans and sheets keep it.
 *
 * @param onMap what the map says of the farm, by name; none where it names no map
 */
export function canonicalForm(long: MapNode, onMap: Readonly<Record<string, string>> | null = null): string {
  const cells = entriesOf(child(long, "fields")).flatMap((field) => entriesOf(child(field.value, "cells")).map((cell) => cell.key));
  const groups = entriesOf(child(long, "groups")).map((group) => group.key);
  return canonical({ farm: withoutNotes(plainOf(long)), cells, groups, ...(onMap ? { map: onMap } : {}) });
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
