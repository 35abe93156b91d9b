/** The main job by the built command: plan a farm, change the grid by hand, ask whether it still keeps the rules. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { CheckAnswer, PlanAnswer, ReadAnswer } from "../../src/cli/answers.js";
import { answer, faultsOfShape, freshFolder, inbye, MAIN, ROOT, type Ran } from "./inbye.js";

const SLOW = 240_000;
const folder = freshFolder();
const NAMES = ["grid.csv", "plan.json", "season-grid.html"];

/** Presses Ctrl-C as soon as the program minds it, long before it has read a farm. */
const PRESSED = `data:text/javascript,${encodeURIComponent('process.on("newListener", (name) => name === "SIGINT" && setImmediate(() => process.kill(process.pid, "SIGINT")))')}`;

/** The README's own farm, as a reader would copy it: it must work the first time. */
const FARM = /^```yaml\n([\s\S]*?)^```/m.exec(readFileSync(join(ROOT, "README.md"), "utf8"))![1]!;

/** The same farm for a month: planned again in a moment. */
const SHORT = FARM.replace("to 2027-09-30", "to 2027-05-20");

let first: Ran;
let planned: PlanAnswer;

beforeAll(() => {
  writeFileSync(join(folder.path, "low-acre.yaml"), FARM);
  first = inbye(["plan", "low-acre.yaml", "--effort", "quick", "--json"], folder.path);
  planned = answer<PlanAnswer>(first, "plan-answer");
}, SLOW);
afterAll(folder.done);

/** Words on one line. */
const unwrapped = (words: string): string => words.replace(/\s+/g, " ");

const text = (path: string): string => readFileSync(join(folder.path, path), "utf8");

