/** The built command given nothing, too much, or what it cannot use: every finding at once, exit 2, nothing written. */
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { runCommandLine } from "../../src/cli/run.js";
import type { Screen } from "../../src/cli/screen.js";
import type { Finding } from "../../src/farm/finding.js";
import { answer, freshFolder, inbye, ROOT } from "./inbye.js";

const folder = freshFolder();
const TEN_MB = 10 * 1024 * 1024;

interface Findings {
  readonly findings: readonly Finding[];
}

const FARM = [
  "farm: Low Acre",
  "season: 2027-04-20 to 2027-05-10",
  "fields:",
  "  Croft:",
  "    cover: 2300 kg/ha",
  "    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha }",
  "groups:",
  "  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }",
  "people:",
  "  Owner: { minutes: 1 h 30 min }",
  "",
].join("\n");

beforeAll(() => {
  writeFileSync(join(folder.path, "good.yaml"), FARM);
  writeFileSync(join(folder.path, "empty.yaml"), "");
  writeFileSync(join(folder.path, "big.yaml"), `farm: Big\n${"# nothing but remarks\n".repeat(Math.ceil(TEN_MB / 22))}`);
  writeFileSync(join(folder.path, "bytes.yaml"), Buffer.from([0xff, 0xfe, 0x00, 0x80, 0x81]));
  writeFileSync(join(folder.path, "units.yaml"), FARM.replace("550 kg", "550 cm").replace("0.4 ha", "-0.4 ha"));
  mkdirSync(join(folder.path, "folder.yaml"));
});
afterAll(folder.done);

/** Characters of the longest line. */
function widest(text: string): number {
  return Math.max(...text.split("\n").map((line) => [...line].length));
}

/** What was there before a command is all that is there after it. */
function nothingWritten(run: () => void): void {
  const before = readdirSync(folder.path);
  run();
  expect(readdirSync(folder.path)).toEqual(before);
}

describe("help", () => {
  it("says in plain words what each command does, with examples", () => {
    const { exit, out } = inbye(["--help"], folder.path);
    expect(exit).toBe(0);
    expect(widest(out)).toBeLessThanOrEqual(80);
    for (const word of ["read", "plan", "check", "Exit codes", "inbye plan scenarios/withy-end.yaml"]) expect(out).toContain(word);
  });

  it.each(["read", "plan", "check", "try"])("%s has a help of its own", (command) => {
    const { exit, out } = inbye([command, "--help"], folder.path);
    expect(exit).toBe(0);
    expect(out).toContain("Examples:");
  });

  it("speaks English on every machine", () => {
    const german = { LANG: "de_DE.UTF-8", LC_ALL: "de_DE.UTF-8" };
    expect(inbye(["--help"], folder.path, german).out).toBe(inbye(["--help"], folder.path).out);
  });

  it("tells its version", () => {
    expect(inbye(["--version"], folder.path).out.trim()).toMatch(/^\d+\.\d+\.\d+$/);
  });
});

describe("a command line that cannot be used", () => {
  it.each([
    ["nothing", [], "command-missing"],
    ["an unknown command", ["mow", "good.yaml"], "option-unknown"],
    ["an unknown option", ["read", "good.yaml", "--colour"], "option-unknown"],
    ["one file too many", ["read", "good.yaml", "good.yaml"], "option-unknown"],
    ["a dotted option", ["read", "good.yaml", "--json.x", "1"], "option-unknown"],
    ["no farm file", ["read"], "file-not-named"],
    ["no plan", ["check", "good.yaml"], "file-not-named"],
    ["an option twice", ["plan", "good.yaml", "--seed", "1", "--seed", "2"], "option-twice"],
    ["a seed that is no number", ["plan", "good.yaml", "--seed", "abc"], "option-value"],
    ["a broken seed", ["plan", "good.yaml", "--seed", "1.5"], "option-value"],
    ["no seed after --seed", ["plan", "good.yaml", "--seed"], "option-value"],
    ["no seconds", ["plan", "good.yaml", "--seconds", "0"], "option-value"],
    ["an effort of its own", ["plan", "good.yaml", "--effort", "heroic"], "option-value"],
    ["no width", ["plan", "good.yaml", "--columns", "7"], "option-value"],
    ["a farm that is not there", ["read", "nowhere.yaml"], "no-file"],
    ["a folder for a farm", ["read", "folder.yaml"], "no-file"],
    ["an empty farm", ["plan", "empty.yaml"], "empty-file"],
    ["ten megabytes", ["plan", "big.yaml"], "too-big"],
    ["bytes that are no text", ["plan", "bytes.yaml"], "not-text"],
    ["a plan that is not there", ["check", "good.yaml", "nowhere.json"], "no-file"],
    ["an empty plan", ["check", "good.yaml", "empty.yaml"], "grid-form"],
  ])("%s", (_name, args, code) => {
    nothingWritten(() => {
      const ran = inbye(args, folder.path);
      expect({ exit: ran.exit, aside: ran.aside }).toEqual({ exit: 2, aside: "" });
      expect(ran.out).toContain(code);
      expect(widest(ran.out)).toBeLessThanOrEqual(80);
      const json = inbye([...args, "--json"], folder.path);
      expect(json.exit).toBe(2);
      expect(answer<Findings>(json, "findings-answer").findings.map((finding) => finding.code)).toContain(code);
    });
  });

  it("finds everything in a farm file at once, with line and column", () => {
    nothingWritten(() => {
      const ran = inbye(["plan", "units.yaml", "--json"], folder.path);
      expect(ran.exit).toBe(2);
      const { findings } = answer<Findings>(ran, "findings-answer");
      expect(findings.map(({ file, line }) => [file, line])).toEqual([["units.yaml", 6], ["units.yaml", 8]]);
      const weight = findings[1]!;
      expect(weight.column).toBe(FARM.split("\n")[7]!.indexOf("550 kg") + 1);
      expect(weight.code).toBe("unit-wrong");
      expect(findings.every((finding) => finding.next !== "")).toBe(true);
    });
  });

  it("keeps no trace for whoever did not ask", () => {
    const ran = inbye(["read", "nowhere.yaml"], folder.path);
    expect(ran.out + ran.aside).not.toContain("Error");
  });

  it.each([["--bogus", "--bogus"], ["--colour=red", "--colour"], ["-x", "-x"]])("names %s where no command is given", (typed, named) => {
    const { out } = inbye([typed], folder.path);
    expect(out).toContain(`not known here: ${named}.`);
    expect(out).toContain("no command");
  });

  it("calls no option unknown that a command has", () => {
    expect(inbye(["--effort", "quick"], folder.path).out).not.toContain("not known");
  });
});

describe("the broken farms of the house", () => {
  const broken = readdirSync(join(ROOT, "scenarios/broken")).filter((name) => name.endsWith(".yaml"));

  it("are there", () => {
    expect(broken.length).toBeGreaterThan(5);
  });

  // in this process: forty-nine times a start of its own would take longer than all the rest
  it.each(broken)("%s: exit 2 and a finding, nothing written", async (name) => {
    const before = readdirSync(ROOT);
    const said: string[] = [];
    const screen: Screen = { say: (text) => void said.push(text), aside: () => undefined, columns: null, live: false, heading: (text) => text, soft: (text) => text };
    const exit = await runCommandLine(["plan", join(ROOT, "scenarios/broken", name), "--json"], screen);
    expect(exit).toBe(2);
    expect(answer<Findings>({ exit, out: said.join(""), aside: "" }, "findings-answer").findings.length).toBeGreaterThan(0);
    expect(readdirSync(ROOT)).toEqual(before);
  });
});
