import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readChanged } from "../../src/farm/change.js";
import { findingText } from "../../src/farm/finding.js";
import { readScenario } from "../../src/farm/read-scenario.js";
import { filesIn, LOW_ACRE, MAPS, scenarioText, TABLES } from "./read-text.js";

const FARMS = ["withy-end.yaml", "long-riggs.yaml", "stony-bottom.yaml", "cold-garth.yaml", "rushy-leys.yaml"].map(scenarioText);
const RUNS = { seed: 7396, numRuns: 100 };

/** Pieces that mean something to the reader, to be put where they do not belong. */
const PIECES = [
  ":", " #", "{", "}", "[", "]", "&a", "*a", "!!x", "null", "\t", "  ", "\n", ",", '"', "'", "-", "? ", "|", ">", "%", "0", "-1", "1e9", "0.0", "99999999", "2027-02-30",
  "9999-12-31", "0001-01-01", "until 2027-05-01", "from 2020-01-01", "__proto__", "constructor", "toString", "ha", "kg", "yes", "é", "☃", "cells:", "groups:", "Cows", "H1", "£4",
];

/** Paths of figures that are none. */
function notFigures(value: unknown, path = ""): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (value === undefined) return [path];
  return typeof value === "object" && value !== null ? Object.entries(value).flatMap(([key, inner]) => notFigures(inner, `${path}.${key}`)) : [];
}

/** Reads, and holds the answer to its promise: a value or findings with places inside the file. */
function holds(text: string): void {
  const read = readScenario(text, "farm.yaml", TABLES, undefined, MAPS);
  if (read.ok) {
    expect(notFigures(read.value)).toEqual([]);
    expect(read.value.cells.every((cell) => cell.areaHa > 0 && cell.coverKgPerHa > 0)).toBe(true);
    return;
  }
  const lines = text.split(/\r\n|\n|\r/).length;
  expect(read.findings.length).toBeGreaterThan(0);
  for (const finding of read.findings) {
    expect(finding.line).toBeGreaterThanOrEqual(1);
    if (finding.file === "farm.yaml") expect(finding.line).toBeLessThanOrEqual(lines + 1);
    expect(finding.column).toBeGreaterThanOrEqual(1);
    expect(findingText(finding)).not.toMatch(/undefined|NaN|\[object/);
  }
}

describe("reading never throws", () => {
  it("on any text", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 300 }), holds), RUNS);
  });

  it("on pieces of the language in any order", () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(...PIECES, "farm: ", "season: ", "fields:\n  F:\n", "    cells: "), { maxLength: 40 }), (pieces) => holds(pieces.join(""))), RUNS);
  });

  it("on a farm with pieces put in and taken out", () => {
    const change = fc.record({ at: fc.nat(), out: fc.nat({ max: 12 }), piece: fc.constantFrom(...PIECES) });
    fc.assert(
      fc.property(fc.constantFrom(...FARMS, LOW_ACRE), fc.array(change, { minLength: 1, maxLength: 3 }), (farm, changes) => {
        holds(changes.reduce((text, { at, out, piece }) => text.slice(0, at % text.length) + piece + text.slice((at % text.length) + out), farm));
      }),
      RUNS,
    );
  });

  it("on a farm with a line lost, doubled or moved", () => {
    fc.assert(
      fc.property(fc.constantFrom(...FARMS, LOW_ACRE), fc.nat(), fc.nat(), fc.constantFrom("lost", "doubled", "moved"), (farm, a, b, what) => {
        const lines = farm.split("\n");
        const line = lines[a % lines.length]!;
        const rest = what === "doubled" ? lines : lines.filter((_, i) => i !== a % lines.length);
        const at = b % lines.length;
        holds((what === "lost" ? rest : [...rest.slice(0, at), line, ...rest.slice(at)]).join("\n"));
      }),
      RUNS,
    );
  });

  it("on a farm with one value for another", () => {
    fc.assert(
      fc.property(fc.constantFrom(...FARMS, LOW_ACRE), fc.nat(), fc.oneof(fc.constantFrom(...PIECES), fc.string({ maxLength: 12 })), (farm, n, value) => {
        const values = [...farm.matchAll(/: ([^{}[\]\n,#]+)/g)];
        const match = values[n % values.length]!;
        holds(farm.slice(0, match.index + 2) + value + farm.slice(match.index + match[0].length));
      }),
      RUNS,
    );
  });

  it("on changes of another farm", () => {
    fc.assert(
      fc.property(fc.constantFrom(...FARMS, LOW_ACRE), fc.array(fc.constantFrom(...filesIn("changes")), { maxLength: 4 }), (farm, files) => {
        const read = readChanged({ file: "farm.yaml", text: farm }, files.map((file) => ({ file, text: scenarioText(`changes/${file}`) })), TABLES, undefined, MAPS);
        if (!read.ok) for (const finding of read.findings) expect(findingText(finding)).not.toMatch(/undefined|NaN/);
      }),
      { ...RUNS, numRuns: 60 },
    );
  });
});
