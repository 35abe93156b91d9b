/** What is made from the source stands as the source would make it today. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { generatedFiles, withPart } from "../../src/make/generated.js";
import { RULE_IDS } from "../../src/rules/rule.js";

const ROOT = resolve(import.meta.dirname, "../..");
const made = generatedFiles(ROOT);

describe("generated files", () => {
  it.each(made.map((file) => [file.path, file.text] as const))("%s is not stale: else npm run make", (path, text) => {
    expect(existsSync(join(ROOT, path))).toBe(true);
    expect(readFileSync(join(ROOT, path), "utf8")).toBe(text);
  });

  it("leaves no schema that nothing makes", () => {
    const there = readdirSync(join(ROOT, "schemas")).map((name) => `schemas/${name}`);
    expect(there.filter((path) => !made.some((file) => file.path === path))).toEqual([]);
  });

  it("gives every rule its row in the README", () => {
    const readme = made.find((file) => file.path === "README.md")!.text;
    expect(RULE_IDS.filter((id) => !readme.includes(`| \`${id}\` |`))).toEqual([]);
  });
});

describe("withPart", () => {
  it("replaces what stands between the marks and nothing else", () => {
    const text = "a\n<!-- x: made by npm run make -->\nold\n<!-- end of x -->\nb\n";
    expect(withPart(text, "x", "new")).toBe("a\n<!-- x: made by npm run make -->\nnew\n<!-- end of x -->\nb\n");
  });

  it("refuses a text without the marks", () => {
    expect(() => withPart("a", "x", "new")).toThrow("no part for x");
  });
});
