import { test, fc } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { positionsOf, writePlanFile, type PlanFile } from "../../src/plan/plan-file.js";
import { readPlanFile } from "../../src/plan/read-plan-file.js";
import { orderedPlan } from "../../src/plan/standings.js";
import { LOW_ACRE } from "../farm/read-text.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

const FARM = tinyFarm({
  cells: [cell("H1"), cell("F3")],
  groups: [group("Cows"), group("Layers", { kind: "layers", strip: { areaHa: 0.01, days: 3, movedBy: "tow", stepMinutes: 40, nets: 1, pen: "Layer pen" } })],
  more: { holds: [{ name: "sale day", days: { firstDay: "2027-05-10", lastDay: "2027-05-10" }, group: "Cows", cell: null, yard: "Yard", cut: null }] },
});

const FILE: PlanFile = {
  farm: "Tiny", version: 3, replaces: 2, madeOn: "2027-05-01", firmTo: "2027-05-14", likelyTo: "2027-06-11", farmPrint: "sha256:tiny", farmForm: null,
  changes: ["Two more cows"],
  plan: {
    stays: [
      { group: "Cows", cell: "H1", yard: null, firstDay: "2027-05-01", lastDay: "2027-05-09" },
      { group: "Layers", cell: "F3", yard: null, firstDay: "2027-05-01", lastDay: "2027-05-05" },
      { group: "Cows", cell: null, yard: "Yard", firstDay: "2027-05-10", lastDay: "2027-05-10" },
      { group: "Layers", cell: "F3", yard: null, firstDay: "2027-05-11", lastDay: "2027-05-13" },
    ],
    cuts: [{ cell: "F3", cut: "hay", day: "2027-05-20" }],
  },
  measures: { hay: "412 kg" }, charges: { "follow-window": "31.00 GBP" }, cost: "431.00 GBP", bound: "402.10 GBP", handRule: null,
  yardDays: { dry: { Cows: 9 }, usual: { Cows: 1 }, wet: { Cows: 0 } },
  assumed: [{ key: "residual-cover least", value: "1500 kg/ha", source: "2c", status: "from memory" }],
};
const TEXT = writePlanFile(FARM, FILE);

const findings = (text: string) => {
  const result = readPlanFile(text, "plan.json", FARM);
  return result.ok ? [] : result.findings;
};
const lineOf = (part: string): number => TEXT.split("\n").findIndex((line) => line.includes(part)) + 1;

describe("plan.json", () => {
  it("comes back as it was written", () => {
    expect(readPlanFile(TEXT, "plan.json", FARM)).toEqual({ ok: true, value: FILE, notes: [] });
  });

  it("is JSON, a stay a line, keys in hyphens, positions counted on, holds named", () => {
    expect(JSON.parse(TEXT)).toMatchObject({ inbye: "plan 1", "farm-print": "sha256:tiny", "yard-days": { dry: { Cows: 9 } } });
    expect(TEXT).toContain('    { "group": "Layers", "cell": "F3", "first-day": "2027-05-11", "last-day": "2027-05-13", "positions": "3" }\n');
    expect(TEXT).toContain('    { "group": "Cows", "yard": "Yard", "first-day": "2027-05-10", "last-day": "2027-05-10", "held": "sale day" },\n');
  });

  it("counts the positions of a run: five days by threes are two", () => {
    expect(FILE.plan.stays.map((stay) => positionsOf(FARM, FILE.plan, stay))).toEqual([null, "1-2", null, "3"]);
  });

  test.prop([fc.array(fc.tuple(fc.constantFrom("Cows", "Layers"), fc.constantFrom("H1", "F3", null), fc.nat(20), fc.nat(5)), { maxLength: 20 }), fc.string(), fc.nat()])(
    "read(write(file)) = file", (rows, words, version) => {
      const stays = rows.map(([name, place, first, length]) => ({
        group: name, cell: place, yard: place === null ? "Yard" : null,
        firstDay: `2027-05-${String(first + 1).padStart(2, "0")}`, lastDay: `2027-05-${String(first + 1 + length).padStart(2, "0")}`,
      }));
      const file = { ...FILE, version: version + 1, changes: [words], measures: { [`m${words}`]: words }, plan: orderedPlan(stays, FILE.plan.cuts, FARM) };
      expect(readPlanFile(writePlanFile(FARM, file), "plan.json", FARM)).toEqual({ ok: true, value: file, notes: [] });
    });
});

