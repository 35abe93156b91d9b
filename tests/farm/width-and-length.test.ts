import { describe, expect, it } from "vitest";
import { readScenario } from "../../src/farm/read-scenario.js";
import { loadTables } from "../../src/files/tables.js";

const TABLES = loadTables();

function read(cell: string, field = "") {
  const text = [
    "farm: Low Acre", "season: 2027-04-20 to 2027-09-30", "fields:", "  Croft:", "    cover: 2300 kg/ha", ...(field === "" ? [] : [`    ${field}`]),
    `    cells: { L1: ${cell}, L2: 0.2 ha }`, "groups:", "  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }", "",
  ].join("\n");
  const result = readScenario(text, "low-acre.yaml", TABLES);
  return result.ok ? result.value.cells[0]!.areaHa : result.findings.map(({ line, code, found, next }) => [line, code, found, next]);
}

describe("width and length", () => {
  it("make a rectangle, in any unit of length", () => {
    expect(read("{ width: 40 m, length: 70 m }")).toBeCloseTo(0.28, 12);
    // a foot is 0.3048 m by agreement of 1959
    expect(read("{ width: 100 ft, length: 200 ft }")).toBeCloseTo((20_000 * 0.3048 ** 2) / 10_000, 9);
  });

  it("a field may have them too: its cells may not be larger", () => {
    expect(read("{ width: 40 m, length: 70 m }", "width: 40 m\n    length: 120 m")).toBeCloseTo(0.28, 12);
    expect(read("{ width: 40 m, length: 70 m }", "width: 40 m\n    length: 100 m")).toEqual([[6, "cells-over-field", expect.stringContaining("Croft is 0.4 ha, its cells make 0.48 ha"), expect.anything()]]);
  });

  it("want each other, and no other size beside them: one finding each", () => {
    expect(read("{ width: 40 m }")).toEqual([[6, "key-missing", "L1 has a width without a length", "write length: 60 m"]]);
    expect(read("{ length: 40 m }")).toEqual([[6, "key-missing", "L1 has a length without a width", "write width: 60 m"]]);
    expect(read("{ area: 0.2 ha, width: 40 m, length: 70 m }")).toEqual([[6, "two-ways", "L1 has area and width", "take out all but area"]]);
    expect(read("{ width: 40 kg, length: 70 m }")).toEqual([[6, "unit-wrong", expect.stringContaining("L1: width"), expect.anything()]]);
    expect(read("{ width: 2 m, length: 3 m }")).toEqual([[6, "out-of-reach", expect.stringContaining("area comes to 0.0006 ha"), "look at the lengths"]]);
  });
});