describe("plan", () => {
  it("writes the three sheets into plans/ under the farm file's name, and names them", () => {
    expect(first.exit).toBe(0);
    expect(readdirSync(join(folder.path, "plans/low-acre")).sort()).toEqual(NAMES);
    expect([...planned.files].sort()).toEqual(NAMES.map((name) => join("plans/low-acre", name)));
  });

  it("keeps figures that close: charges sum to the cost, the bound is below, the share saved is as defined", () => {
    const sum = Object.values(planned.charges).reduce((total, money) => total + (money ?? 0), 0);
    expect(sum).toBeCloseTo(planned.cost, 0);
    expect(planned.bound).toBeLessThanOrEqual(planned.cost);
    expect(planned.cost).toBeLessThanOrEqual(planned.handRuleCost);
    expect(planned.breaches).toEqual([]);
    const possible = planned.handRuleCost - planned.bound;
    if (planned.savedOfPossible !== null) expect(planned.savedOfPossible).toBeCloseTo((planned.handRuleCost - planned.cost) / possible, 2);
  });

  it("keeps plan.json to its published shape, every group-day placed", () => {
    const file = JSON.parse(text("plans/low-acre/plan.json")) as { stays: { "first-day": string; "last-day": string }[] };
    expect(faultsOfShape("plan-file", file)).toEqual([]);
    const days = file.stays.reduce((sum, stay) => sum + (Date.parse(stay["last-day"]) - Date.parse(stay["first-day"])) / 86_400_000 + 1, 0);
    expect(days).toBe(164); // 20 April to 30 September, one group
  });

  it("leaves what is there alone, and says so before it plans", () => {
    const before = NAMES.map((name) => text(`plans/low-acre/${name}`));
    const ran = inbye(["plan", "low-acre.yaml", "--effort", "long", "--json"], folder.path);
    expect(ran.exit).toBe(2);
    const { findings } = answer<{ findings: { code: string }[] }>(ran, "findings-answer");
    expect(findings.map((finding) => finding.code)).toEqual(["file-exists", "file-exists", "file-exists"]);
    expect(NAMES.map((name) => text(`plans/low-acre/${name}`))).toEqual(before);
  });

  it("gives the same plan again for the same farm, seed and effort, also under --replace", () => {
    const before = NAMES.map((name) => text(`plans/low-acre/${name}`));
    const ran = inbye(["plan", "low-acre.yaml", "--effort", "quick", "--replace", "--json"], folder.path);
    expect(ran.exit).toBe(0);
    expect({ ...answer<PlanAnswer>(ran, "plan-answer"), seconds: 0 }).toEqual({ ...planned, seconds: 0 });
    expect(NAMES.map((name) => text(`plans/low-acre/${name}`))).toEqual(before);
  }, SLOW);

  it("says in words the cost, what none can cost less than, by eye, yard days by year, how sure, and where the sheets lie", () => {
    const ran = inbye(["plan", "low-acre.yaml", "--effort", "quick", "--out", "words"], folder.path);
    expect({ exit: ran.exit, aside: ran.aside }).toEqual({ exit: 0, aside: "" });
    const out = unwrapped(ran.out);
    for (const part of ["No plan can cost less than", "By eye", "about £", "dry  usual  wet", "Firm to 3 May", "Take care", join("words", "season-grid.html")]) {
      expect(part === "dry  usual  wet" ? ran.out : out).toContain(part);
    }
    expect(ran.out).not.toMatch(/\b(dual|bound|gap|heuristic|subgradient|solver|residual-cover|every-day-placed)\b/i);
  }, SLOW);

  it.each([60, null, 200])("keeps all it prints within %s columns, 80 where nobody says", (columns) => {
    const asked = columns === null ? [] : ["--columns", String(columns)];
    writeFileSync(join(folder.path, "short.yaml"), SHORT);
    const ran = inbye(["plan", "short.yaml", "--effort", "quick", "--out", "wide", "--replace", ...asked], folder.path);
    expect(ran.exit).toBe(0);
    expect(ran.out.split("\n").filter((line) => [...line].length > (columns ?? 80))).toEqual([]);
  }, SLOW);

  it("calls nothing a haul where there is one field, but coming back from the yard", () => {
    const { out } = inbye(["check", "low-acre.yaml", "plans/low-acre/plan.json"], folder.path);
    expect(out).toContain("keeps every rule");
    if (planned.yardDays["Cows"] === 0) expect(planned.hauls).toBe(0);
    expect(planned.hauls).toBeLessThanOrEqual(planned.yardDays["Cows"]!);
  });

  it("does not write where it may not", () => {
    writeFileSync(join(folder.path, "taken"), "mine");
    const ran = inbye(["plan", "low-acre.yaml", "--out", "taken"], folder.path);
    expect(ran.exit).toBe(2);
    expect(ran.out).toContain("not-a-folder");
    expect(text("taken")).toBe("mine");
  });

  it("hands out no plan where a fixed place breaks a rule: exit 3, what breaks, nothing for the wall, and a way out", () => {
    // ten days in one cell; the longest stay is seven
    writeFileSync(join(folder.path, "held.yaml"), `${SHORT}holds: { calving: { group: Cows, cell: L1, days: 2027-05-01 to 2027-05-10 } }\n`);
    const ran = inbye(["plan", "held.yaml", "--effort", "quick", "--json"], folder.path);
    expect(ran.exit).toBe(3);
    const held = answer<PlanAnswer>(ran, "plan-answer");
    expect(readdirSync(join(folder.path, "plans", "held")).sort()).toEqual(["nearest-plan.json", "way-out-plan.json", "way-out.yaml"]);
    expect(held.clashingHolds).toEqual(["calving"]);
    expect(held.breaches.map(({ rule, group, cell }) => [rule, group, cell])).toContainEqual(["stay-limit", "Cows", "L1"]);
    const nearest = inbye(["check", "held.yaml", "plans/held/nearest-plan.json", "--json"], folder.path);
    expect(nearest.exit).toBe(3);
    expect(answer<CheckAnswer>(nearest, "check-answer").breaches).toEqual(held.breaches);
    const out = inbye(["check", "held.yaml", "plans/held/way-out-plan.json", "--change", "plans/held/way-out.yaml", "--json"], folder.path);
    expect(out.exit).toBe(0);
    expect(answer<CheckAnswer>(out, "check-answer")).toMatchObject({ breaches: [], notes: [], cost: expect.closeTo(held.waysOut[0]!.cost, 2) });
  }, SLOW);

  it("ends at its cap and says so", () => {
    const ran = inbye(["plan", "low-acre.yaml", "--effort", "long", "--seconds", "1", "--out", "capped", "--json"], folder.path);
    expect(ran.exit).toBe(0);
    const capped = answer<PlanAnswer>(ran, "plan-answer");
    expect({ capped: capped.capped, breaches: capped.breaches }).toEqual({ capped: true, breaches: [] });
    expect(capped.seconds).toBeLessThan(15);
  }, SLOW);

  it("keeps the best plan found when interrupted", async () => {
    const child = spawn(process.execPath, [MAIN, "plan", "low-acre.yaml", "--effort", "long", "--out", "stopped", "--json"], { cwd: folder.path });
    let out = "";
    child.stdout.on("data", (chunk: Buffer) => (out += chunk.toString()));
    setTimeout(() => child.kill("SIGINT"), 2500);
    const [exit] = (await once(child, "close")) as [number];
    expect(exit).toBe(0);
    const stopped = JSON.parse(out) as PlanAnswer;
    expect({ capped: stopped.capped, breaches: stopped.breaches }).toEqual({ capped: true, breaches: [] });
    expect(readdirSync(join(folder.path, "stopped")).sort()).toEqual(NAMES);
  }, SLOW);

  it.each([[[], "Stopped before the first plan; nothing was written."], [["--json"], '"code":"stopped"']])("says so when it is interrupted before there is a plan, and writes nothing: %j", async (more, words) => {
    const child = spawn(process.execPath, ["--import", PRESSED, MAIN, "plan", "low-acre.yaml", "--out", "early", ...more], { cwd: folder.path });
    let said = "";
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (chunk: Buffer) => (said += chunk.toString()));
    const [exit] = (await once(child, "close")) as [number];
    expect({ exit, lines: said.trim().split("\n").length }).toEqual({ exit: 3, lines: 1 });
    expect(said).toContain(words);
    expect(readdirSync(folder.path)).not.toContain("early");
  });
});

