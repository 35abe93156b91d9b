import type { Tables } from "../science/tables.js";
import type { Finding, Result } from "./finding.js";
import { inFileOrder } from "./finding.js";
import { longForm } from "./long-form.js";
import { mergePatch } from "./merge-patch.js";
import { parseTree } from "./parse-tree.js";
import { readLongForm, type Hash } from "./read-scenario.js";
import { isFileName, mapFilesOf } from "./map/read-maps.js";
import type { MapText } from "./map/map-feature.js";
import type { Scenario } from "./scenario.js";
import { child, textOf, type MapNode, type Tree } from "./tree.js";

/** A farm file or a change: its name for findings, and its text. */
export interface FarmText {
  readonly file: string;
  readonly text: string;
}

/** A scenario with the titles of the changes laid over it, in turn. */
export interface Changed {
  readonly scenario: Scenario;
  readonly titles: readonly string[];
}

/** Reads a farm with changes laid over it one after the other; the whole is checked once, findings point into each file. */
export function readChanged(farm: FarmText, changes: readonly FarmText[], tables: Tables, hash?: Hash, maps: readonly MapText[] = []): Result<Changed> {
  const files = [farm.file, ...changes.map((change) => change.file)];
  const parsed = [farm, ...changes].map(({ file, text }) => parseTree(text, file));
  const said = parsed.flatMap(({ findings }) => findings);
  if (parsed.some(({ tree }) => tree === null)) return { ok: false, findings: inFileOrder(said, files) };
  const [base, ...patches] = parsed.map(({ tree }) => longForm(tree!)) as [MapNode, ...MapNode[]];
  const notes: Finding[] = [];
  const merged = patches.reduce((whole, patch) => laidOver(whole, patch, notes), base);
  const read = readLongForm(merged, { tables, hash, maps, files, said: [...said, ...patches.flatMap(untitled)] });
  if (!read.ok) return read;
  return { ok: true, value: { scenario: read.value, titles: patches.map(titleOf) }, notes: inFileOrder([...notes, ...read.notes], files) };
}

/** Names of the map files that a farm with its changes asks for, each once, to be read from beside the farm file. */
export function mapsAskedFor(farm: FarmText, changes: readonly FarmText[]): readonly string[] {
  const trees = [farm, ...changes].map(({ file, text }) => parseTree(text, file).tree);
  if (trees.some((tree) => tree === null)) return [];
  const [base, ...patches] = trees.map((tree) => longForm(tree!)) as [MapNode, ...MapNode[]];
  const names = mapFilesOf(patches.reduce((whole, patch) => laidOver(whole, patch, []), base)).map(({ text }) => text);
  return [...new Set(names)].filter(isFileName);
}

function laidOver(whole: MapNode, patch: MapNode, notes: Finding[]): MapNode {
  const body: MapNode = { ...patch, entries: patch.entries.filter((entry) => entry.key !== "change") };
  const merged: Tree = mergePatch(whole, body, (key, at) => {
    notes.push({ file: at.file, line: at.line, column: at.column, code: "nothing-to-take", found: `${key} is taken away, and is not there`, allowed: "null takes away what is there", next: "" });
  });
  return merged as MapNode;
}

function titleOf(patch: MapNode): string {
  return textOf(child(patch, "change")) ?? patch.file;
}

/** A change says in its title what is tried: tables of several changes name it. */
function untitled(patch: MapNode): readonly Finding[] {
  if (textOf(child(patch, "change")) !== undefined) return [];
  return [{ file: patch.file, line: 1, column: 1, code: "key-missing", found: "the change has no title", allowed: "a change begins with what is tried", next: "write change: Two more cows" }];
}
