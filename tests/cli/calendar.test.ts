/** `inbye calendar`, built, as an owner runs it; what it writes is read by ical.js. */
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readIcs } from "../sheets/calendar/read-ics.js";
import { answer, freshFolder, inbye, ROOT } from "./inbye.js";

interface Answer {
  readonly plan: { readonly version: number; readonly madeOn: string };
  readonly groups: readonly string[] | null;
  readonly person: string | null;
  readonly sequence: number;
  readonly events: number;
  readonly added: number | null;
  readonly cancelled: number | null;
  readonly file: string;
  readonly notes: readonly { readonly code: string; readonly found: string }[];
}

const SLOW = 240_000;
const folder = freshFolder();
const FARM = join(ROOT, "scenarios/withy-end.yaml");
const GRID = "plans/grid.csv";
const LOW_ACRE = /^```yaml\n([\s\S]*?)^```/m.exec(readFileSync(join(ROOT, "README.md"), "utf8"))![1]!;

const calendar = (args: readonly string[]) => inbye(["calendar", FARM, ...args], folder.path);
const made = (args: readonly string[]): Answer => answer<Answer>(calendar([...args, "--json"]), "calendar-answer");
const read = (file: string) => readIcs(readFileSync(join(folder.path, file), "utf8"));

/** Codes and words of what is found, in order. */
function refused(args: readonly string[]): readonly string[] {
  const ran = calendar([...args, "--json"]);
  expect(ran.exit).toBe(2);
  return answer<{ findings: { code: string; found: string; next: string }[] }>(ran, "findings-answer").findings.map(({ code, found, next }) => `${code}: ${found}: ${next}`);
}

beforeAll(() => {
  mkdirSync(join(folder.path, "plans"));
  copyFileSync(join(ROOT, "tests/fixtures/seasons/withy-end.csv"), join(folder.path, GRID));
  writeFileSync(join(folder.path, "low-acre.yaml"), LOW_ACRE);
});
afterAll(folder.done);

describe("inbye calendar", () => {
  it("writes one file beside the plan, says where and how much, and never over what is there", () => {
    const { exit, out } = calendar([GRID]);
    expect([0, 3]).toContain(exit);
    const { events } = read("plans/calendar.ics");
    expect(out).toContain("plans/calendar.ics");
    expect(out).toContain(`${events.length} events`);
    expect(out).toContain("plans/grid.csv does not say when it was made.");
    expect(refused([GRID])).toEqual(["file-exists: plans/calendar.ics is there already: add --replace, or name another folder with --out"]);
    expect(made([GRID, "--replace"])).toMatchObject({ events: events.length, sequence: 1, added: null, cancelled: null, groups: null, person: null });
  });

  it("names the file after those it is for, whatever capitals they were written in", () => {
    const some = made([GRID, "--group", "layers,Cows", "--person", "helper", "--out", "some"]);
    expect(some).toMatchObject({ groups: ["Cows", "Layers"], person: "Helper", file: join("some", "calendar-cows-layers-helper.ics") });
    const { name, events } = read(some.file);
    expect([name, events.length]).toEqual(["Withy End: Cows, Layers and Helper", some.events]);
  });

  it("calls off what the former plan alone has, with a higher sequence, and says why it is higher than the version", () => {
    const rows = readFileSync(join(folder.path, GRID), "utf8").split("\n");
    const [first, ...cows] = rows.flatMap((row, i) => (row.startsWith("yard") ? [] : [...row.matchAll(/(?<=,)C,(?!C)/g)].map((match) => ({ i, at: match.index }))));
    expect(cows.length).toBeGreaterThan(10);
    // the cows leave a cell a day sooner: one day less in that row is a day nowhere, which the check will name, and a calendar still has
    rows[first!.i] = `${rows[first!.i]!.slice(0, first!.at)}${rows[first!.i]!.slice(first!.at + 1)}`;
    writeFileSync(join(folder.path, "plans/changed.csv"), rows.join("\n"));
    const later = made(["plans/changed.csv", "--since", GRID, "--out", "later"]);
    const { events } = read(later.file);
    expect([later.sequence, later.notes.map(({ code }) => code)]).toEqual([2, expect.arrayContaining(["version-not-higher", "grid-undated"])]);
    expect(later.cancelled).toBeGreaterThan(0);
    expect(events.filter(({ status }) => status === "CANCELLED").length).toBe(later.cancelled);
    expect(events.every(({ sequence }) => sequence === 2)).toBe(true);
    expect(made([GRID, "--since", GRID, "--out", "same"])).toMatchObject({ added: 0, cancelled: 0 });
  });

  it("refuses names that the farm does not have, all at once, and options with nothing after them", () => {
    expect(refused([GRID, "--group", "Cow,Layers,Hogs", "--person", "Hlper"])).toEqual([
      "name-unknown: Withy End has no group Cow: write --group Cows", expect.stringMatching(/^name-unknown: Withy End has no group Hogs: write --group /),
      "name-unknown: Withy End has no person Hlper: write --person Helper",
    ]);
    expect(refused([GRID, "--group", "", "--person", " ", "--since", "", "--out", ""]).map((one) => one.split(": ")[1])).toEqual([
      "--group has nothing after it", "--person has nothing after it", "--since has nothing after it", "--out has nothing after it",
    ]);
  });

  it("writes no file without an event (RFC 5545 3.4 asks for a component)", () => {
    writeFileSync(join(folder.path, "guest.yaml"), "change: Somebody who is away\npeople:\n  Guest: { minutes: 1 h, away: 2027-04-01 to 2027-11-30 }\n");
    expect(refused([GRID, "--person", "Guest", "--change", "guest.yaml", "--out", "none"])).toEqual(["calendar-empty: this plan has no move and no job for Guest: leave --group or --person out, or name others"]);
    expect(existsSync(join(folder.path, "none"))).toBe(false);
  });

  it("has a help of its own", () => {
    expect(calendar(["--help"]).out).toContain("Examples:");
  });
});

describe("a plan made from another", () => {
  it("counts its version on and says what it replaces; its calendar is the newer", () => {
    const plan = (more: readonly string[]) => inbye(["plan", "low-acre.yaml", "--effort", "quick", "--seconds", "2", ...more], folder.path).exit;
    const said = (path: string) => JSON.parse(readFileSync(join(folder.path, path), "utf8")) as { version: number; replaces: number | null };
    expect([plan(["--out", "a"]), plan(["--from", "a/plan.json", "--out", "b"]), plan(["--from", "b/grid.csv", "--out", "c"])]).toEqual([0, 0, 0]);
    expect([said("a/plan.json"), said("b/plan.json"), said("c/plan.json")]).toMatchObject([{ version: 1, replaces: null }, { version: 2, replaces: 1 }, { version: 1, replaces: null }]);
    const ran = inbye(["calendar", "low-acre.yaml", "b/plan.json", "--since", "a/plan.json", "--json"], folder.path);
    expect(answer<Answer>(ran, "calendar-answer")).toMatchObject({ sequence: 2, plan: { version: 2 }, notes: [] });
  }, SLOW);

  it("does not count on from another farm's", () => {
    writeFileSync(join(folder.path, "high-acre.yaml"), LOW_ACRE.replace(/^farm: .*$/m, "farm: High Acre"));
    expect(inbye(["plan", "high-acre.yaml", "--effort", "quick", "--seconds", "2", "--from", "a/plan.json", "--out", "d"], folder.path).exit).toBe(0);
    expect(JSON.parse(readFileSync(join(folder.path, "d/plan.json"), "utf8"))).toMatchObject({ version: 1, replaces: null });
  }, SLOW);
});
