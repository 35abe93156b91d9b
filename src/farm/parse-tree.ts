import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument, type Document, type Node, type Pair, type ParsedNode } from "yaml";
import type { Finding } from "./finding.js";
import { leftoverEntry, leftoverText } from "./flow-items.js";
import { mendLayout } from "./layout.js";
import { raised } from "./levels.js";
import { colonPut, isKnownKey } from "./missing-colons.js";
import type { Entry, MapNode, Place, Tree } from "./tree.js";

/** A file's tree; null when its layout left nothing to read. */
export interface Parsed {
  readonly tree: MapNode | null;
  readonly findings: readonly Finding[];
}

interface Reading {
  readonly file: string;
  readonly text: string;
  readonly lines: LineCounter;
  readonly findings: Finding[];
}

/** Nested deeper than this no farm file is, and the walk must not run out of stack. */
const MOST_LEVELS = 40;

/** Reads YAML 1.2 with every value as text, and the place of each. Layout faults are mended where they can be. */
export function parseTree(text: string, file: string): Parsed {
  const mended = mendLayout(text, file);
  const findings = [...mended.findings];
  const say = (line: number, column: number, code: string, found: string, allowed: string, next: string): Parsed => {
    findings.push({ file, line, column, code, found, allowed, next });
    return { tree: null, findings };
  };
  if (text.trim() === "") return say(1, 1, "empty-file", "the file is empty", "a farm needs farm, season, fields and groups", "start from the smallest farm in the README");
  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffd]/.test(text)) {
    const line = text.slice(0, text.search(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffd]/)).split("\n").length;
    return say(line, 1, "not-text", "there are signs in the file that are no letters", "farm files are plain text in UTF-8", "save the file as plain text");
  }
  if (deepest(mended.text) > MOST_LEVELS) return say(1, 1, "layout", "the braces are nested too deep", `at most ${MOST_LEVELS} levels are read`, "write it flatter");
  if (!mended.closed) return { tree: null, findings };
  const { document, reading } = parsed(mended.text, file, findings, MOST_COLONS);
  for (const error of document.errors) {
    const finding = layoutFinding(error, reading);
    if (!findings.some((other) => other.line === finding.line)) findings.push(finding);
  }
  if (document.errors.length > 0) return { tree: null, findings };
  return { tree: rootOf(document, reading), findings };
}

/** Lines without a colon that are mended in one file; with more it is no farm file. */
const MOST_COLONS = 20;

/** Reads the text, again with each missing colon put in. */
function parsed(text: string, file: string, findings: Finding[], tries: number): { readonly document: Document.Parsed<ParsedNode, true>; readonly reading: Reading } {
  const lines = new LineCounter();
  const document = parseDocument(text, { schema: "failsafe", lineCounter: lines, prettyErrors: false, uniqueKeys: false, merge: false });
  const reading = { file, text, lines, findings };
  const error = document.errors[0];
  const put = error?.code === "MULTILINE_IMPLICIT_KEY" && tries > 0 ? colonPut(text, error.pos[0]) : null;
  if (put === null) return { document, reading };
  const { line, col } = lines.linePos(error!.pos[0]);
  findings.push({ file, line, column: col, code: "colon-missing", found: `there is no colon after ${put.name}`, allowed: "a line is a name, a colon, a space and what it is", next: `write ${put.next}` });
  return parsed(put.text, file, findings, tries - 1);
}

function rootOf(document: Document.Parsed<ParsedNode, true>, reading: Reading): MapNode | null {
  const root = document.contents as Node | null;
  if (root !== null && isMap(root)) return raised(treeOf(root, { file: reading.file, line: 1, column: 1 }, reading, 0) as MapNode, reading.findings);
  const found = root === null ? "there is nothing but remarks" : "the file is not a list of keys";
  reading.findings.push({ file: reading.file, line: 1, column: 1, code: "empty-file", found, allowed: "a farm file is keys and values, such as farm: Low Acre", next: "start from the smallest farm in the README" });
  return null;
}

/** How deep braces or indentation go, roughly; only to refuse a file made to exhaust the reader. */
function deepest(text: string): number {
  let [depth, most] = [0, 0];
  for (const c of text) {
    if (c === "{" || c === "[") most = Math.max(most, ++depth);
    else if (c === "}" || c === "]") depth--;
  }
  for (const lead of text.matchAll(/^(?:[ ]|- |\? )*/gm)) most = Math.max(most, lead[0].replaceAll(/[ ]{2}/g, " ").length / 2);
  return most;
}

function placeOf(node: { range?: readonly number[] | null } | null, reading: Reading): Place {
  const { line, col } = reading.lines.linePos(node?.range?.[0] ?? 0);
  return { file: reading.file, line: Math.max(1, line), column: Math.max(1, col) };
}

