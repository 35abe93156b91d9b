/** Which room imports which: read from the imports themselves, without the tool that also checks it. */
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve, sep } from "node:path";
import { describe, expect, it } from "vitest";

const SRC = resolve(import.meta.dirname, "../../src");

/** A room sees itself and the rooms beside its name. */
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  words: ["quantity"],
  science: ["quantity"],
  rules: ["quantity"],
  farm: ["quantity", "science", "rules"],
  plan: ["quantity", "farm"],
  check: ["quantity", "science", "rules", "farm", "plan"],
  season: ["quantity", "science", "rules", "farm"],
  programme: ["quantity", "science", "rules", "farm", "plan", "season"],
  solvers: ["programme"],
  threads: ["programme", "solvers"],
  work: ["quantity", "farm", "plan", "check"],
  decide: ["quantity", "science", "rules", "farm", "plan", "check", "season", "programme"],
  sheets: ["quantity", "rules", "farm", "season", "plan", "check", "decide", "words", "work"],
  files: ["quantity", "science", "farm", "plan", "words"],
  cli: ["quantity", "science", "rules", "farm", "plan", "check", "season", "programme", "solvers", "threads", "decide", "words", "work", "sheets", "files"],
};

/** Rooms that see everything and that nothing sees. */
const OUTER = ["make", "bench"];
const TOUCHES_NODE = ["files", "solvers", "threads", "cli", ...OUTER];

/** Packages that belong to one kind of room only. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  highs: ["solvers"],
  "javascript-lp-solver": ["solvers"],
  yargs: ["cli"],
  yaml: ["farm", "plan"],
  "csv-parse": ["plan"],
  "intl-messageformat": ["words"],
  "@xmldom/xmldom": ["farm"],
};

interface Import {
  readonly from: string;
  readonly room: string;
  readonly to: string;
}

function sourceFiles(): string[] {
  return readdirSync(SRC, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => join(entry.parentPath, entry.name));
}

function roomOf(file: string): string {
  const parts = relative(SRC, file).split(sep);
  return parts.length > 1 ? parts[0]! : "";
}

/** Every specifier after `from` or in `import(...)` or a bare `import "..."`. */
function importsOf(file: string): Import[] {
  const text = readFileSync(file, "utf8");
  const found = text.matchAll(/^(?:import|export)\b[^;"']*?["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']/gm);
  return [...found].map((match) => ({ from: file, room: roomOf(file), to: (match[1] ?? match[2])! }));
}

const IMPORTS = sourceFiles().flatMap(importsOf);
const inside = IMPORTS.filter((one) => one.to.startsWith("."));
const outside = IMPORTS.filter((one) => !one.to.startsWith("."));

function targetRoom(one: Import): string {
  return roomOf(resolve(one.from, "..", one.to));
}

function said(list: readonly Import[]): string[] {
  return list.map((one) => `${relative(SRC, one.from)} imports ${one.to}`);
}

describe("directions of import", () => {
  it("finds the house", () => {
    expect(IMPORTS.length).toBeGreaterThan(100);
    expect(said(IMPORTS)).toContain("rules/index.ts imports ./rule.js");
  });

  it("has no room that the table does not know", () => {
    const rooms = new Set(sourceFiles().map(roomOf).filter((room) => room !== ""));
    expect([...rooms].filter((room) => !(room in ROOMS) && !OUTER.includes(room))).toEqual([]);
  });

  it("lets a room see only its own rooms", () => {
    const wrong = inside.filter((one) => {
      if (one.room === "" || OUTER.includes(one.room)) return false;
      const target = targetRoom(one);
      return target !== one.room && !ROOMS[one.room]!.includes(target);
    });
    expect(said(wrong)).toEqual([]);
  });

  it("keeps the check and the programme apart", () => {
    const across = inside.filter((one) => {
      const pair = [one.room, targetRoom(one)].join(">");
      return ["check>programme", "check>season", "programme>check", "season>check"].includes(pair);
    });
    expect(said(across)).toEqual([]);
  });

  it("keeps Node out of the core", () => {
    const wrong = outside.filter((one) => one.to.startsWith("node:") && !TOUCHES_NODE.includes(one.room));
    expect(said(wrong)).toEqual([]);
  });

  it("keeps packages in their rooms", () => {
    const wrong = outside.filter((one) => {
      const rooms = Object.entries(PACKAGES).find(([name]) => one.to === name || one.to.startsWith(`${name}/`))?.[1];
      return rooms !== undefined && !rooms.includes(one.room) && !OUTER.includes(one.room);
    });
    expect(said(wrong)).toEqual([]);
  });

  it("uses .js endings, as Node reads them", () => {
    expect(said(inside.filter((one) => !/\.(js|json)$/.test(one.to)))).toEqual([]);
  });
});
