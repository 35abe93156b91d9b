/** Files stay short enough to read in one sitting, and have names that say what is in them. */
import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const MOST_LINES = 250;
const NO_NAMES = /^(utils?|common|helpers?|misc|shared|stuff)$/;
const TOP_LEVEL = /^(\..*|README\.md|DEVELOPERS\.md|LICENSE|package\.json|package-lock\.json|tsconfig\.json|src|schemas|scenarios|tests|shared)$/;

function filesUnder(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
}

function lines(file: string): number {
  return readFileSync(file, "utf8").split("\n").length - 1;
}

describe("lengths and names", () => {
  const source = filesUnder("src").filter((file) => file.endsWith(".ts"));

  it("reads the source", () => {
    expect(source.length).toBeGreaterThan(40);
  });

  it(`has no source file over ${MOST_LINES} lines`, () => {
    const long = source.filter((file) => lines(file) > MOST_LINES).map((file) => `${relative(ROOT, file)}: ${lines(file)}`);
    expect(long).toEqual([]);
  });

  it("has kebab-case names that say something", () => {
    const odd = source.filter((file) => {
      const name = basename(file, ".ts");
      return !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name) || NO_NAMES.test(name);
    });
    expect(odd.map((file) => relative(ROOT, file))).toEqual([]);
  });

  it("silences no check without saying why", () => {
    const silenced = [...source, ...filesUnder("tests")].filter((file) => file.endsWith(".ts")).flatMap((file) =>
      readFileSync(file, "utf8").split("\n").flatMap((line, i) =>
        /^\s*(\/\/|\/\*) *(eslint-disable|@ts-ignore|@ts-nocheck)(?!.* -- )/.test(line) ? [`${relative(ROOT, file)}:${i + 1}`] : [],
      ),
    );
    expect(silenced).toEqual([]);
  });

  // a copy without its history has nothing to list
  it.runIf(existsSync(join(ROOT, ".git")))("keeps the top level to what belongs there", () => {
    const tracked = execFileSync("git", ["ls-files"], { cwd: ROOT, encoding: "utf8" }).split("\n").filter((line) => line !== "");
    const top = new Set(tracked.map((file) => file.split("/")[0]!));
    expect([...top].filter((name) => !TOP_LEVEL.test(name))).toEqual([]);
  });
});
