import { describe, expect, it } from "vitest";
import { readScenario } from "../../src/farm/read-scenario.js";
import { isBird, isGrazer } from "../../src/farm/scenario.js";
import { filesIn, LOW_ACRE, MAPS, scenarioOf, scenarioText, TABLES } from "./read-text.js";
import { sha256 } from "../../src/files/read.js";

describe("the farms we ship", () => {
  const files = filesIn(".");

  it("are five or more, of different size, and named after their farm", () => {
    expect(files.length).toBeGreaterThanOrEqual(5);
    for (const file of files) expect(scenarioOf(scenarioText(file)).farm.toLowerCase().replaceAll(" ", "-")).toBe(file.replace(".yaml", ""));
  });

  it.each(files)("%s reads without a finding or a note", (file) => {
    const read = readScenario(scenarioText(file), file, TABLES, undefined, MAPS);
    expect(read.ok ? read.notes : read.findings).toEqual([]);
  });

  it.each(files)("%s is whole: names point at what is there, figures are figures", (file) => {
    const farm = scenarioOf(scenarioText(file));
    const [cells, groups, yards] = [farm.cells.map((c) => c.name), farm.groups.map((g) => g.name), farm.yards.map((y) => y.name)];
    expect(new Set(farm.groups.map((g) => g.letter)).size).toBe(groups.length);
    expect(farm.fields.flatMap((f) => f.cells).sort()).toEqual([...cells].sort());
    for (const group of farm.groups) {
      expect(yards).toContain(group.yard);
      expect(group.mayEnter.every((name) => cells.includes(name))).toBe(true);
      expect(group.follows === null || groups.includes(group.follows)).toBe(true);
      expect(group.strip === null).toBe(isGrazer(group.kind));
      if (isBird(group.kind)) expect(group.strip!.pen).not.toBeNull();
    }
  });
});

describe("print", () => {
  const print = (text: string): string => {
    const read = readScenario(text, "farm.yaml", TABLES, sha256);
    return read.ok ? read.value.print : "";
  };
  const base = print(LOW_ACRE);

  it("is a SHA-256", () => {
    expect(base).toMatch(/^sha256:[0-9a-f]{64}$/);
  });

  it("does not change with remarks, layout, notes, or the short form of a cell", () => {
    expect(print(LOW_ACRE.replace("L1: 0.5 ha", "L1: { area: 0.5 ha }   # by the gate"))).toBe(base);
    expect(print(`# first\n${LOW_ACRE}note: mended\n`)).toBe(base);
    const [head, rest] = [LOW_ACRE.slice(0, LOW_ACRE.indexOf("fields")), LOW_ACRE.slice(LOW_ACRE.indexOf("groups"))];
    expect(print(head + rest + LOW_ACRE.slice(LOW_ACRE.indexOf("fields"), LOW_ACRE.indexOf("groups")))).toBe(base);
  });

  it("changes with a figure and with the walk", () => {
    expect(print(LOW_ACRE.replace("550 kg", "551 kg"))).not.toBe(base);
    expect(print(LOW_ACRE.replace("L1: 0.5 ha\n      L2: 0.5 ha", "L2: 0.5 ha\n      L1: 0.5 ha"))).not.toBe(base);
    expect(print(`${LOW_ACRE}walk: L2, L1\n`)).not.toBe(base);
  });
});
