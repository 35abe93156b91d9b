/** The README's commands run, its farm plans, and its tables name every key. */
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { loadTables } from "../../src/files/tables.js";
import { readScenario } from "../../src/farm/read-scenario.js";
import { farmShape, INNER_KEYS } from "../../src/farm/shape.js";

const ROOT = resolve(import.meta.dirname, "../..");
const README = readFileSync(join(ROOT, "README.md"), "utf8");
const PACKAGE = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as { scripts: Record<string, string> };

/** Fenced blocks of a language, in order. */
function blocks(language: string): string[] {
  return [...README.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\``, "gm"))].map((match) => match[1]!);
}

describe("README", () => {
  it("gives two commands, each complete on a fresh machine", () => {
    expect(blocks("sh").slice(0, 2).map((block) => block.trim())).toEqual(["npm ci && npm start", "npm ci && npm test"]);
  });

  it("names only commands that npm has", () => {
    const named = [...README.matchAll(/\bnpm (?:run )?([a-z:]+)/g)].map((match) => match[1]!);
    expect(named.filter((name) => !["ci", "start", "test"].includes(name) && !(name in PACKAGE.scripts))).toEqual([]);
  });

  it("has the continuous run use the same commands", () => {
    const run = readFileSync(join(ROOT, ".ci/run"), "utf8");
    expect(run).toMatch(/^npm ci && .*npm test\b|npm ci && INBYE_TEST_REPORT=\S+ npm test\b/m);
  });

  it("has a farm of ten lines that reads without a finding", () => {
    const farm = blocks("yaml")[0]!;
    expect(farm.trim().split("\n").length).toBeLessThanOrEqual(10);
    const read = readScenario(farm, "low-acre.yaml", loadTables());
    expect(read.ok ? [] : read.findings).toEqual([]);
  });

  it("adds hens in a pen to that farm without a finding", () => {
    const [farm, hens] = blocks("yaml") as [string, string];
    const read = readScenario(farm.replace(/^people:/m, `${hens}people:`), "low-acre.yaml", loadTables());
    expect(read.ok ? read.value.groups.map((group) => [group.name, group.strip?.pen]) : read.findings).toEqual([["Cows", undefined], ["Hens", "Ark"]]);
  });

  it("names every key of a farm file", () => {
    const keys = new Set([...Object.keys(farmShape.shape), ...Object.values(INNER_KEYS).flat()]);
    expect([...keys].filter((key) => !README.includes(`\`${key}\``))).toEqual([]);
  });

  it("links only to what is there", () => {
    const links = [...README.matchAll(/\]\((?!https?:)([^)#]+)\)/g)].map((match) => match[1]!);
    expect(links.length).toBeGreaterThan(0);
    for (const link of links) expect(readFileSync(join(ROOT, link), "utf8").length).toBeGreaterThan(0);
  });
});
