/** A farm file's words with their places: what a change is merged into, and what every finding points at. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

export type Tree = TextNode | ListNode | MapNode;

export interface TextNode extends Place {
  readonly kind: "text";
  readonly text: string;
  /** Typed without quotes; only then does the word `null` take away. */
  readonly plain: boolean;
}

export interface ListNode extends Place {
  readonly kind: "list";
  readonly items: readonly Tree[];
}

/** A map's own place is its key's, so that a missing entry points at the name that lacks it. */
export interface MapNode extends Place {
  readonly kind: "map";
  readonly entries: readonly Entry[];
}

export interface Entry {
  readonly key: string;
  readonly at: Place;
  readonly value: Tree;
}

/** The value under a key, or undefined. */
export function child(node: Tree | undefined, key: string): Tree | undefined {
  return node?.kind === "map" ? node.entries.find((entry) => entry.key === key)?.value : undefined;
}

/** Entries of a map; none of anything else. */
export function entriesOf(node: Tree | undefined): readonly Entry[] {
  return node?.kind === "map" ? node.entries : [];
}

/** The text of a text node that says something. */
export function textOf(node: Tree | undefined): string | undefined {
  return node?.kind === "text" && !isNothing(node) ? node.text : undefined;
}

/** Nothing stands after the colon. */
export function isNothing(node: Tree): boolean {
  return node.kind === "text" && node.plain && node.text === "";
}

/** The word that takes an entry away in a change. */
export function isNull(node: Tree): boolean {
  return node.kind === "text" && node.plain && node.text === "null";
}

/** Items of a list; a lone text counts as a list of one. */
export function itemsOf(node: Tree | undefined): readonly Tree[] {
  if (node === undefined || isNothing(node)) return [];
  return node.kind === "list" ? node.items : node.kind === "text" ? [node] : [];
}

/** The node at a path of keys and indices; the nearest one above when there is none. */
export function nearest(root: Tree, path: readonly (string | number)[]): { readonly node: Tree; readonly at: Place; readonly whole: boolean } {
  let node = root;
  let at: Place = root;
  for (const step of path) {
    const entry = node.kind === "map" ? node.entries.find((e) => e.key === String(step)) : undefined;
    const next = entry?.value ?? (node.kind === "list" ? node.items[Number(step)] : undefined);
    if (next === undefined) return { node, at, whole: false };
    at = entry && next.kind !== "text" ? entry.at : next;
    node = next;
  }
  return { node, at, whole: true };
}

/** The tree as plain JSON: texts, lists and maps, in the order written. */
export type Plain = string | readonly Plain[] | { readonly [key: string]: Plain };

export function plainOf(node: Tree): Plain {
  if (node.kind === "text") return node.text;
  if (node.kind === "list") return node.items.map(plainOf);
  return Object.fromEntries(node.entries.map((entry) => [entry.key, plainOf(entry.value)]));
}
