/** `inbye feed` by the built command: words, JSON, a change laid over the farm, and the picture. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { FeedAnswer } from "../../src/cli/feed-answer.js";
import { faultsOf } from "../sheets/well-formed.js";
import { answer, freshFolder, inbye, ROOT } from "./inbye.js";

const folder = freshFolder();
afterAll(folder.done);
const SUN_BRAE = join(ROOT, "scenarios/sun-brae.yaml");
const run = (...args: string[]) => inbye(["feed", ...args], folder.path);
const unwrapped = (words: string): string => words.replace(/\s+/g, " ");

describe("feed", { timeout: 120_000 }, () => {
  it("says cells first, then where grass runs short, and keeps to 80 columns without a solver's words", () => {
    const { exit, out, aside } = run(SUN_BRAE);
    expect({ exit, aside }).toEqual({ exit: 0, aside: "" });
    expect(out.split("\n").filter((line) => line.length > 80)).toEqual([]);
    expect(out.indexOf("needs 15 cells")).toBeLessThan(out.indexOf("Where grass runs short"));
    const words = unwrapped(out);
    for (const part of ["26 Jun to 24 Sep: grass does not reach", "of hay to feed in July", "head now without hay with hay", "One more hectare"]) expect(words).toContain(part);
    expect(words).not.toMatch(/\b(dual|optimum|programme|bound|gap|card|label)\b/i);
  });

  it("tells the same as one object", () => {
    const told = answer<FeedAnswer>(run(SUN_BRAE, "--json"), "feed-answer");
    expect(told.cells).toEqual([{ group: "Cows", needed: 15, mayEnter: 10 }]);
    expect(told.pinches).toMatchObject([{ firstDay: "2027-06-26", lastDay: "2027-09-24" }]);
    expect(told.weeks.length).toBe(30);
    const last = told.weeks.reduce((stands, week) => stands + week.grownKg + week.joinedKg - week.eatenKg - week.troddenKg - week.cutKg - week.ownCutKg, told.standingAtStartKg);
    expect(last).toBeCloseTo(told.weeks.at(-1)!.coverKg, 3);
    expect(told.weeks.filter(({ short }) => short).map(({ firstDay }) => firstDay)[0]).toBe("2027-06-26");
  });

  it("lays a change over the farm and names it", () => {
    writeFileSync(join(folder.path, "fewer.yaml"), "change: Four cows sold\ngroups:\n  Cows: { head: 8 }\n");
    const told = answer<FeedAnswer>(run(SUN_BRAE, "--change", "fewer.yaml", "--json"), "feed-answer");
    expect(told.changes).toEqual(["Four cows sold"]);
    expect(told.pinches).toEqual([]);
    expect(told.carries[0]!.head).toEqual([8]);
    expect(run(SUN_BRAE, "--change", "fewer.yaml").out).toContain("with: Four cows sold");
  });

  it("draws the picture where it is asked to, and writes over none that is there", () => {
    expect(run(SUN_BRAE, "--out", "drawn").out).toContain(join("drawn", "feed-budget.html"));
    const page = readFileSync(join(folder.path, "drawn/feed-budget.html"), "utf8");
    expect(faultsOf(page)).toEqual([]);
    expect(page).not.toMatch(/<script|https?:|<link/);
    const again = run(SUN_BRAE, "--out", "drawn", "--json");
    expect(again.exit).toBe(2);
    expect(answer<{ findings: { code: string }[] }>(again, "findings-answer").findings.map(({ code }) => code)).toEqual(["file-exists"]);
    expect(run(SUN_BRAE, "--out", "drawn", "--replace").exit).toBe(0);
  });

  it("finds fault with a typo as every command does", () => {
    const ran = run(SUN_BRAE, "--ut", "x", "--json");
    expect(ran.exit).toBe(2);
    expect(answer<{ findings: { code: string }[] }>(ran, "findings-answer").findings[0]!.code).toBe("option-unknown");
  });
});
