import { readAmount, type Amount } from "../quantity/amount.js";
import type { Tables } from "../science/tables.js";
import { AMOUNT_KEYS, type AmountKey, type AmountName } from "./amount-keys.js";
import type { Finding } from "./finding.js";
import type { FarmMap } from "./map/farm-map.js";
import { meantWords } from "./meant-words.js";
import { listOr } from "./near-names.js";
import type { Assumed } from "./scenario.js";
import { child, isNothing, textOf, type Place, type Tree } from "./tree.js";

/** A default taken for a subject: "shade" of "H1" is "no". Rows of one default are gathered at the end. */
export interface Taken extends Assumed {
  readonly subject: string;
}

/** Where one reading gathers what it finds and what it takes for granted. */
export interface Desk {
  readonly tables: Tables;
  readonly findings: Finding[];
  readonly notes: Finding[];
  readonly taken: Taken[];
  /** Currencies as met, with the place of each. */
  readonly currencies: { readonly currency: string; readonly at: Place }[];
  /** Where the farm names one. */
  readonly map: FarmMap | null;
}

export function newDesk(tables: Tables): Desk {
  return { tables, findings: [], notes: [], taken: [], currencies: [], map: null };
}

/** What is amiss, in clauses. */
export interface Amiss {
  readonly code: string;
  readonly found: string;
  readonly allowed: string;
  readonly next: string;
}

export function say(desk: Desk, at: Place, amiss: Amiss): void {
  desk.findings.push({ file: at.file, line: at.line, column: at.column, ...amiss });
}

export function note(desk: Desk, at: Place, amiss: Amiss): void {
  desk.notes.push({ file: at.file, line: at.line, column: at.column, ...amiss });
}

export function take(desk: Desk, key: string, subject: string, value: string, source: string, status: string): void {
  desk.taken.push({ key, subject, value, source, status });
}

/** A thing being read: its map, and the name on its gate. */
export interface Thing {
  readonly map: Tree | undefined;
  readonly name: string;
}

/** The amount under a key in base units; undefined when nothing is written, NaN when what is written is refused. */
export function amountIn(desk: Desk, thing: Thing, key: AmountName): number | undefined {
  const node = child(thing.map, key);
  return node === undefined || isNothing(node) ? undefined : amountAt(desk, node, `${thing.name}: ${key}`, AMOUNT_KEYS[key]);
}

/** The amount of a text node in base units, NaN when refused. */
export function amountAt(desk: Desk, node: Tree, label: string, key: AmountKey): number {
  const text = textOf(node);
  if (text === undefined) return Number.NaN;
  const read: Amount = readAmount(text, key.quantity);
  if (!read.ok) {
    say(desk, node, { code: read.code, found: `${label}: ${read.found}`, allowed: read.allowed, next: toWrite(read.next, key.quantity === "count") });
    return Number.NaN;
  }
  if (key.quantity === "days" && !Number.isInteger(read.value)) {
    say(desk, node, { code: "out-of-reach", found: `${label} is ${text}`, allowed: "days are whole days", next: `write ${Math.max(1, Math.round(read.value))} d` });
    return Number.NaN;
  }
  if (read.currency !== undefined) desk.currencies.push({ currency: read.currency, at: node });
  if (read.value >= key.least * (1 - 1e-12) && read.value <= key.most * (1 + 1e-12)) return read.value;
  say(desk, node, { code: "out-of-reach", found: `${label} is ${text}`, allowed: `it may be ${key.reach}`, next: nearReach(text, key) });
  return Number.NaN;
}

/** What to write; where nothing typed says which number is meant, none is invented. */
export function toWrite(next: string, bare = false): string {
  if (next !== "") return `write ${next}`;
  return bare ? "write a number in digits" : "write a number in digits and its unit";
}

/** A slipped point is the usual cause: the same figure ten, a hundred or a thousand times smaller or larger. */
function nearReach(text: string, key: AmountKey): string {
  const match = /^(-?[\d.]+)(.*)$/.exec(text);
  for (const factor of [0.1, 10, 0.01, 100, 0.001, 1000]) {
    const meant = `${Number((Number(match?.[1]) * factor).toPrecision(12))}${match?.[2] ?? ""}`;
    const read = readAmount(meant, key.quantity);
    if (read.ok && read.value >= key.least && read.value <= key.most) return `${meant}?`;
  }
  return "write a figure within that";
}

/** "yes" as true, "no" as false; undefined when nothing is written or the word is not known (then said by the shape). */
export function flagIn(thing: Thing, key: string): boolean | undefined {
  const text = textOf(child(thing.map, key));
  return text === "yes" ? true : text === "no" ? false : undefined;
}

/** A word of a list, or undefined; any other is a finding. */
export function wordAt<W extends string>(desk: Desk, node: Tree, label: string, words: readonly W[]): W | undefined {
  const text = textOf(node);
  if (text === undefined) return undefined;
  const word = words.find((w) => w === text);
  if (word === undefined) say(desk, node, wordUnknown(label, text, words));
  return word;
}

export function wordUnknown(label: string, text: string, words: readonly string[]): Amiss {
  const near = meantWords(text, words);
  return {
    code: "word-unknown",
    found: `${label}: ${text} is not a word known here`,
    allowed: `it is ${listOr(words)}`,
    next: near.length > 0 ? `write ${listOr(near)}` : "write one of them",
  };
}

/** A name that must stand among those of the farm. */
export function nameAt(desk: Desk, node: Tree, label: string, what: string, names: readonly string[]): string | undefined {
  const text = textOf(node);
  if (text === undefined) return undefined;
  if (names.includes(text)) return text;
  const near = meantWords(text, names);
  const allowed = names.length === 0 ? `the farm has no ${what}` : `${what} of this farm: ${names.slice(0, 8).join(", ")}${names.length > 8 ? ", ..." : ""}`;
  say(desk, node, { code: "name-unknown", found: `${label}: there is no ${text}`, allowed, next: near.length > 0 ? `${listOr(near)}?` : "write a name as it stands there" });
  return undefined;
}
