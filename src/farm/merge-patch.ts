import { isNull, type Entry, type MapNode, type Place, type Tree } from "./tree.js";

/** Says that a change takes away what is not there. */
export type NothingToTake = (key: string, at: Place) => void;

/**
 * JSON Merge Patch (RFC 7396) on trees: maps merge key by key, anything else replaces whole, null takes away. Each
 * node keeps the place of the file that wrote it, and each entry its order; new ones come last.
 */
export function mergePatch(target: Tree | undefined, patch: Tree, nothingToTake: NothingToTake = () => undefined): Tree {
  if (patch.kind !== "map") return patch;
  const base: MapNode = target?.kind === "map" ? target : { ...patch, entries: [] };
  return { ...base, entries: patch.entries.reduce((entries, change) => withEntry(entries, change, nothingToTake), base.entries) };
}

function withEntry(entries: readonly Entry[], change: Entry, nothingToTake: NothingToTake): readonly Entry[] {
  const old = entries.find((entry) => entry.key === change.key);
  if (isNull(change.value)) {
    if (!old) nothingToTake(change.key, change.at);
    return entries.filter((entry) => entry !== old);
  }
  const value = mergePatch(old?.value, change.value, nothingToTake);
  if (!old) return [...entries, { ...change, value }];
  return entries.map((entry) => (entry === old ? { key: entry.key, at: change.value.kind === "map" ? entry.at : change.at, value } : entry));
}