describe("read", () => {
  it("says first whether there are cells enough, and how many figures were assumed", () => {
    const ran = inbye(["read", "low-acre.yaml"], folder.path);
    expect(ran.exit).toBe(0);
    expect(ran.out.indexOf("Cells needed")).toBeLessThan(ran.out.indexOf("What the land grows"));
    expect(unwrapped(ran.out)).toMatch(/\d+ figures not in the file; inbye read low-acre.yaml --assumed/);
    expect(ran.out.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });

  it("lists every assumed figure with its source", () => {
    const { assumed } = answer<ReadAnswer>(inbye(["read", "low-acre.yaml", "--json"], folder.path), "read-answer");
    const out = unwrapped(inbye(["read", "low-acre.yaml", "--assumed"], folder.path).out);
    expect(assumed.length).toBeGreaterThan(10);
    expect(assumed.filter(({ key, value, source }) => !out.includes(unwrapped(`${key}: ${value}`)) || !out.includes(unwrapped(source)))).toEqual([]);
  });

  it("writes nothing", () => {
    mkdirSync(join(folder.path, "alone"));
    writeFileSync(join(folder.path, "alone/a.yaml"), FARM);
    inbye(["read", "a.yaml"], join(folder.path, "alone"));
    expect(readdirSync(join(folder.path, "alone"))).toEqual(["a.yaml"]);
  });
});

describe("check", () => {
  const check = (plan: string): { ran: Ran; found: CheckAnswer } => {
    const ran = inbye(["check", "low-acre.yaml", plan, "--json"], folder.path);
    return { ran, found: answer<CheckAnswer>(ran, "check-answer") };
  };

  it.each(["plan.json", "grid.csv"])("accepts %s as it was written, at the plan's own cost", (name) => {
    const { ran, found } = check(`plans/low-acre/${name}`);
    expect({ exit: ran.exit, breaches: found.breaches }).toEqual({ exit: 0, breaches: [] });
    expect(found.cost).toBeCloseTo(planned.cost, 1);
  });

  it("names rule, cell, days, found and allowed when the grid was changed by hand", () => {
    writeFileSync(join(folder.path, "changed.csv"), keptInOneCell(text("plans/low-acre/grid.csv")));
    const { ran, found } = check("changed.csv");
    expect(ran.exit).toBe(3);
    const stay = found.breaches.find((breach) => breach.rule === "stay-limit")!;
    expect(stay).toMatchObject({ group: "Cows", cell: "L1", firstDay: "2027-04-20", allowed: expect.stringMatching(/7/) as unknown });
    const words = inbye(["check", "low-acre.yaml", "changed.csv"], folder.path);
    expect(words.exit).toBe(3);
    expect(words.out).toMatch(/\[stay-limit\]\n {2}Cows in L1, 20 Apr to [^\n]*:\s+found [^;]*;\s+allowed [^\n]*\s+7/);
    expect(words.out.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });

  it("finds what cannot be read in a grid, with its place", () => {
    writeFileSync(join(folder.path, "odd.csv"), text("plans/low-acre/grid.csv").replace("L1", "L9"));
    const ran = inbye(["check", "low-acre.yaml", "odd.csv", "--json"], folder.path);
    expect(ran.exit).toBe(2);
    const { findings } = answer<{ findings: { file: string; line: number; column: number; found: string }[] }>(ran, "findings-answer");
    expect(findings[0]).toMatchObject({ file: "odd.csv", line: 2 });
    expect(findings[0]!.found).toContain("L9");
  });

  it("says when the farm file has changed since", () => {
    writeFileSync(join(folder.path, "other.yaml"), FARM.replace("head: 2", "head: 1"));
    const ran = inbye(["check", "other.yaml", "plans/low-acre/plan.json", "--json"], folder.path);
    const note = answer<CheckAnswer>(ran, "check-answer").notes.find(({ code }) => code === "other-farm-file");
    expect(note?.found).toMatch(/: Cows head: 2 then, 1 now$/);
  });
});

describe("a pipe that closes early", () => {
  it("is no fault", async () => {
    const child = spawn("sh", ["-c", `"${process.execPath}" "${MAIN}" read low-acre.yaml --assumed | head -1`], { cwd: folder.path });
    let aside = "";
    child.stderr.on("data", (chunk: Buffer) => (aside += chunk.toString()));
    await once(child, "close");
    expect(aside).toBe("");
  });
});

/** The same grid with the cows in L1 all season, as a hand in a spreadsheet might leave it. */
function keptInOneCell(csv: string): string {
  const rows = csv.trimEnd().split(/\r?\n/).map((line) => line.split(","));
  return rows.map((row, i) => (i === 0 ? row : row.map((box, j) => (j === 0 ? box : row[0] === "L1" ? "C" : "")))).map((row) => row.join(",")).join("\r\n");
}
