import type { z } from "zod";
import { say, wordUnknown, type Amiss, type Desk } from "./desk.js";
import { meantWords } from "./meant-words.js";
import { listOr, nearestNames, nearNames } from "./near-names.js";
import { farmShape, INNER_KEYS } from "./shape.js";
import { entriesOf, isNothing, nearest, plainOf, type Entry, type MapNode, type Place, type Tree } from "./tree.js";

type Path = readonly (string | number)[];
type Issue = z.core.$ZodIssue;

/** Holds a long form against its shape and says every fault at its place. Returns the tree without what cannot be read. */
export function checkShape(desk: Desk, root: MapNode): MapNode {
  const levelled = liftLevels(desk, root);
  sayNothings(desk, levelled);
  const parsed = farmShape.safeParse(plainOf(levelled));
  if (!parsed.success) for (const issue of parsed.error.issues) sayIssue(desk, levelled, issue);
  return levelled;
}

/** A key of a field that stands among the fields, two spaces too far left, is read where it belongs. */
function liftLevels(desk: Desk, root: MapNode): MapNode {
  const entries = root.entries.map((entry) => {
    if (INNER_KEYS[entry.key] === undefined || entry.key === "cells") return entry;
    const value = lifted(desk, entry.value, entry.key);
    return { ...entry, value: entry.key === "fields" ? cellsLifted(desk, value) : value };
  });
  return { ...root, entries };
}

function cellsLifted(desk: Desk, fields: Tree): Tree {
  const inside = (field: Tree): Tree =>
    field.kind === "map" ? { ...field, entries: field.entries.map((e) => (e.key === "cells" ? { ...e, value: lifted(desk, e.value, "cells") } : e)) } : field;
  return fields.kind === "map" ? { ...fields, entries: fields.entries.map((field) => ({ ...field, value: inside(field.value) })) } : fields;
}

function lifted(desk: Desk, names: Tree, thing: string): Tree {
  if (names.kind !== "map") return names;
  const kept: Entry[] = [];
  for (const entry of names.entries) {
    if (!INNER_KEYS[thing]!.includes(entry.key)) {
      kept.push(entry);
      continue;
    }
    const owner = kept.at(-1);
    say(desk, entry.at, { code: "level", found: `${entry.key} stands level with the ${thing}`, allowed: `${entry.key} belongs inside one of the ${thing}`, next: `two more spaces put it inside ${owner?.key ?? `one of the ${thing}`}` });
    if (owner?.value.kind === "map" && !owner.value.entries.some((e) => e.key === entry.key)) {
      kept[kept.length - 1] = { ...owner, value: { ...owner.value, entries: [...owner.value.entries, entry] } };
    }
  }
  return { ...names, entries: kept };
}

function sayNothings(desk: Desk, node: Tree): void {
  if (node.kind === "list") node.items.forEach((item) => sayNothings(desk, item));
  for (const { key, at, value } of entriesOf(node)) {
    if (key === "") say(desk, at, { code: "key-unknown", found: "a name is missing before the colon", allowed: "a name stands before the colon", next: "write the name" });
    if (desk.findings.some((f) => f.code === "no-anchors" && f.line === value.line && f.column === value.column)) continue;
    if (isNothing(value)) say(desk, at, { code: "nothing-there", found: `nothing stands after ${key}:`, allowed: "a key has a value", next: "write it, or take the line out; in a change the word null takes away" });
    else sayNothings(desk, value);
  }
}

function sayIssue(desk: Desk, root: MapNode, issue: Issue): void {
  const path = issue.path.map((step) => (typeof step === "symbol" ? String(step) : step));
  if (issue.code === "unrecognized_keys") return sayKeys(desk, root, path, issue.keys);
  const { node, at, whole } = nearest(root, path);
  if (whole && isNothing(node)) return;
  const within = issue.code === "invalid_union" ? branchOf(issue, node) : undefined;
  if (within) return within.forEach((inside) => sayIssue(desk, root, { ...inside, path: [...issue.path, ...inside.path] }));
  if (issue.code === "invalid_key") return sayKeys(desk, root, path.slice(0, -1), [String(path.at(-1))]);
  if (!whole) return sayMissing(desk, root, path, at);
  const text = node.kind === "text" ? node.text : "";
  const label = labelOf(path);
  if (issue.code === "invalid_value" && node.kind === "text") return say(desk, node, wordAmiss(label, text, issue.values.map(String)));
  say(desk, at, shapeAmiss(label, node, issue));
}

/** Of a choice of shapes, what is wrong inside the one that fits what was written: a list with a word that is not known. */
function branchOf(issue: Issue & { readonly code: "invalid_union" }, node: Tree): readonly Issue[] | undefined {
  return node.kind === "text" ? undefined : issue.errors.find((branch) => branch.length > 0 && branch.every((inside) => inside.path.length > 0 || inside.code === "unrecognized_keys"));
}

/** "true" is the word other programs use. */
function wordAmiss(label: string, text: string, words: readonly string[]): Amiss {
  const amiss = wordUnknown(label, text, words);
  if (!words.includes("yes")) return amiss;
  if (/^(true|on|y)$/i.test(text)) return { ...amiss, next: "write yes" };
  return /^(false|off|n)$/i.test(text) ? { ...amiss, next: "write no" } : amiss;
}

