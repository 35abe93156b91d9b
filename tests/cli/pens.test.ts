/** `inbye pens`, built, as an owner runs it: text, JSON, drawings, and what it refuses. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { PensAnswer } from "../../src/cli/pens-answer.js";
import { fileNames } from "../../src/cli/pens.js";
import { readScenario } from "../../src/farm/read-scenario.js";
import { loadTables } from "../../src/files/tables.js";
import type { Plan } from "../../src/plan/plan.js";
import { gridCsv } from "../../src/sheets/grid-csv.js";
import { answer, freshFolder, inbye } from "./inbye.js";

const folder = freshFolder();

const FARM = [
  "farm: Low Acre", "season: 2027-04-20 to 2027-07-31", "fields:", "  Croft:", "    cover: 2100 kg/ha", "    cells: { L1: { width: 24 m, length: 50 m }, L2: 0.5 ha, L3: 0.6 ha }",
  "groups:", "  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }", "  Hens: { kind: layers, head: 30, weight: 1.9 kg, pen: Ark, housing: 2027-07-20 }",
  "  Pigs: { kind: pigs, class: weaner, head: 4, weight: 25 kg, gain: 600 g/d, here: 2027-05-03 to 2027-07-11 }", "pens:", "  Ark: { size: 4 m x 5 m, moved-by: hand, step: 2 d }", "",
].join("\n");

beforeAll(() => {
  writeFileSync(join(folder.path, "low-acre.yaml"), FARM);
  writeFileSync(join(folder.path, "cows.yaml"), FARM.replace(/^ {2}(Hens|Pigs).*\n/gm, "").replace(/^pens:\n.*\n/m, ""));
  const read = readScenario(FARM, "low-acre.yaml", loadTables());
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  const { season } = read.value;
  const yard = read.value.yards[0]!.name;
  const plan: Plan = {
    stays: [
      { group: "Cows", cell: null, yard, ...season },
      { group: "Hens", cell: "L1", yard: null, firstDay: season.firstDay, lastDay: "2027-07-19" },
      { group: "Hens", cell: null, yard, firstDay: "2027-07-20", lastDay: season.lastDay },
      { group: "Pigs", cell: "L2", yard: null, firstDay: "2027-05-03", lastDay: "2027-07-11" },
    ],
    cuts: [],
  };
  writeFileSync(join(folder.path, "grid.csv"), gridCsv(read.value, plan));
});
afterAll(folder.done);

function widest(text: string): number {
  return Math.max(...text.split("\n").map((line) => (/https?:/.test(line) ? 0 : [...line].length)));
}

describe("inbye pens", () => {
  it("tells each pen's ground, nitrogen and step, and what is dangerous, in 80 columns; writes nothing", () => {
    const before = readdirSync(folder.path);
    const { exit, out, aside } = inbye(["pens", "low-acre.yaml"], folder.path);
    expect({ exit, aside }).toEqual({ exit: 0, aside: "" });
    expect(widest(out)).toBeLessThanOrEqual(80);
    for (const words of ["Hens (L): 30, Ark", "Ark: one pen of 4 m x 5 m, moved by hand.", "Pigs (P): 4 weaners", "Strips of 80 m2", "Step to use", "No legs under the pen's edge", "Where these figures come from"]) expect(out).toContain(words);
    // nobody has cows in a pen
    expect(out).not.toContain("Cows (C)");
    expect(readdirSync(folder.path)).toEqual(before);
  });

  it("says the same as one object, of the published shape", () => {
    const { pens, planned } = answer<PensAnswer>(inbye(["pens", "low-acre.yaml", "--json"], folder.path), "pens-answer");
    expect(planned).toBe(false);
    expect(pens.map(({ group, widthM, lengthM, daysOut }) => [group, widthM, lengthM, daysOut])).toEqual([["Hens", 4, 5, 91], ["Pigs", Math.sqrt(80), Math.sqrt(80), 70]]);
    expect(pens[0]!.cells.map(({ cell, positions }) => [cell, positions])).toEqual([["L1", 60], ["L2", 250], ["L3", 300]]);
    expect(pens[0]!.cells[0]!.planned).toBe(null);
  });

  it("with a plan tells the positions that stays take, in order, and when fresh ground runs out", () => {
    const ran = inbye(["pens", "low-acre.yaml", "grid.csv", "--json"], folder.path);
    const { pens, planned } = answer<PensAnswer>(ran, "pens-answer");
    expect(planned).toBe(true);
    expect(pens[0]!.cells[0]!.planned).toMatchObject({ used: 46, left: 14, runsOut: null, stays: [{ firstDay: "2027-04-20", lastDay: "2027-07-19", firstPosition: 1, lastPosition: 46 }] });
    expect(pens[1]!.cells[1]!.planned).toMatchObject({ used: 10, runsOut: null });
    const { out } = inbye(["pens", "low-acre.yaml", "grid.csv"], folder.path);
    expect(out).toContain("1-46");
    expect(widest(out)).toBeLessThanOrEqual(80);
  });

  it("draws one page a pen into a folder, and never over what is there unless told", () => {
    expect(inbye(["pens", "low-acre.yaml", "grid.csv", "--out", "drawn"], folder.path).exit).toBe(0);
    expect(readdirSync(join(folder.path, "drawn")).sort()).toEqual(["pens-hens.html", "pens-pigs.html"]);
    expect(readFileSync(join(folder.path, "drawn/pens-hens.html"), "utf8")).toContain("L1, Croft: Hens");
    const again = inbye(["pens", "low-acre.yaml", "--out", "drawn"], folder.path);
    expect(again.exit).toBe(2);
    expect(again.out).toContain("file-exists");
    expect(readFileSync(join(folder.path, "drawn/pens-hens.html"), "utf8")).toContain("By the plan it is out");
    expect(inbye(["pens", "low-acre.yaml", "--out", "drawn", "--replace"], folder.path).exit).toBe(0);
    expect(readFileSync(join(folder.path, "drawn/pens-hens.html"), "utf8")).not.toContain("By the plan it is out");
  });

  it("says so where nobody takes ground by pen", () => {
    const { exit, out } = inbye(["pens", "cows.yaml", "--out", "none"], folder.path);
    expect([exit, out.includes("No group here takes ground by pen, net or strip.")]).toEqual([0, true]);
    expect(existsSync(join(folder.path, "none/pens-cows.html"))).toBe(false);
  });

  it.each([
    ["no farm", ["pens"], "file-not-named"], ["a plan that is not there", ["pens", "low-acre.yaml", "nowhere.json"], "no-file"],
    ["an unknown option", ["pens", "low-acre.yaml", "--draw"], "option-unknown"], ["no folder after --out", ["pens", "low-acre.yaml", "--out", ""], "option-value"],
  ])("refuses %s", (_name, args, code) => {
    const ran = inbye([...args, "--json"], folder.path);
    expect(ran.exit).toBe(2);
    expect(answer<{ findings: { code: string }[] }>(ran, "findings-answer").findings.map((finding) => finding.code)).toContain(code);
  });

  it("has a help of its own", () => {
    expect(inbye(["pens", "--help"], folder.path).out).toContain("Examples:");
  });
});

describe("names of the drawings", () => {
  it("are plain, and never the same for two groups", () => {
    expect(fileNames(["Layers", "Old hens", "Old-hens", "Gänse", "鶏"])).toEqual(["pens-layers", "pens-old-hens-2", "pens-old-hens-3", "pens-ga-nse", "pens-5"]);
  });
});
