import { child, entriesOf, itemsOf, textOf, type Entry, type MapNode, type TextNode, type Tree } from "../tree.js";

/** Names by which a farm looks on its map. */
export interface UsedNames {
  readonly ground: ReadonlySet<string>;
  readonly gates: ReadonlySet<string>;
}

/** Fields and cells by the name of their boundary, else by their own; typed sides and corners need no map. */
export function namesUsed(root: MapNode): UsedNames {
  const fields = entriesOf(child(root, "fields"));
  const things = fields.flatMap((field) => [field, ...entriesOf(child(field.value, "cells"))]);
  return { ground: new Set(things.flatMap(nameOnMap)), gates: new Set(things.map(({ key }) => key)) };
}

/** The name under which a field or cell looks for its boundary on the map; none where its sides or corners are typed. */
export function nameOnMap({ key, value }: Pick<Entry, "key" | "value">): readonly string[] {
  const boundary = child(value, "boundary");
  const name = boundaryName(boundary);
  if (name) return [name.text];
  return boundary === undefined && child(value, "sides") === undefined ? [key] : [];
}

/** What `boundary` says where it is a name on the map and no list of corners. */
export function boundaryName(boundary: Tree | undefined): TextNode | undefined {
  const items = itemsOf(boundary);
  const text = items.length === 1 ? textOf(items[0]) : undefined;
  return text === undefined || /^-?[\d.,]+\s*\S*\s*[x×]/.test(text) ? undefined : (items[0] as TextNode);
}
