/** `inbye sheets`, built, as an owner runs it: files, PDF, text, JSON, and what it refuses. */
import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { InputFault } from "../../src/cli/outcome.js";
import { readSheetsOptions, stretchesAsked, type Takes } from "../../src/cli/sheets-options.js";
import { BROWSER } from "../sheets/browser-here.js";
import { answer, freshFolder, inbye, ROOT } from "./inbye.js";

interface Answer {
  readonly plan: { readonly version: number; readonly madeOn: string; readonly firmTo: string };
  readonly paper: string;
  readonly files: readonly { readonly file: string; readonly pages: number | null }[];
  readonly text: string | null;
  readonly rulesBroken: number;
  readonly notes: readonly { readonly code: string; readonly found: string; readonly next: string }[];
}

const folder = freshFolder();
const FARM = join(ROOT, "scenarios/rushy-leys.yaml");
const NONE = { INBYE_BROWSER: "nowhere/chromium" };

function sheets(args: readonly string[], env: Readonly<Record<string, string>> = {}) {
  return inbye(["sheets", FARM, ...args], folder.path, env);
}

/** Codes and words of what is found, in order. */
function refused(args: readonly string[]): readonly string[] {
  const ran = sheets([...args, "--json"]);
  expect(ran.exit).toBe(2);
  return answer<{ findings: { code: string; found: string; next: string }[] }>(ran, "findings-answer").findings.map(({ code, found, next }) => `${code}: ${found}: ${next}`);
}

beforeAll(() => {
  mkdirSync(join(folder.path, "plans"));
  copyFileSync(join(ROOT, "tests/fixtures/seasons/rushy-leys.csv"), join(folder.path, "plans/grid.csv"));
});
afterAll(folder.done);

