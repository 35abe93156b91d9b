/** What if, by the built command: the comparison closes and keeps its shape, and what cannot be tried is said, every finding at once. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { CheckAnswer } from "../../src/cli/answers.js";
import type { TryAnswer } from "../../src/cli/try-answer.js";
import type { Finding } from "../../src/farm/finding.js";
import { answer, faultsOfShape, freshFolder, inbye, type Ran } from "./inbye.js";

const SLOW = 240_000;
const folder = freshFolder();

const FARM = `farm: Low Acre
season: 2027-04-20 to 2027-05-31
fields:
  Croft:
    cover: 2300 kg/ha
    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha, L4: 0.5 ha, L5: 0.5 ha }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 4, weight: 550 kg }
  Hens: { kind: layers, head: 30, weight: 1.8 kg, pen: Ark, follows: Cows }
pens: { Ark: { size: 3 m x 4 m, moved-by: hand } }
people:
  Owner: { minutes: 2 h 30 min }
`;

const FILES: Readonly<Record<string, string>> = {
  "farm.yaml": FARM,
  "more-cows.yaml": "change: Two more cows\ngroups: { Cows: { head: 6 } }\n",
  "fewer-cows.yaml": "change: Two cows fewer\ngroups: { Cows: { head: 2 } }\n",
  "no-hens.yaml": "change: No hens\ngroups: { Hens: null }\npens: null\n",
  "a-cell-more.yaml": "change: A cell more\nfields: { Croft: { cells: { L6: 0.5 ha } } }\nprices: { hay: 300 GBP/t }\n",
  "nothing.yaml": "change: As before\ngroups: { Cows: { head: 4 } }\n",
  "not-yaml.yaml": "change: Broken\ngroups: { Cows: { head: 6 }\n  - and: [\n",
  "list.yaml": "change: A list\ngroups: { Cows: { head: [4, 5] } }\n",
  "no-cell.yaml": "change: No cell\nfields: { Croft: { cells: { L1: null, L2: null, L3: null, L4: null, L5: null } } }\n",
  "no-leader.yaml": "change: No cows\ngroups: { Cows: null }\n",
  "nobody.yaml": "change: A misspelt group\ngroups: { Cow: { head: 6 } }\n",
  "other-farm.yaml": FARM.replace("Low Acre", "High Acre").replaceAll(/\bL(\d)\b/g, "M$1").replaceAll("Cows", "Ewes"),
};

beforeAll(() => {
  for (const [name, text] of Object.entries(FILES)) writeFileSync(join(folder.path, name), text);
});
afterAll(folder.done);

/** Findings of a command line that is refused; nothing is planned and nothing written. */
function refused(...args: readonly string[]): readonly Finding[] {
  const before = readdirSync(folder.path);
  const ran = inbye(["try", ...args, "--json"], folder.path);
  expect(ran.exit).toBe(2);
  expect(readdirSync(folder.path)).toEqual(before);
  return answer<{ findings: Finding[] }>(ran, "findings-answer").findings;
}

const codes = (findings: readonly Finding[]): readonly string[] => findings.map(({ code }) => code);
const QUICK = ["--effort", "quick"];