describe("what a plan.json gets wrong", () => {
  it("points at the line of a text that is not JSON", () => {
    expect(findings(TEXT.replace('"version": 3,', '"version": 3'))).toMatchObject([{ code: "layout", line: 5, column: 3 }]);
    expect(findings("inbye: plan 1\n")).toMatchObject([{ code: "layout", line: 1 }]);
    expect(findings("")).toMatchObject([{ code: "layout", line: 1 }]);
    expect(findings(TEXT.replace('"version": 3,', '"version": 3, "version": 4,'))).toMatchObject([{ code: "layout", line: 4 }]);
  });

  it("finds every wrong key and value at once, in file order", () => {
    const text = TEXT.replace('"farm": "Tiny",', "").replace('"2027-05-20"', '"2027-02-30"').replace('"cost"', '"costs"');
    expect(findings(text).map((f) => [f.code, f.found, f.line])).toEqual([
      ["plan-form", "farm is missing", 1], ["plan-form", "cuts 0 day: invalid iso date", lineOf('"2027-05-20"')],
      ["plan-form", "cost is missing", 1], ["key-unknown", "costs: no such key in a plan", lineOf('"cost"')],
    ].sort((a, b) => Number(a[2]) - Number(b[2])));
  });

  it("finds stays that end before they begin, or name no place, or two", () => {
    expect(findings(TEXT.replace('"last-day": "2027-05-09"', '"last-day": "2027-04-09"'))).toMatchObject([{ code: "days-reversed", line: lineOf('"2027-05-09"') }]);
    expect(findings(TEXT.replace('"yard": "Yard", ', ""))).toMatchObject([{ code: "one-place", line: lineOf("sale day") }]);
    expect(findings(TEXT.replace('"yard": "Yard", ', '"yard": "Yard", "cell": "H1", '))).toMatchObject([{ code: "one-place" }]);
  });

  it("finds groups, cells and yards of another farm", () => {
    const text = TEXT.replace('"Cows", "cell"', '"Cow", "cell"').replace('"cell": "F3", "cut"', '"cell": "F9", "cut"');
    expect(findings(text)).toMatchObject([
      { code: "name-unknown", line: lineOf('"2027-05-09"'), column: 7, next: "Cows?" }, { code: "name-unknown", line: lineOf('"2027-05-20"'), next: "F3?" },
    ]);
    expect(readPlanFile(text, "plan.json").ok).toBe(true);
  });

  it("says once that a plan is another farm's, and once each name of its own farm that is gone", () => {
    const other = TEXT.replace('"farm": "Tiny"', '"farm": "Brook End"').replaceAll('"cell": "F3"', '"cell": "B3"');
    expect(findings(other)).toMatchObject([{ code: "other-farm", line: 3, found: "this plan is for Brook End, the farm file is of Tiny" }]);
    expect(findings(TEXT.replaceAll('"cell": "F3"', '"cell": "B3"'))).toMatchObject([{ code: "name-unknown", found: "Tiny has no cell B3" }]);
  });

  it("notes a farm of another name that has all the plan's names", () => {
    const read = readPlanFile(TEXT.replace('"farm": "Tiny"', '"farm": "Brook End"'), "plan.json", FARM);
    expect(read.ok && read.notes).toMatchObject([{ code: "other-farm" }]);
  });

  it.each([
    ["a farm file", LOW_ACRE], ["a farm file", JSON.stringify({ farm: "x", fields: {}, groups: {} })], ["another file", JSON.stringify({ findings: [] })], ["a change to a farm", "change: x\n"],
  ])("says once that it was given %s", (what, text) => {
    expect(findings(text)).toMatchObject([{ code: "not-a-plan", line: 1, found: `this is ${what}, not a plan` }]);
  });
});
