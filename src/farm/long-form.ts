import { countedNames } from "./counted-names.js";
import { isNothing, type Entry, type MapNode, type Tree } from "./tree.js";

/**
 * A farm file or change in its long form, by path alone: a cell that is only its area becomes a map, a list written
 * "a, b" becomes a list, a lone span of closed days a list of one. Only then can a change be merged key by key.
 */
export function longForm(root: MapNode): MapNode {
  return eachEntry(root, (entry) => {
    if (LISTS.farm.includes(entry.key)) return listed(entry.value);
    if (entry.key === "fields") return eachMap(entry.value, longField);
    if (entry.key === "groups") return eachMap(entry.value, longGroup);
    if (entry.key === "yards") return eachMap(entry.value, (key, value) => (key === "open" ? listed(value) : value));
    if (entry.key === "standstills") return each(entry.value, (value) => wrapped(value, "days"));
    if (entry.key === "housing-orders") {
      return each(entry.value, (value) => eachOf(wrapped(value, "days"), (e) => (e.key === "kinds" ? listed(e.value) : e.value)));
    }
    return entry.value;
  });
}

const LISTS = {
  farm: ["walk", "map"],
  ground: ["not-for", "wants"],
  group: ["only-in", "not-in"],
};

function longField(key: string, value: Tree): Tree {
  if (key === "cells") return each(cellsNamed(value), (cell) => eachOf(wrapped(cell, "area"), (e) => longGround(e.key, e.value)));
  if (key === "strips") return eachOf(wrapped(value.kind === "list" ? inMap(value, "cells") : value, "cells"), (e) => (e.key === "cells" ? listed(e.value) : e.value));
  return longGround(key, value);
}

/** Cells by their names alone, whose ground is on the map: "M1, M2" and "M1 to M4". A name that stands twice stays so, to be said. */
function cellsNamed(node: Tree): Tree {
  const list = listed(node);
  if (list.kind !== "list") return node;
  const { file, line, column } = node;
  const entries = list.items.flatMap((item) => (item.kind === "text" ? (countedNames(item.text) ?? [item.text]).map((key): Entry => cellNamed(key, item)) : []));
  return { kind: "map", entries, file, line, column };
}

function cellNamed(key: string, { file, line, column }: Tree): Entry {
  const at = { file, line, column };
  return { key, at, value: { kind: "map", entries: [], ...at } };
}

function longGround(key: string, value: Tree): Tree {
  if (key === "sides" || key === "boundary") return amountsListed(value);
  if (LISTS.ground.includes(key)) return listed(value);
  if (key === "closed" || key === "last") return each(value, amountsListed);
  return value;
}

function longGroup(key: string, value: Tree): Tree {
  if (LISTS.group.includes(key)) return listed(value);
  return key === "runs-with" ? wrapped(value, "group") : value;
}

/** "a, b" as a list; the word null stays a word, for it takes away. */
function listed(node: Tree, separator: string | RegExp = ","): Tree {
  if (node.kind !== "text" || isNothing(node) || (node.plain && node.text === "null")) return node;
  const items: Tree[] = [];
  let from = 0;
  for (const part of node.text.split(separator)) {
    const lead = part.length - part.trimStart().length;
    if (part.trim() !== "") items.push({ ...node, text: part.trim(), column: node.column + from + lead });
    from += part.length + 1;
  }
  const { file, line, column } = node;
  return { kind: "list", items, file, line, column };
}

/** A comma between digits is one before decimals, and for the reader of amounts to refuse; but a day may follow it. */
const BETWEEN_AMOUNTS = /,(?!\d)|(?<!\d),|,(?=\d{4}-)/;

/** Lengths or days as a list, where braces or brackets split "40,5 m" at its comma put together again. */
function amountsListed(node: Tree): Tree {
  if (node.kind !== "list") return listed(node, BETWEEN_AMOUNTS);
  const items: Tree[] = [];
  for (const item of node.items) {
    const last = items.at(-1);
    const split = last?.kind === "text" && item.kind === "text" && last.plain && item.plain && last.line === item.line && last.column + last.text.length + 1 === item.column;
    if (split && BETWEEN_AMOUNTS.test(`${last.text.at(-1)},${item.text}`) === false) items[items.length - 1] = { ...last, text: `${last.text},${item.text}` };
    else items.push(item);
  }
  return { ...node, items };
}

/** A text as a map of one key. */
function wrapped(node: Tree, key: string): Tree {
  if (node.kind !== "text" || isNothing(node) || (node.plain && node.text === "null")) return node;
  return inMap(node, key);
}

function inMap(node: Tree, key: string): MapNode {
  const { file, line, column } = node;
  return { kind: "map", entries: [{ key, at: { file, line, column }, value: node }], file, line, column };
}

function eachEntry(map: MapNode, change: (entry: Entry) => Tree): MapNode {
  return { ...map, entries: map.entries.map((entry) => ({ ...entry, value: change(entry) })) };
}

function eachOf(node: Tree, change: (entry: Entry) => Tree): Tree {
  return node.kind === "map" ? eachEntry(node, change) : node;
}

function each(node: Tree, change: (value: Tree) => Tree): Tree {
  return eachOf(node, (entry) => change(entry.value));
}

/** Each map under a map of names. */
function eachMap(node: Tree, change: (key: string, value: Tree) => Tree): Tree {
  return each(node, (inner) => eachOf(inner, (entry) => change(entry.key, entry.value)));
}
