import { describe, expect, it } from "vitest";
import { readChanged } from "../../src/farm/change.js";
import { mergePatch } from "../../src/farm/merge-patch.js";
import { entriesOf, type Entry, type Tree } from "../../src/farm/tree.js";
import { filesIn, LOW_ACRE, lowAcre, scenarioText, TABLES } from "./read-text.js";

type Json = null | string | number | readonly Json[] | { readonly [key: string]: Json };

const AT = { file: "x", line: 1, column: 1 };

/** JSON as a tree and back: numbers and null are plain words, texts are quoted. */
function treeOf(value: Json): Tree {
  if (Array.isArray(value)) return { kind: "list", items: (value as readonly Json[]).map(treeOf), ...AT };
  if (value === null || typeof value !== "object") return { kind: "text", text: String(value), plain: typeof value !== "string", ...AT };
  const entries: Entry[] = Object.entries(value).map(([key, inner]) => ({ key, at: AT, value: treeOf(inner) }));
  return { kind: "map", entries, ...AT };
}

function jsonOf(node: Tree): Json {
  if (node.kind === "list") return node.items.map(jsonOf);
  if (node.kind === "map") return Object.fromEntries(entriesOf(node).map(({ key, value }) => [key, jsonOf(value)]));
  return node.plain ? (JSON.parse(node.text) as Json) : node.text;
}

describe("mergePatch", () => {
  // RFC 7396, appendix A: all fifteen.
  const cases: readonly (readonly [Json, Json, Json])[] = [
    [{ a: "b" }, { a: "c" }, { a: "c" }],
    [{ a: "b" }, { b: "c" }, { a: "b", b: "c" }],
    [{ a: "b" }, { a: null }, {}],
    [{ a: "b", b: "c" }, { a: null }, { b: "c" }],
    [{ a: ["b"] }, { a: "c" }, { a: "c" }],
    [{ a: "c" }, { a: ["b"] }, { a: ["b"] }],
    [{ a: { b: "c" } }, { a: { b: "d", c: null } }, { a: { b: "d" } }],
    [{ a: [{ b: "c" }] }, { a: [1] }, { a: [1] }],
    [["a", "b"], ["c", "d"], ["c", "d"]],
    [{ a: "b" }, ["c"], ["c"]],
    [{ a: "foo" }, null, null],
    [{ a: "foo" }, "bar", "bar"],
    [{ e: null }, { a: 1 }, { e: null, a: 1 }],
    [[1, 2], { a: "b", c: null }, { a: "b" }],
    [{}, { a: { bb: { ccc: null } } }, { a: { bb: {} } }],
  ];

  it("has the fifteen cases of RFC 7396", () => {
    expect(cases).toHaveLength(15);
  });

  it.each(cases)("%j with %j is %j", (target, patch, result) => {
    const before = JSON.stringify(target);
    expect(jsonOf(mergePatch(treeOf(target), treeOf(patch)))).toEqual(result);
    expect(JSON.stringify(target)).toBe(before);
  });
});

const farm = { file: "low-acre.yaml", text: LOW_ACRE };

function changed(...texts: readonly string[]) {
  return readChanged(farm, texts.map((text, i) => ({ file: `change-${i + 1}.yaml`, text })), TABLES);
}

function findings(...texts: readonly string[]) {
  const read = changed(...texts);
  return read.ok ? [] : read.findings;
}