describe("inbye sheets", () => {
  it("writes HTML beside the plan, says where, and never over what is there", () => {
    const { exit, out } = sheets(["plans/grid.csv", "--sheet", "season"]);
    expect(out).toContain("plans/season-grid.html");
    expect(out).toContain("plans/grid.csv does not say when it was made.");
    expect([0, 3]).toContain(exit);
    expect(readFileSync(join(folder.path, "plans/season-grid.html"), "utf8")).toContain("@page{size:297mm 210mm;margin:8mm}");
    expect(refused(["plans/grid.csv", "--sheet", "season"])[0]).toContain("file-exists: plans/season-grid.html is there already");
    expect(sheets(["plans/grid.csv", "--sheet", "season", "--paper", "tabloid", "--replace"]).out).toContain("for US tabloid");
    expect(readFileSync(join(folder.path, "plans/season-grid.html"), "utf8")).toContain("@page{size:431.8mm 279.4mm;margin:8mm}");
  });

  it("writes several at once, a page a pen", () => {
    const { files } = answer<Answer>(sheets(["plans/grid.csv", "--sheet", "season,pens", "--out", "wall", "--json"]), "sheets-answer");
    expect(files.length).toBeGreaterThan(1);
    expect(files.map(({ file }) => file.replace(/^wall./, "")).sort()).toEqual(readdirSync(join(folder.path, "wall")).sort());
  });

  it("names a sheet of a month or a week by its first day", () => {
    const { files } = answer<Answer>(sheets(["plans/grid.csv", "--sheet", "month,week", "--month", "2027-06", "--week", "2027-06-16", "--out", "june", "--json"]), "sheets-answer");
    expect(files.map(({ file }) => file)).toEqual([join("june", "month-2027-06.html"), join("june", "week-2027-06-14.html")]);
    expect(sheets(["plans/grid.csv", "--sheet", "month", "--month", "2028-06"]).out).toContain("outside the season");
  });

  it("prints text to the terminal, or into a folder that is named", () => {
    const before = readdirSync(join(folder.path, "plans"));
    const { out } = sheets(["plans/grid.csv", "--sheet", "season", "--as", "txt", "--columns", "90"]);
    expect(out.split("\n")[0]).toMatch(/^Rushy Leys, .* 2027\. Plan made .*, version 1\.$/);
    expect(readdirSync(join(folder.path, "plans"))).toEqual(before);
    const { files, text } = answer<Answer>(sheets(["plans/grid.csv", "--sheet", "season", "--as", "txt", "--out", "text", "--json"]), "sheets-answer");
    expect([files, text]).toEqual([[{ file: join("text", "season-grid.txt"), pages: null }], null]);
  });

  it("says what plan.json says of itself: version, days", () => {
    const { season, cells } = JSON.parse(inbye(["read", FARM, "--json"], folder.path).out) as { season: { firstDay: string; lastDay: string }; cells: number };
    expect(cells).toBeGreaterThan(0);
    writeFileSync(join(folder.path, "plan.json"), JSON.stringify({
      inbye: "plan 1", farm: "Rushy Leys", version: 7, replaces: 6, "made-on": "2027-05-04", "firm-to": "2027-05-17", "likely-to": "2027-06-14", "farm-print": "other",
      changes: [], stays: [{ group: groupsOf()[0], yard: yardOf(), "first-day": season.firstDay, "last-day": season.lastDay }], cuts: [], measures: {}, charges: {}, cost: "1.00 GBP",
      bound: "1.00 GBP", "hand-rule": null, "yard-days": null, assumed: [],
    }));
    const { plan, notes, rulesBroken } = answer<Answer>(sheets(["plan.json", "--sheet", "season", "--out", "v7", "--json"]), "sheets-answer");
    expect(plan).toEqual({ version: 7, madeOn: "2027-05-04", firmTo: "2027-05-17", likelyTo: "2027-06-14" });
    expect(notes.map(({ code }) => code)).toContain("other-farm-file");
    expect(rulesBroken).toBeGreaterThan(0);
    const page = readFileSync(join(folder.path, "v7/season-grid.html"), "utf8");
    expect(page).toContain("version 7");
    // what was reckoned for the farm as it was says nothing about the farm as it is
    expect(page).not.toContain("No plan can cost less");
  });

  it.skipIf(!BROWSER)("prints PDF, and counts its pages", () => {
    const { files } = answer<Answer>(sheets(["plans/grid.csv", "--sheet", "season", "--as", "pdf", "--out", "pdf", "--json"], { INBYE_BROWSER: BROWSER! }), "sheets-answer");
    expect(files).toEqual([{ file: join("pdf", "season-grid.pdf"), pages: 2 }]);
    expect(readFileSync(join(folder.path, "pdf/season-grid.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("without a browser writes HTML, and says how to print it", () => {
    const ran = sheets(["plans/grid.csv", "--sheet", "season", "--as", "pdf", "--out", "none", "--json"], NONE);
    expect(ran.exit).toBe(2);
    const { files, notes } = answer<Answer>(ran, "sheets-answer");
    expect(files).toEqual([{ file: join("none", "season-grid.html"), pages: null }]);
    const told = notes.find(({ code }) => code === "no-browser")!;
    expect(told.found).toContain("nowhere/chromium");
    expect(told.next).toContain("open the HTML file in any browser and print it");
  });

  it("refuses all at once what cannot be", () => {
    expect(refused(["plans/grid.csv", "--sheet", "sesaon,hourly", "--paper", "a5", "--as", "doc", "--columns", "4", "--day", "soon", "--month", "2027-13", "--out", ""])).toEqual([
      "option-value: there is no sheet sesaon: write --sheet season", expect.stringContaining("there is no sheet hourly"), "option-value: --day is soon: write it as --day 2027-06-15",
      "option-value: --month is 2027-13: write it as --month 2027-06", "option-value: --out has nothing after it: write a name after --out", "option-value: --paper is a5: write --paper a4",
      "option-value: --as is doc: write --as html", "option-value: --columns is 4: write --columns 40",
    ]);
    expect(refused(["plans/grid.csv"])).toEqual(["option-value: no sheet is named: write --sheet season"]);
    expect(refused(["plans/grid.csv", "--sheet", "season", "--day", "2027-06-15"])[0]).toContain("--day is given, and no sheet of a day is asked for");
  });

  it("has a help of its own", () => {
    expect(sheets(["--help"]).out).toContain("Examples:");
  });

  function groupsOf(): readonly string[] {
    return (JSON.parse(inbye(["read", FARM, "--json"], folder.path).out) as { groups: { group: string }[] }).groups.map(({ group }) => group);
  }

  function yardOf(): string {
    return /^yard: ([^,]+)/m.exec(readFileSync(join(folder.path, "plans/grid.csv"), "utf8"))![1]!;
  }
});

describe("stretches of the season", () => {
  const takes: Takes = { grid: null, daily: "day", weekly: "week", monthly: "month" };
  const season = { firstDay: "2027-04-10", lastDay: "2027-10-31" };
  const asked = (sheet: string, typed: object, today = "2027-06-16") => stretchesAsked(readSheetsOptions({ sheet, ...typed }, takes), takes, season, today);
  const found = (run: () => unknown): readonly string[] => {
    try {
      run();
      return [];
    } catch (fault) {
      return (fault as InputFault).findings.map((finding) => `${finding.found}; ${finding.allowed}; ${finding.next}`);
    }
  };

  // 14 June 2027 is a Monday (ISO 8601)
  it("begin with the day named, its Monday, the first of its month", () => {
    expect(asked("grid,daily,weekly,monthly", { day: "2027-06-20", week: "2027-06-20", month: "2027-07" })).toEqual(["2027-04-10", "2027-06-20", "2027-06-14", "2027-07-01"]);
  });

  it("are of today unless named", () => {
    expect(asked("monthly,weekly,daily", {})).toEqual(["2027-06-01", "2027-06-14", "2027-06-16"]);
  });

  it("may hang over the season's ends, and not lie outside", () => {
    expect(asked("weekly,monthly", { week: "2027-04-05", month: "2027-04" })).toEqual(["2027-04-05", "2027-04-01"]);
    expect(found(() => asked("daily,weekly,monthly", { day: "2027-04-09", week: "2027-04-04", month: "2027-11" }))).toEqual([
      "--day 2027-04-09 is outside the season; a day from 2027-04-10 to 2027-10-31; write --day 2027-04-10",
      "--week 2027-03-29 is outside the season; a week from 2027-04-10 to 2027-10-31; write --week 2027-04-10",
      "--month 2027-11 is outside the season; a month from 2027-04 to 2027-10; write --month 2027-04",
    ]);
    expect(found(() => asked("daily", {}, "2027-12-01"))).toEqual(["today is not in the season, and the daily sheet is of one day; a day from 2027-04-10 to 2027-10-31; write --day 2027-04-10"]);
  });

  it("are asked for only with a sheet that takes one", () => {
    expect(found(() => asked("grid", { week: "2027-06-20" }))[0]).toContain("add weekly to --sheet, or leave --week out");
  });
});
