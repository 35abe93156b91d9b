import { describe, expect, it } from "vitest";
import type { Sheet } from "../../src/sheets/made.js";
import { madeDates, sureOf } from "../../src/sheets/made.js";
import { nextFree } from "../../src/sheets/next-free.js";
import { notesOf } from "../../src/sheets/notes.js";
import { movesOf } from "../../src/sheets/season-days.js";
import { shutGround, shutWords } from "../../src/sheets/shut-ground.js";
import { TINY, TINY_MADE, TINY_PLAN, TINY_REPORT } from "../golden/tiny-season.js";

const sheet: Sheet = { scenario: TINY, plan: TINY_PLAN, report: TINY_REPORT, made: TINY_MADE };
const cellOf = (name: string) => TINY.cells.find((one) => one.name === name)!;

describe("how sure a day is", () => {
  it("firm two weeks, likely six, the day of planning counted", () => {
    const made = { ...TINY_MADE, ...madeDates("2027-06-21") };
    expect([made.firmTo, made.likelyTo]).toEqual(["2027-07-04", "2027-08-01"]);
    expect(["2027-06-20", "2027-06-21", "2027-07-04", "2027-07-05", "2027-08-01", "2027-08-02"].map((day) => sureOf(day, made))).toEqual(["done", "firm", "firm", "likely", "likely", "outline"]);
  });
});

describe("ground to be left alone", () => {
  it("is closed ground, cut to the season, with its reason", () => {
    expect(shutGround(sheet, cellOf("F2"))).toEqual([{ firstDay: "2027-05-01", lastDay: "2027-05-12", reason: "wet", openShare: 0 }]);
  });

  it("is ground that pigs or birds worked, all of it or a part", () => {
    const [afterHens] = shutGround(sheet, cellOf("H1"));
    expect(afterHens).toMatchObject({ firstDay: "2027-05-13", lastDay: "2027-06-02", reason: "after hens" });
    expect(shutWords(afterHens!)).toBe("after hens, 90 % open");
    // 0.06 of 0.30 ha is 20 %, less than the least of 25 % that may be grazed
    expect(shutGround(sheet, cellOf("F3"))).toEqual([{ firstDay: "2027-05-24", lastDay: "2027-06-25", reason: "after pigs", openShare: 0 }]);
  });

  it("is ground not in hand", () => {
    const rented = { ...cellOf("H2"), ours: { firstDay: "2027-05-10", lastDay: "2027-06-10" } };
    expect(shutGround(sheet, rented).map((span) => [span.firstDay, span.lastDay, span.reason])).toEqual([["2027-05-01", "2027-05-09", "not in hand"], ["2027-06-11", "2027-06-25", "not in hand"]]);
  });
});

describe("next free", () => {
  it("says in use, ready, a day, or who comes first", () => {
    expect(Object.fromEntries(TINY.cells.map((cell) => [cell.name, nextFree(sheet, cell)]))).toEqual({ H1: "in use", H2: "ready", H3: "ready", F1: "ready", F2: "13 May", F3: "in use" });
  });

  it("waits for the entry cover", () => {
    const cover = TINY_REPORT.cells[1]!.coverKgPerHa.map((_, t) => 1500 + 50 * t);
    const low = { ...TINY_REPORT, cells: TINY_REPORT.cells.map((days) => (days.cell === "H3" ? { ...days, coverKgPerHa: cover } : days)) };
    // the first pass asks 1700: 1500 + 4 x 50 on the fourth day after the season's first
    const plan = { ...TINY_PLAN, stays: TINY_PLAN.stays.filter((stay) => stay.cell !== "H3") };
    expect(nextFree({ ...sheet, report: low, plan }, cellOf("H3"))).toBe("5 May");
  });
});

describe("notes", () => {
  const notes = notesOf(sheet);
  it("are numbered by day, touching walk days told once, running costs and small ones apart", () => {
    expect(notes.numbered.map((note) => [note.number, note.day, note.black])).toEqual([[1, "2027-05-13", false], [2, "2027-05-19", false], [3, "2027-06-05", false]]);
    expect(notes.numbered[2]!.text).toBe("Sat 5 Jun to Sat 12 Jun: 8 days of grass, 15 wished. About £17.");
    expect(notes.small).toEqual([{ words: "stays longer than usual", times: 1, money: 0.2 }]);
    expect(notes.running).toEqual([{ words: "hay fed", times: 2, money: 36 }, { words: "moves and hauls", times: 1, money: 10.5 }]);
  });

  it("leave no money out", () => {
    const shown = notes.small.concat(notes.running).reduce((sum, one) => sum + one.money, 0);
    const numbered = TINY_REPORT.charges.reduce((sum, charge) => sum + charge.money, 0) - shown;
    expect(numbered).toBeCloseTo(3.4 + 4 + 9 + 8.3, 9);
  });
});

describe("moves", () => {
  it("are changes of place and arrivals; the season's first place is none", () => {
    expect(movesOf(TINY, TINY_PLAN).filter((move) => move.day <= "2027-05-07")).toEqual([
      { day: "2027-05-03", group: "Pigs", from: null, to: "F3" }, { day: "2027-05-04", group: "Cows", from: "H1", to: "H2" },
      { day: "2027-05-07", group: "Cows", from: "H2", to: "H3" }, { day: "2027-05-07", group: "Hens", from: "Yard", to: "H1" },
    ]);
  });

  it("of a group that runs with another are not told apart", () => {
    const scenario = { ...TINY, groups: TINY.groups.map((one) => (one.name === "Hens" ? { ...one, runsWith: { with: "Cows", days: [TINY.season] } } : one)) };
    expect(movesOf(scenario, TINY_PLAN).some((move) => move.group === "Hens")).toBe(false);
  });
});
