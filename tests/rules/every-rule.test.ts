/** One name finds a rule's statement, its check, its half in the programme and its test; every figure has a source. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { RULE_CHECKS } from "../../src/check/rule-checks.js";
import { HALVES, NO_HALF } from "../../src/programme/rules/index.js";
import { RULES, ruleOf } from "../../src/rules/index.js";
import { RULE_IDS } from "../../src/rules/rule.js";

const ROOT = resolve(import.meta.dirname, "../..");
const NO_TABLE = ["common practice", "judgement"];

function pascal(id: string): string {
  return id.split("-").map((word) => word[0]!.toUpperCase() + word.slice(1)).join("");
}

function camel(id: string): string {
  return pascal(id)[0]!.toLowerCase() + pascal(id).slice(1);
}

function read(path: string): string {
  return readFileSync(join(ROOT, path), "utf8");
}

/** Keys of all rows of the published tables. */
const keys = new Set(
  readdirSync(join(ROOT, "shared")).filter((name) => name.endsWith(".json"))
    .flatMap((name) => (JSON.parse(read(`shared/${name}`)) as { key: string }[]).map((row) => row.key)),
);

describe.each(RULE_IDS)("%s", (id) => {
  it("has a statement under its name", () => {
    expect(ruleOf(id).id).toBe(id);
    expect(read(`src/rules/${id}.ts`)).toContain(`export const ${camel(id)}: Rule`);
  });

  it("has a check under its name, and the check is asked", () => {
    expect(read(`src/check/${id}.ts`)).toContain(`export function check${pascal(id)}(`);
    expect(RULE_CHECKS[id].name).toBe(`check${pascal(id)}`);
  });

  it("has a half in the programme under its name, or a reason for none", () => {
    const half = HALVES.find((h) => h.id === id);
    expect(existsSync(join(ROOT, `src/programme/rules/${id}.ts`))).toBe(half !== undefined);
    expect(NO_HALF[id] === undefined).toBe(half !== undefined);
  });

  it("has its cases", () => {
    expect(read(`tests/rules/${id}.test.ts`)).toContain(`ruleCases("${id}", {`);
  });

  it("names where its sentence and every figure come from", () => {
    const rule = ruleOf(id);
    const sources = [rule.source, ...rule.parameters.map((parameter) => parameter.source)];
    expect(sources.filter((source) => !keys.has(source) && !NO_TABLE.includes(source))).toEqual([]);
  });

  it("has usual figures within their bounds, and uses that hold its own", () => {
    const rule = ruleOf(id);
    const outside = rule.parameters.filter(({ usual, least, most }) => least > most || (usual !== null && (usual < least || usual > most)));
    expect(outside).toEqual([]);
    expect(rule.uses).toContain(rule.use);
  });
});

describe("every rule", () => {
  it("is stated once, in the order of the ids", () => {
    expect(RULES.map((rule) => rule.id)).toEqual([...RULE_IDS]);
  });

  it("has no case file without a rule", () => {
    const named = readdirSync(join(ROOT, "tests/rules")).filter((name) => name.endsWith(".test.ts")).map((name) => name.replace(".test.ts", ""));
    expect(named.filter((name) => name !== "every-rule" && !(RULE_IDS as readonly string[]).includes(name))).toEqual([]);
  });
});