describe("readChanged", () => {
  it("lays several over in turn, and keeps their titles", () => {
    const read = changed("change: Three cows\ngroups: { Cows: { head: 3 } }", "change: Four cows\ngroups: { Cows: { head: 4, gain: 0.1 kg/d } }");
    expect(read.ok && [read.value.titles, read.value.scenario.groups[0]!.head, read.value.scenario.groups[0]!.gainKgPerDay]).toEqual([["Three cows", "Four cows"], 4, 0.1]);
  });

  it("puts new cells last, and replaces a cell's area alone", () => {
    const read = changed("change: x\nfields: { Long Croft: { cells: { L0: 0.2 ha, L3: 0.3 ha } } }");
    expect(read.ok && read.value.scenario.cells.map((c) => [c.name, c.areaHa])).toEqual([["L1", 0.5], ["L2", 0.5], ["L3", 0.3], ["L4", 0.6], ["L5", 0.5], ["L0", 0.2]]);
  });

  it("takes away with the word null, and notes what was not there", () => {
    const read = changed("change: x\nfields: { Long Croft: { cells: { L1: null, L9: null } } }");
    expect(read.ok && read.value.scenario.cells.map((c) => c.name)).toEqual(["L2", "L3", "L4", "L5"]);
    expect(read.ok && read.notes.map((n) => [n.code, n.file, n.line])).toEqual([["nothing-to-take", "change-1.yaml", 2]]);
  });

  it("points into the file that wrote the line", () => {
    expect(findings("change: x\ngroups: { Cows: { head: 2.5 } }").map((f) => [f.file, f.line, f.column])).toEqual([["change-1.yaml", 2, 25]]);
  });

  it("asks whether a new half of a group is an old one misspelt", () => {
    expect(findings("change: x\ngroups: { Cow: { head: 4 } }")).toMatchObject([{ code: "new-half", found: "Cow is new and has no kind", next: "Cows?" }]);
  });

  it("says what still points at a group taken out", () => {
    const text = lowAcre("groups:\n", "groups:\n  Sheep: { kind: sheep, class: dry ewe, head: 9, weight: 60 kg, follows: Cows }\n");
    const read = readChanged({ file: "farm.yaml", text }, [{ file: "c.yaml", text: "change: x\ngroups: { Cows: null }" }], TABLES);
    expect(read.ok ? [] : read.findings.map((f) => [f.code, f.file])).toEqual([["name-unknown", "farm.yaml"]]);
  });

  it("wants a title", () => {
    expect(findings("groups: { Cows: { head: 4 } }").map((f) => f.code)).toEqual(["key-missing"]);
  });

  it("gives the farm itself when nothing is laid over it", () => {
    const [plain, same] = [readChanged(farm, [], TABLES), changed("change: nothing\ngroups: { Cows: { head: 2 } }")];
    expect(plain.ok && same.ok && plain.value.scenario).toEqual(same.ok && same.value.scenario);
  });
});

/** What people really try: each a file, over Withy End unless another farm is named, after the changes that it needs. */
const TRIED: readonly { readonly what: string; readonly file: string; readonly after?: readonly string[]; readonly farm?: string }[] = [
  { what: "eight pigs more", file: "add-pigs.yaml", after: ["no-pigs.yaml"] },
  { what: "two more cows", file: "two-more-cows.yaml" },
  { what: "a pen dropped", file: "one-broiler-pen.yaml" },
  { what: "turnout two weeks later", file: "turnout-later.yaml" },
  { what: "a second set of nets", file: "second-nets.yaml" },
  { what: "a shorter rest", file: "short-rest.yaml" },
  { what: "a field rented", file: "rented-field.yaml" },
  { what: "stock sold six weeks early", file: "cows-sold-early.yaml" },
  { what: "two more weeks of hay", file: "hay-two-weeks-longer.yaml" },
  { what: "a holiday week, the helper cannot tow", file: "holiday-week.yaml" },
  { what: "moves at weekends only", file: "moves-at-weekends.yaml" },
  { what: "cells split in two", file: "home-field-in-eight.yaml" },
  { what: "two herds as one", file: "cold-garth/one-herd.yaml", farm: "cold-garth.yaml" },
  { what: "a bull apart", file: "bull-apart.yaml" },
  { what: "three cells cut", file: "meadow-to-hay.yaml" },
  { what: "three cells kept for autumn", file: "stockpile.yaml" },
  { what: "a housing order", file: "housing-order.yaml" },
  { what: "a later follow window", file: "follow-later.yaml" },
  { what: "less growth", file: "dry-year.yaml" },
  { what: "sheep behind cattle", file: "sheep-behind.yaml" },
];

describe("changes that people try", () => {
  const base = { file: "withy-end.yaml", text: scenarioText("withy-end.yaml") };
  const read = (farm: { readonly file: string; readonly text: string }, files: readonly string[]) => readChanged(farm, files.map((file) => ({ file, text: scenarioText(`changes/${file}`) })), TABLES, (text) => text);

  it("are twenty, and every file beside them is over Withy End as well", () => {
    expect(TRIED.length).toBe(20);
    expect(new Set(TRIED.map(({ file }) => file)).size).toBe(20);
  });

  it.each(TRIED)("$what: $file reads over its farm, without a note, and changes it", ({ file, after = [], farm = "withy-end.yaml" }) => {
    const text = { file: farm, text: scenarioText(farm) };
    const [changed, plain] = [read(text, [...after, file]), read(text, after)];
    expect(changed.ok ? changed.notes : changed.findings).toEqual([]);
    expect(changed.ok && plain.ok && changed.value.scenario.print !== plain.value.scenario.print).toBe(true);
  });

  it.each(filesIn("changes"))("%s reads over Withy End, without a note, and changes it", (file) => {
    const first = TRIED.find((tried) => tried.file === file)?.after ?? [];
    const [changed, plain] = [read(base, [...first, file]), read(base, first)];
    expect(changed.ok ? changed.notes : changed.findings).toEqual([]);
    expect(changed.ok && plain.ok && changed.value.scenario.print !== plain.value.scenario.print).toBe(true);
  });
});
