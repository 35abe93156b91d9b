import { describe, expect, it } from "vitest";
import { findingsOf, LOW_ACRE, lowAcre, scenarioOf, scenarioText } from "./read-text.js";

const WITHY = scenarioText("withy-end.yaml");

function withy(from: string, to: string): string {
  if (WITHY.split(from).length !== 2) throw new Error(`not once in the farm: ${from}`);
  return WITHY.replace(from, to);
}

/** Lines from one to the one before another, set in by two more spaces. */
function setIn(from: string, until: string): string {
  const lines = WITHY.split("\n");
  const [first, last] = [lines.indexOf(from), lines.indexOf(until)];
  if (first < 0 || last < first) throw new Error(`not in the farm: ${from}, ${until}`);
  return lines.map((line, i) => (i >= first && i < last && line !== "" ? `  ${line}` : line)).join("\n");
}

const said = (text: string) => findingsOf(text).map(({ code, next }) => [code, next]);

describe("a comma before decimals inside braces", () => {
  it.each([
    ["A3: { area: 0.19 ha", "A3: { area: 0,19 ha", "write 0.19 ha"],
    ["minutes: { weekdays: 2 h 30 min", "minutes: { weekdays: 2,5 h", "write 2.5 h"],
    ["size: 2.5 m x 4.0 m", "size: 2,5 m x 3 m", "write 2.5 m x 3 m"],
    ["size: 2.5 m x 4.0 m", "size: 2,5 m x 3,5 m", "write 2.5 m x 3.5 m"],
    ["hay: 150 GBP/t", "hay: 150,5 GBP/t", "write 150.5 GBP/t"],
    ["on 20 %", "on 20,5 %", "write 20.5 %"],
    ["first-pass: 1700 kg/ha", "first-pass: 1,700 kg/ha", "write 1700 kg/ha"],
    ["weekdays: 2 h 30 min", "weekdays: 2, 5 h", "write weekdays: 2.5 h, or the key of 5 h"],
  ])("%s as %s", (from, to, next) => {
    expect(said(withy(from, to))).toEqual([["comma", next]]);
  });

  it("in lists of lengths, in brackets and without", () => {
    for (const sides of ["[60 m, 40,5 m, 60 m, 41 m]", "'60 m, 40,5 m, 60 m, 41 m'"]) {
      expect(said(lowAcre("L1: 0.5 ha", `L1: { sides: ${sides}, diagonal: 72 m }`))).toEqual([["comma", "write 40.5 m"]]);
    }
  });

  it("leaves cells with numbers for names apart", () => {
    const farm = LOW_ACRE.replace("L1:", "8:").replace("L2:", "9:").replace("head: 2", "head: 2, only-in: [8,9]");
    expect(scenarioOf(farm).groups[0]!.mayEnter).toEqual(["8", "9"]);
  });
});

describe("a name set in too far", () => {
  it.each([
    ["with its lines", setIn("  Apple garth:", "  Knoll:"), "Apple garth is set in too far, it stands inside Home field", "move it and the lines below it left to the column of Home field"],
    ["alone", withy("  Apple garth:", "    Apple garth:"), "Apple garth is set in too far, it stands inside Home field", "move its line left to the column of Home field"],
    ["a group with its lines", setIn("  Layers:", "  Broilers:"), "Layers is set in too far, it stands inside Cows", "move it and the lines below it left to the column of Cows"],
    ["a group alone", withy("\n  Layers:", "\n    Layers:"), "Layers is set in too far, it stands inside Cows", "move its line left to the column of Cows"],
    ["groups themselves", setIn("groups:", "pens:"), "groups is set in too far, it stands inside fields", "move it and the lines below it left to the column of fields"],
    ["the word groups alone", withy("\ngroups:", "\n  groups:"), "groups is set in too far, it stands inside fields", "move its line left to the column of fields"],
  ])("%s is one finding", (_name, text, found, next) => {
    expect(findingsOf(text)).toMatchObject([{ code: "level", found, next }]);
  });

  it("comes first, and the rest of the file is read", () => {
    const found = findingsOf(setIn("  Apple garth:", "  Knoll:").replace("A1: 0.20 ha", "A1: 0.20").replace("H1: 0.28 ha", "H1: 0.28"));
    expect(found.map(({ code }) => code)).toEqual(["level", "unit-missing", "unit-missing"]);
  });

  it("under a key that has its value is pointed at", () => {
    expect(findingsOf(lowAcre("      L2: 0.5 ha", "        L2: 0.5 ha"))).toMatchObject([{ code: "level", line: 8, column: 9, found: "line 8 is set in under line 7, which has its value already" }]);
  });
});

describe("a missing colon", () => {
  it.each([
    ["  Cows: {", "  Cows {", "write Cows: {"],
    ["  Cows: {", "  Cows{", "write Cows: {"],
    ["groups:", "groups", "write groups:"],
    ["  Long Croft:", "  Long Croft", "write Long Croft:"],
    ["    cover: 2200 kg/ha", "    cover 2200 kg/ha", "write cover: 2200 kg/ha"],
    ["      L2: 0.5 ha", "      L2 0.5 ha", "write L2: 0.5 ha"],
    ["kind: cattle", "kind cattle", "write kind: cattle"],
    ["season: ", "season ", "write season: 2027-04-20 to 2027-10-31"],
  ])("%s as %s is one finding", (from, to, next) => {
    expect(said(lowAcre(from, to))).toEqual([["colon-missing", next]]);
  });

  it("twice is said twice", () => {
    expect(said(LOW_ACRE.replace("L2: 0.5", "L2 0.5").replace("L4: 0.6", "L4 0.6")).map(([code]) => code)).toEqual(["colon-missing", "colon-missing"]);
  });
});