describe("try", () => {
  let ran: Ran;
  let said: TryAnswer;
  beforeAll(() => {
    ran = inbye(["try", "farm.yaml", "more-cows.yaml", "a-cell-more.yaml", "--together", "--out", "tried", ...QUICK, "--json"], folder.path);
    said = answer<TryAnswer>(ran, "try-answer");
  }, SLOW);

  it("plans the farm as it is, each change, and all together", () => {
    expect(ran.exit).toBe(0);
    expect(said.changes.map(({ trial }) => trial.title)).toEqual(["Two more cows", "A cell more", "All together"]);
    for (const { trial, comparison } of said.changes) expect([trial.planFound, comparison !== null]).toEqual([true, true]);
  });

  it("has figures that close, as they are printed", () => {
    for (const { trial, comparison } of said.changes) {
      const all = [...Object.values(comparison!.figures), ...Object.values(comparison!.charges)];
      for (const { base, change, difference } of all) expect(Math.abs(base + difference - change)).toBeLessThan(1e-6);
      expect(comparison!.figures.cost).toMatchObject({ base: said.base.cost, change: trial.cost });
      const sum = Object.values(trial.charges).reduce((total, money) => total + (money ?? 0), 0);
      expect(Math.abs(sum - trial.cost!)).toBeLessThan(0.2); // each charge rounded to hundredths
    }
  });

  it("writes each plan where the check accepts it, at the cost that was told", () => {
    expect(readdirSync(join(folder.path, "tried")).sort()).toEqual(["a-cell-more", "all-together", "as-it-is", "more-cows"]);
    expect(said.files.length).toBe(12);
    const checked = (change: readonly string[], plan: string) => answer<CheckAnswer>(inbye(["check", "farm.yaml", `tried/${plan}/plan.json`, ...change, "--json"], folder.path), "check-answer");
    for (const [plan, change, cost] of [
      ["as-it-is", [], said.base.cost], ["more-cows", ["--change", "more-cows.yaml"], said.changes[0]!.trial.cost],
      ["all-together", ["--change", "more-cows.yaml,a-cell-more.yaml"], said.changes[2]!.trial.cost],
    ] as const) {
      const found = checked(change, plan);
      expect([plan, found.breaches, found.notes]).toEqual([plan, [], []]);
      expect(found.cost).toBeCloseTo(cost!, 2);
    }
    expect(faultsOfShape("plan-file", JSON.parse(readFileSync(join(folder.path, "tried/as-it-is/plan.json"), "utf8")))).toEqual([]);
  });

  it("tells every price, the assumed ones marked, and what a change says otherwise", () => {
    expect(said.prices.map(({ what, assumed }) => [what, assumed])).toEqual([
      ["hay", true], ["labour", true], ["mowing", true], ["a haul, besides its minutes", true], ["a group's day in Yard", true], ["a group's day in Hen yard", true],
    ]);
    expect(said.changes.map(({ prices }) => prices)).toEqual([[], [{ what: "hay", price: "300.00 GBP/t", assumed: false }], [{ what: "hay", price: "300.00 GBP/t", assumed: false }]]);
  });

  it("says it in words that fit the width, starting from a plan that is there", () => {
    const words = inbye(["try", "farm.yaml", "a-cell-more.yaml", "--from", "tried/as-it-is/plan.json", ...QUICK], folder.path);
    expect([words.exit, words.aside]).toEqual([0, ""]);
    for (const part of ["what if?", "The plan you gave costs", "as it is", "with it", "difference", "Days that stand otherwise, by week", "Prices", "(assumed)", "How sure"]) expect(words.out).toContain(part);
    expect(Math.max(...words.out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  }, SLOW);

  it("lays what --change names under both", () => {
    const found = answer<TryAnswer>(inbye(["try", "farm.yaml", "more-cows.yaml", "--change", "no-hens.yaml", ...QUICK, "--seconds", "20", "--json"], folder.path), "try-answer");
    expect(found.laidFirst).toEqual(["No hens"]);
    expect(found.changes[0]!.comparison!.groups.map(({ group, on }) => [group, on])).toEqual([["Cows", "both"]]);
  }, SLOW);
});

describe("what cannot be tried", () => {
  it("says every finding of every change at once", () => {
    const found = refused("farm.yaml", "not-yaml.yaml", "list.yaml", "no-cell.yaml", "no-leader.yaml", "nobody.yaml");
    const files = new Set(found.map(({ file }) => file));
    for (const file of ["not-yaml.yaml", "list.yaml", "nobody.yaml"]) expect(files).toContain(file);
    // the last cell and the leader, taken out, are missed in the farm file
    const inFarm = found.filter(({ file }) => file === "farm.yaml");
    expect(inFarm.map(({ code }) => code).sort()).toEqual(["name-unknown", "no-cell"]);
    expect(new Set(found.map((one) => JSON.stringify(one))).size).toBe(found.length);
  });

  it("refuses a change that is not there", () => {
    expect(codes(refused("farm.yaml", "missing.yaml"))).toEqual(["no-file"]);
  });

  it("refuses a change that changes nothing, one named twice, and two that make the same farm", () => {
    writeFileSync(join(folder.path, "same.yaml"), "change: Six cows\ngroups: { Cows: { head: 6 } }\n");
    expect(codes(refused("farm.yaml", "nothing.yaml"))).toEqual(["changes-nothing"]);
    expect(codes(refused("farm.yaml", "more-cows.yaml", "--change", "more-cows.yaml"))).toEqual(["changes-nothing"]);
    expect(codes(refused("farm.yaml", "more-cows.yaml", "./more-cows.yaml"))).toEqual(["change-twice"]);
    expect(codes(refused("farm.yaml", "more-cows.yaml", "same.yaml"))).toEqual(["change-twice"]);
  });

  it("refuses two changes that fight only where they are laid together, and says over what", () => {
    const [found, ...more] = refused("farm.yaml", "more-cows.yaml", "fewer-cows.yaml", "--together");
    expect([found!.code, more]).toEqual(["changes-fight", []]);
    expect(found!.found).toContain("Cows head is 6 or 2");
    expect(codes(refused("farm.yaml", "more-cows.yaml", "--together"))).toEqual(["option-value"]);
  });

  it("refuses a plan of another farm, and sheets that are there", () => {
    inbye(["plan", "other-farm.yaml", "--effort", "quick", "--seconds", "1", "--out", "other"], folder.path);
    expect(refused("farm.yaml", "more-cows.yaml", "--from", "other/plan.json").length).toBeGreaterThan(0);
    mkdirSync(join(folder.path, "full/as-it-is"), { recursive: true });
    writeFileSync(join(folder.path, "full/as-it-is/plan.json"), "{}");
    expect(codes(refused("farm.yaml", "more-cows.yaml", "--out", "full"))).toEqual(["file-exists"]);
  }, SLOW);

  it("wants a change", () => {
    expect(codes(refused("farm.yaml"))).toEqual(["file-not-named"]);
  });
});
