import { describe, expect, it } from "vitest";
import { readScenario } from "../../src/farm/read-scenario.js";
import { findingText, inFileOrder } from "../../src/farm/finding.js";
import { filesIn, findingsOf, lowAcre, LOW_ACRE, scenarioText, TABLES } from "./read-text.js";

describe("farms with one fault each", () => {
  const files = filesIn("broken");

  it("are many", () => {
    expect(files.length).toBeGreaterThanOrEqual(45);
  });

  it.each(files)("%s gives exactly its finding", (file) => {
    const read = readScenario(scenarioText(`broken/${file}`), file, TABLES);
    expect(read.ok ? [] : read.findings.map((finding) => finding.code)).toEqual([file.split(".")[0]]);
  });
});

describe("findings", () => {
  const one = (from: string, to: string) => {
    const found = findingsOf(lowAcre(from, to));
    expect(found.map((f) => f.code)).toHaveLength(1);
    return found[0]!;
  };

  it("print place, found, allowed, next and code", () => {
    expect(findingText(one("L1: 0.5 ha", "L1: 0.28"))).toBe("farm.yaml:7:11  L1: area: 0.28 has no unit.\n  Areas are in ha, ac or m2. Write 0.28 ha.   unit-missing");
  });

  it.each([
    ["weight: 550 kg", "weight: 550 cm", "unit-wrong", 13, 64],
    ["head: 2", "head: 0", "head-none", 13, 53],
    ["L2: 0.5 ha", "L1: 0.5 ha", "name-twice", 8, 7],
    ["cover: 2200 kg/ha", "covr: 2200 kg/ha", "key-unknown", 5, 5],
    ["2027-10-31", "31.10.2027", "day-form", 2, 9],
    ["kind: cattle", "kind: cows", "word-unknown", 13, 17],
    ["class: cow with calf", "class: cow", "word-unknown", 13, 32],
    ["cover: 2200 kg/ha", "height: 90 cm", "out-of-reach", 5, 13],
    ["cover: 2200 kg/ha", "cover: 2,200 kg/ha", "comma", 5, 12],
    ["cover: 2200 kg/ha", "cover: 1e3 kg/ha", "number-form", 5, 12],
  ])("point at line and column: %s as %s", (from, to, code, line, column) => {
    expect(one(from, to)).toMatchObject({ code, line, column });
  });

  it.each([
    ["cover: 2200 kg/ha", "cover: 25000 kg/ha", "2500 kg/ha?"],
    ["cover: 2200 kg/ha", "height: 90 cm", "9 cm?"],
    ["2027-10-31", "31.10.2027", "2027-10-31?"],
    ["class: cow with calf", "class: cow with calv", "write cow with calf"],
  ])("say what to write: %s as %s", (from, to, next) => {
    expect(one(from, to).next).toBe(next);
  });

  it.each([
    ["kind: cattle", "kind: hens", "write layers"],
    ["kind: cattle", "kind: chickens", "write layers or broilers"],
    ["head: 2", "head: three", "write a number in digits"],
    ["550 kg", "heavy", "write a number in digits and its unit"],
    ["cover: 2200 kg/ha", "grows: 6,5 t/ha\n    cover: 2200 kg/ha", "write 6.5 t/ha"],
    ["2027-04-20 to 2027-10-31", "20 Apr 2027 - 20 Oct 2027", "write 2027-04-20 to 2027-10-20"],
    ["2027-04-20 to 2027-10-31", "2027-04-20 - 2027-10-20", "write 2027-04-20 to 2027-10-20"],
    ["2027-04-20 to 2027-10-31", "1 May 2027 to 30 Sep 2027", "2027-05-01 to 2027-09-30?"],
    ["2027-04-20 to 2027-10-31", "20 Apr to 20 Oct 2027", "2027-04-20 to 2027-10-20?"],
    ["2027-04-20 to 2027-10-31", "April 20, 2027 to Oct 20, 2027", "2027-04-20 to 2027-10-20?"],
    ["2027-04-20 to 2027-10-31", "20/4/2027-20/10/2027", "write 2027-04-20 to 2027-10-20"],
    ["2027-04-20 to 2027-10-31", "4/5/2027 to 6/7/2027", "2027-04-05 to 2027-06-07 or 2027-05-04 to 2027-07-06?"],
    ["2027-04-20 to 2027-10-31", "all summer", "write its first day, to, and its last day"],
  ])("propose from what was typed: %s as %s", (from, to, next) => {
    expect(one(from, to).next).toBe(next);
  });

  it("say why a day is none", () => {
    expect(one("2027-04-20", "2027-04-31")).toMatchObject({ found: "season: 2027-04-31 is not a day of the calendar, April has 30 days", next: "2027-04-30?" });
    expect(one("2027-04-20", "2027-02-29").found).toMatch(/February 2027 has 28 days$/);
  });

  it("name the words of a list, and the nearest of many keys", () => {
    const wants = one("cover: 2200 kg/ha", "cover: 2200 kg/ha\n    wants: hay");
    expect(wants).toMatchObject({ code: "word-unknown", line: 6, allowed: "it is fertility, scratching or opening" });
    expect(one("cover: 2200 kg/ha", "cover: 2200 kg/ha\n    wet: yes").allowed).toMatch(/^the README lists the \d+ keys of fields, nearest \w/);
    expect(one("cover: 2200 kg/ha", "cover: 2200 kg/ha\n    last: { hens: 2026-09-01 }").next).toBe("layers?");
  });

  it("come all at once and in file order, layout faults first", () => {
    const text = LOW_ACRE.replace("L1: 0.5 ha", "L1: 0.5").replace("weight: 550 kg", "weight: 620 cm").replace("L5: 0.5 ha", "L5:0.5 ha").replace("head: 2", "head: 0");
    expect(findingsOf(text).map((f) => [f.code, f.line])).toEqual([["colon-space", 11], ["unit-missing", 7], ["head-none", 13], ["unit-wrong", 13]]);
  });

  it("are put in order by file, then place", () => {
    const at = (file: string, line: number, code = "x") => ({ file, line, column: 1, code, found: "", allowed: "", next: "" });
    expect(inFileOrder([at("b", 1), at("a", 9), at("a", 2), at("a", 7, "tab")], ["a", "b"]).map((f) => `${f.file}${f.line}`)).toEqual(["a7", "a2", "a9", "b1"]);
  });

  it("say which days have nobody and what the chores need", () => {
    const home = findingsOf(`${LOW_ACRE}people:\n  Owner: { minutes: 2 h, away: { fair: 2027-06-05 to 2027-06-07 } }\n`);
    expect(home.map((f) => [f.code, f.found])).toEqual([["nobody-home", "nobody is at home on 2027-06-05 to 2027-06-07"]]);
    // The morning round 30 min, one group 5 min.
    expect(findingsOf(`${LOW_ACRE}people:\n  Owner: { minutes: 34 min }\n`)[0]).toMatchObject({ code: "too-few-minutes", next: "give 35 min or more on those days" });
  });

  it("say why no cell is left, each with its reason", () => {
    const text = lowAcre("cover: 2200 kg/ha", "cover: 2200 kg/ha\n    last: { pigs: 2026-08-16 }").replace("  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }", "  Pigs: { kind: pigs, class: weaner, head: 4, weight: 20 kg }");
    expect(findingsOf(text)[0]).toMatchObject({ code: "no-cell", found: "Pigs: no cell is left (L1, L2, L3, L4, L5 had pigs to 2026-08-16)" });
  });

  it("keep chicks apart: birds have no young with them", () => {
    const text = lowAcre("kind: cattle, class: cow with calf", "kind: layers, pen: Ark, young-weight: 40 g").replace("550 kg", "2 kg") + "pens: { Ark: { size: 2 m x 3 m, moved-by: hand } }\n";
    expect(findingsOf(text).map((f) => [f.code, f.found])).toEqual([["key-unknown", "Cows: birds have no young-weight"]]);
  });

  it("take an empty people map for nobody", () => {
    expect(findingsOf(`${LOW_ACRE}people: {}\n`).map((f) => f.code)).toEqual(["nobody-home"]);
  });

  it.each(["", "   \n", "# only a remark\n", "just words", "- a\n- b"])("say that %j is no farm", (text) => {
    expect(findingsOf(text).map((f) => f.code)).toEqual(["empty-file"]);
  });

  it("refuse what is no text, and what is nested to exhaust a reader", () => {
    expect(findingsOf(`farm: ${String.fromCharCode(0)}x`).map((f) => f.code)).toEqual(["not-text"]);
    expect(findingsOf("a: " + "[".repeat(20_000) + "]".repeat(20_000)).map((f) => f.code)).toEqual(["layout"]);
  });
});

describe("layout", () => {
  it.each([
    "note: see the gate at http://example.org/x", "note: a # remark", 'note: "Stiff: lift it"', "note: it's the cow's", "note: |\n  a: b:c\n  # no remark\n  d:e\nunits: metric", "note: 1:2",
  ])("leaves %j alone", (line) => {
    expect(readScenario(`${LOW_ACRE}${line}\n`, "farm.yaml", TABLES).ok).toBe(true);
  });
});