function treeOf(node: Node | null, at: Place, reading: Reading, level: number): Tree {
  if (node === null) return { kind: "text", text: "", plain: true, ...at };
  const own = placeOf(node, reading);
  if (isAlias(node) || (node as { anchor?: string }).anchor || (node as { tag?: string }).tag?.startsWith("!")) {
    reading.findings.push({ ...own, code: "no-anchors", found: "an anchor, a star or a tag stands here", allowed: "farm files say each thing in full", next: "write the value itself, or put it in quotes" });
    return { kind: "text", text: "", plain: true, ...own };
  }
  if (isMap(node)) return { kind: "map", entries: entriesFrom(node.items as Items, reading, level, node.flow === true), ...at };
  if (isSeq(node)) return { kind: "list", items: (node.items as Node[]).map((item) => treeOf(item, placeOf(item, reading), reading, level + 1)), ...at };
  const text = isScalar(node) ? String(node.value ?? "") : "";
  return { kind: "text", text: text.trim(), plain: isScalar(node) && node.type === "PLAIN", ...(text === "" ? at : own) };
}

type Items = readonly Pair<Node, Node | null>[];

function entriesFrom(items: Items, reading: Reading, level: number, flow: boolean): readonly Entry[] {
  const split = flow ? -1 : nameTooFar(items);
  if (split >= 0) return [...entriesFrom(items.slice(0, split), reading, level, flow), swallowing(items, split, reading, level)];
  const entries: Entry[] = [];
  for (const pair of items) {
    const at = placeOf(pair.key, reading);
    const left = flow ? leftoverText(pair) : undefined;
    if (left !== undefined) {
      const { instead, after } = leftoverEntry({ text: left, at, before: entries.at(-1), touching: touches(pair.key, reading) }, reading.findings);
      if (instead) entries[entries.length - 1] = instead;
      if (after) entries.push(after);
    } else addEntry(pair, at, entries, reading, level);
  }
  return entries;
}

function addEntry(pair: Pair<Node, Node | null>, at: Place, entries: Entry[], reading: Reading, level: number): void {
  if (!isScalar(pair.key)) {
    reading.findings.push({ ...at, code: "layout", found: "a list or braces stand where a name should", allowed: "a name stands before the colon", next: "write the name" });
    return;
  }
  const key = keyOf(pair);
  const twin = entries.find((entry) => entry.key === key);
  if (twin) reading.findings.push({ ...at, code: "name-twice", found: `${key} stands here and in line ${twin.at.line}`, allowed: "one gate, one name", next: "take one of them out, or give it another name" });
  else entries.push({ key, at, value: treeOf(pair.value, at, reading, level + 1) });
}

function keyOf(pair: Pair<Node, Node | null>): string {
  return isScalar(pair.key) ? String(pair.key.value ?? "").trim() : "";
}

function touches(key: Node, reading: Reading): boolean {
  return /\d,$/.test(reading.text.slice(0, key.range?.[0] ?? 0).slice(-2));
}

/**
 * A name alone with nothing in it, after which keys come that stood before it: the name is set in as far as its own
 * lines. The index of the last such name, or -1.
 */
function nameTooFar(items: Items): number {
  const keys = items.map(keyOf);
  const twin = keys.findIndex((key, i) => key !== "" && keys.indexOf(key) < i);
  if (twin < 0) return -1;
  const empty = (i: number): boolean => isScalar(items[i]!.value) && String(items[i]!.value.value ?? "") === "" && !isKnownKey(keys[i]!);
  for (let i = twin - 1; i > keys.indexOf(keys[twin]!); i--) if (empty(i)) return i;
  return -1;
}

/** Such a name with the lines after it as its own. */
function swallowing(items: Items, index: number, reading: Reading, level: number): Entry {
  const at = placeOf(items[index]!.key, reading);
  return { key: keyOf(items[index]!), at, value: { kind: "map", entries: entriesFrom(items.slice(index + 1), reading, level + 1, false), ...at } };
}

/** The library's complaints in an owner's words. */
function layoutFinding(error: { readonly code: string; readonly pos: readonly [number, number] }, reading: Reading): Finding {
  const { line, col } = reading.lines.linePos(error.pos[0]);
  const at = { file: reading.file, line: Math.max(1, line), column: Math.max(1, col) };
  if (["BLOCK_AS_IMPLICIT_KEY", "MULTILINE_IMPLICIT_KEY"].includes(error.code)) {
    const below = /^[^\n]*\n(?:\s*\n)*[ ]*/.exec(reading.text.slice(error.pos[0]))?.[0].length ?? 0;
    const place = reading.lines.linePos(error.pos[0] + below);
    return { file: at.file, line: place.line, column: place.col, code: "level", found: `line ${place.line} is set in under line ${at.line}, which has its value already`, allowed: "keys of one level start in one column", next: "move it left to the column of its neighbours" };
  }
  if (error.code === "BAD_INDENT") {
    return { ...at, code: "level", found: `line ${at.line} is set in differently from the lines it belongs to`, allowed: "keys of one level start in one column", next: "move it left or right to the column of its neighbours" };
  }
  if (error.code === "MISSING_CHAR") {
    return { ...at, code: "layout", found: "a brace, bracket or quote is opened and not closed", allowed: "every one opened is closed", next: "close it" };
  }
  if (error.code === "MULTIPLE_DOCS") {
    return { ...at, code: "layout", found: "three dashes begin a second file", allowed: "one file holds one farm or one change", next: "save the rest in a file of its own" };
  }
  return { ...at, code: "layout", found: "this line is not a key with its value", allowed: "a line is a name, a colon, a space and what it is", next: "write it so, and texts with odd signs in quotes" };
}