/** True when a map holds an unknown key that is near a missing one: that one finding says both. */
export function isMisspelt(node: Tree, key: string, known: readonly string[]): boolean {
  return entriesOf(node).some((entry) => !known.includes(entry.key) && nearNames(entry.key, [key]).length > 0);
}

/** A new thing in a change that lacks what it needs is most often an old one misspelt. */
function sayMissing(desk: Desk, root: MapNode, path: Path, at: Place): void {
  const key = missingKey(root, path);
  if (isMisspelt(nearest(root, path).node, key, allowedKeys(path.slice(0, path.indexOf(key))))) return;
  const name = String(path[1]);
  if (at.file === root.file || path.indexOf(key) !== 2) return say(desk, at, missing(path, key));
  if (desk.findings.some((f) => f.code === "new-half" && f.line === at.line && f.column === at.column)) return;
  const others = entriesOf(nearest(root, path.slice(0, 1)).node).map((entry) => entry.key).filter((other) => other !== name);
  const near = nearNames(name, others);
  say(desk, at, { code: "new-half", found: `${name} is new and has no ${key}`, allowed: `a new name under ${String(path[0])} needs all it is made of`, next: near.length > 0 ? `${listOr(near)}?` : `write ${key} too` });
}

function missingKey(root: MapNode, path: Path): string {
  for (let length = 1; length <= path.length; length++) if (!nearest(root, path.slice(0, length)).whole) return String(path[length - 1]);
  return String(path.at(-1));
}

function missing(path: Path, key: string): Amiss {
  const at = path.indexOf(key);
  const owner = at <= 0 ? "the farm" : String(path[at - 1]);
  return { code: "key-missing", found: `${owner} has no ${key}`, allowed: `${key} is needed`, next: `write ${key}: ${EXAMPLES[key] ?? "..."}` };
}

const EXAMPLES: Readonly<Record<string, string>> = {
  farm: "Low Acre", season: "2027-04-20 to 2027-10-31", fields: "and the fields below it", groups: "and the groups below it", cells: "and the cells below it",
  kind: "cattle", head: "5", weight: "620 kg", "moved-by": "tow or hand", minutes: "2 h", days: "2027-09-04", group: "the group it runs with",
};

function sayKeys(desk: Desk, root: MapNode, path: Path, keys: readonly string[]): void {
  const allowed = allowedKeys(path);
  const { node } = nearest(root, path);
  for (const key of keys) {
    const entry = entriesOf(node).find((e) => e.key === key);
    if (key === "" || entry === undefined) continue;
    const near = meantWords(key, allowed);
    const things = thingsOf(path);
    const words = allowed.length <= 14 ? `keys of ${things}: ${allowed.join(", ")}` : `the README lists the ${allowed.length} keys of ${things}, nearest ${nearestNames(key, allowed).join(", ")}`;
    say(desk, entry.at, { code: "key-unknown", found: `${things} have no ${key}`, allowed: words, next: near.length > 0 ? `${listOr(near)}?` : "take it out, or put it in a note" });
  }
}

/** What may stand in the map at a path, read off the shape itself. */
function allowedKeys(path: Path): readonly string[] {
  let shape: unknown = farmShape;
  for (const step of path) shape = inner(shape, String(step));
  return Object.keys(bare(shape)?.shape ?? bare(bare(shape)?.keyType)?.enum ?? {});
}

interface Def {
  readonly type: string;
  readonly innerType?: unknown;
  readonly valueType?: unknown;
  readonly options?: readonly unknown[];
}

interface Bare {
  readonly shape?: Record<string, unknown>;
  readonly enum?: Record<string, unknown>;
  readonly keyType?: unknown;
  readonly def: Def;
}

/** A shape without "optional", and of a choice the map. */
function bare(shape: unknown): Bare | undefined {
  const it = shape as Bare | undefined;
  if (it?.def.type === "optional") return bare(it.def.innerType);
  if (it?.def.type === "union") return bare(it.def.options?.find((option) => ["object", "record"].includes((option as Bare).def.type)));
  return it;
}

function inner(shape: unknown, key: string): unknown {
  const it = bare(shape);
  return it?.shape ? it.shape[key] : it?.def.valueType;
}

function thingsOf(path: Path): string {
  if (path.length === 0) return "farms";
  if (path[0] === "fields") return path.length === 2 ? "fields" : path[2] === "cells" && path.length === 4 ? "cells" : String(path.at(-1));
  return path.length === 2 && path[0] !== "rules" ? String(path[0]) : String(path.at(-1));
}

/** Gate names, not paths: "H1: shade". */
export function labelOf(path: Path): string {
  const names = path.filter((step) => typeof step === "string");
  const key = names.at(-1) ?? "the file";
  const owner = names.at(-2);
  return owner === undefined || ["fields", "cells", "groups", "pens", "yards", "people", "holds", "rules", "standstills"].includes(owner) ? key : `${owner}: ${key}`;
}

function shapeAmiss(label: string, node: Tree, issue: Issue): Amiss {
  const is = { text: "a text", list: "a list", map: "a map of keys" }[node.kind];
  const wants = issue.code === "invalid_type" && ["object", "record"].includes(issue.expected) ? "keys with values stand" : "one value or a list stands";
  return { code: "shape", found: `${label} is ${is}`, allowed: `${wants} here`, next: wants.startsWith("keys") ? "write the keys below it, set in by two spaces" : "write it on the line itself" };
}
