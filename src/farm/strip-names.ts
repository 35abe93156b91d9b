import { countedNames } from "./counted-names.js";
import { say, type Desk } from "./desk.js";
import { nearNames } from "./near-names.js";
import { child, entriesOf, itemsOf, textOf, type Entry, type MapNode, type TextNode, type Tree } from "./tree.js";

/** Strips of a field: their cells' names in order from the side, and where they are written. */
export interface StripNames {
  readonly names: readonly string[];
  readonly at: Tree;
}

/** More strips of one field than this are a slip of the pen. */
const MOST = 60;

/** Gives every field with `strips` its cells by name; what `cells` says of one of them stays. */
export function withStripCells(desk: Desk, root: MapNode): MapNode {
  const entries = root.entries.map((entry) => (entry.key === "fields" ? { ...entry, value: eachField(entry.value, (field) => fieldWithCells(desk, field)) } : entry));
  return { ...root, entries };
}

function eachField(fields: Tree, change: (field: Entry) => Tree): Tree {
  return fields.kind === "map" ? { ...fields, entries: fields.entries.map((field) => ({ ...field, value: change(field) })) } : fields;
}

function fieldWithCells(desk: Desk, field: Entry): Tree {
  const strips = child(field.value, "strips");
  if (strips === undefined || field.value.kind !== "map") return field.value;
  const { names, at } = stripNames(desk, field.key, strips);
  const written = child(field.value, "cells");
  if (written && written.kind !== "map") return field.value;
  if (names.length > 0) sayOthers(desk, entriesOf(written), names);
  const cells: Entry[] = names.map((name) => entriesOf(written).find(({ key }) => key === name) ?? { key: name, at, value: { kind: "map", entries: [], ...placeOf(at) } });
  const others = entriesOf(written).filter(({ key }) => !names.includes(key));
  const value: MapNode = { kind: "map", entries: [...cells, ...others], ...placeOf(written ?? at) };
  const rest = field.value.entries.filter(({ key }) => key !== "cells");
  return { ...field.value, entries: [...rest, { key: "cells", at: written ?? at, value }] };
}

function placeOf({ file, line, column }: Tree): { readonly file: string; readonly line: number; readonly column: number } {
  return { file, line, column };
}

function sayOthers(desk: Desk, written: readonly Entry[], names: readonly string[]): void {
  for (const { key, at } of written.filter((entry) => !names.includes(entry.key))) {
    const near = nearNames(key, names);
    say(desk, at, { code: "name-unknown", found: `${key} is none of the strips`, allowed: `the field is cut into ${names.join(", ")}`, next: near.length > 0 ? `${near.join(" or ")}?` : "take it out, or name it among the strips" });
  }
}

/** "K1 to K6" and "K1, K2, K5". */
export function stripNames(desk: Desk, field: string, strips: Tree): StripNames {
  const node = child(strips, "cells") ?? strips;
  const items = itemsOf(node).filter((item): item is TextNode => textOf(item) !== undefined);
  const names = items.flatMap(({ text }) => countedNames(text) ?? []);
  const twice = names.find((name, i) => names.indexOf(name) < i);
  const fault = items.some(({ text }) => countedNames(text) === null) ? "the names of its strips are not read" : twice !== undefined ? `${twice} stands there twice` : names.length > MOST ? `that is ${names.length} strips` : null;
  if (fault === null) return { names, at: items[0] ?? node };
  say(desk, items[0] ?? node, { code: "strips-form", found: `${field}: ${fault}`, allowed: `strips are named from first to last, K1 to K6, or one by one, K1, K2; ${MOST} at most`, next: "write strips: K1 to K6" });
  return { names: [], at: items[0] ?? node };
}
