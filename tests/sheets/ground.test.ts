import { describe, expect, it } from "vitest";
import type { Sheet } from "../../src/sheets/made.js";
import { madeDates, sureOf } from "../../src/sheets/made.js";
import { nextFree } from "../../src/sheets/next-free.js";
import { aboutMoney, priceWords } from "../../src/sheets/figure-words.js";
import { yardWords } from "../../src/sheets/grid/right-edge.js";
import { notesOf, othersWords } from "../../src/sheets/notes.js";
import { RUNNING } from "../../src/sheets/rule-words.js";
import { seasonGridHtml } from "../../src/sheets/season-grid-html.js";
import { seasonGridText } from "../../src/sheets/season-grid-text.js";
import { movesOf } from "../../src/sheets/season-days.js";
import { shutGround, shutWords } from "../../src/sheets/shut-ground.js";
import { busySeason } from "./busy-season.js";
import { TINY, TINY_MADE, TINY_PLAN, TINY_REPORT } from "../golden/tiny-season.js";
import { englishWords } from "../fixtures/planned-farm.js";

const words = englishWords();

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
    expect(shutGround(sheet, cellOf("F2"), words)).toEqual([{ firstDay: "2027-05-01", lastDay: "2027-05-12", reason: "wet", short: "wet", openShare: 0 }]);
  });

  it("is ground that pigs or birds worked, all of it or a part", () => {
    const [afterHens] = shutGround(sheet, cellOf("H1"), words);
    expect(afterHens).toMatchObject({ firstDay: "2027-05-13", lastDay: "2027-06-02", reason: "after hens" });
    expect(shutWords(afterHens!, words)).toBe("after hens, 90 % open");
    // a hen house's ground is a hundredth of the cell: no figure, as "100 % open" beside a wire would make nobody wiser
    expect(["after hens", "after hens, 90 % open", "after hens"]).toEqual([0.99, 0.94, 0.95].map((openShare) => shutWords({ ...afterHens!, openShare }, words)));
    // 0.06 of 0.30 ha is 20 %, less than the least of 25 % that may be grazed
    expect(shutGround(sheet, cellOf("F3"), words)).toEqual([{ firstDay: "2027-05-24", lastDay: "2027-06-25", reason: "after pigs", short: "pigs", openShare: 0 }]);
  });

  it("is ground not in hand", () => {
    const rented = { ...cellOf("H2"), ours: { firstDay: "2027-05-10", lastDay: "2027-06-10" } };
    expect(shutGround(sheet, rented, words).map((span) => [span.firstDay, span.lastDay, span.reason])).toEqual([["2027-05-01", "2027-05-09", "not in hand"], ["2027-06-11", "2027-06-25", "not in hand"]]);
  });
});

describe("next free", () => {
  it("says in use, ready, a day, or who comes first", () => {
    expect(Object.fromEntries(TINY.cells.map((cell) => [cell.name, nextFree(sheet, cell, words)]))).toEqual({ H1: "in use", H2: "ready", H3: "ready", F1: "ready", F2: "13 May", F3: "in use" });
  });

  it("waits for the entry cover", () => {
    const cover = TINY_REPORT.cells[1]!.coverKgPerHa.map((_, t) => 1500 + 50 * t);
    const low = { ...TINY_REPORT, cells: TINY_REPORT.cells.map((days) => (days.cell === "H3" ? { ...days, coverKgPerHa: cover } : days)) };
    // the first pass asks 1700: 1500 + 4 x 50 on the fourth day after the season's first
    const plan = { ...TINY_PLAN, stays: TINY_PLAN.stays.filter((stay) => stay.cell !== "H3") };
    expect(nextFree({ ...sheet, report: low, plan }, cellOf("H3"), words)).toBe("5 May");
  });
});

describe("notes", () => {
  const notes = notesOf(sheet, words);
  it("are numbered by day, touching walk days told once, running costs and others apart", () => {
    expect(notes.numbered.map((note) => [note.number, note.day, note.black])).toEqual([[1, "2027-05-13", false], [2, "2027-05-19", false], [3, "2027-06-05", false]]);
    expect(notes.numbered[2]!.text).toBe("Sat 5 Jun to Sat 12 Jun: 8 days of grass, 15 wished. About £17.");
    expect(notes.others).toEqual([{ words: "stays longer than usual", times: 1, money: 0.2 }]);
    expect(notes.running).toEqual([{ words: "hay fed", times: 2, money: 36 }, { words: "moves and hauls", times: 1, money: 10.5 }]);
  });

  it("leave no money out", () => {
    const shown = notes.others.concat(notes.running).reduce((sum, one) => sum + one.money, 0);
    const numbered = TINY_REPORT.charges.reduce((sum, charge) => sum + charge.money, 0) - shown;
    expect(numbered).toBeCloseTo(3.4 + 4 + 9 + 8.3, 9);
  });
});

describe("notes of a full plan", () => {
  const busy = busySeason();
  const notes = notesOf(busy, words);
  const priced = notes.numbered.filter((note) => !note.black);

  it("are the dearest of all rules together, in the order of the calendar, each once", () => {
    // 205 days are 6.7 months; two triangles a month
    expect(priced.length).toBe(13);
    expect(priced.map((note) => note.number)).toEqual(priced.map((_, i) => i + 1));
    expect(priced.map((note) => note.day)).toEqual(priced.map((note) => note.day).sort());
    expect(new Set(priced.map((note) => note.text)).size).toBe(priced.length);
    const cheapest = Math.min(...priced.map((note) => note.money));
    // every single charge that is dearer than the cheapest note is a part of some note
    const dearer = busy.report.charges.filter((charge) => charge.money > cheapest && !RUNNING.includes(charge.rule));
    expect(dearer.length).toBeGreaterThan(3);
    for (const { cell, found } of dearer) expect(priced.some((note) => note.text.includes(found) && note.text.includes(cell!)), `${cell} ${found}`).toBe(true);
  });

  it("tell cells of which the same is found as one, at the end of the days that are judged", () => {
    const wanted = priced.find((note) => note.text.includes("0 % opened"))!;
    expect(wanted.text).toBe("By Sun 31 Oct: H1, H2, H3, H4, 0 % opened, all of it wished. About £50.");
    expect(wanted.day).toBe("2027-10-31");
  });

  it("give no number to what costs under one while dearer ones go without", () => {
    expect(priced.every((note) => !note.text.includes("nder £1"))).toBe(true);
    const all = busy.report.charges.reduce((sum, charge) => sum + charge.money, 0);
    const told = [...priced, ...notes.others, ...notes.running].reduce((sum, one) => sum + one.money, 0);
    expect(told).toBeCloseTo(all, 6);
    expect(othersWords(notes, "GBP", words)).toMatch(/^Others at a price, £\d+ together: /);
  });

  it("have the same triangles on the grid, on the terminal and in the list", () => {
    const { scenario, plan, report, made } = busy;
    const page = seasonGridHtml(scenario, plan, report, made, words);
    const text = seasonGridText(scenario, plan, report, made, words, { columns: 200 });
    for (const { number, text: note } of priced) {
      expect(page).toContain(`Allowed at a price, number ${number}. ${note}`);
      expect(text.replaceAll(/\n +/g, " ")).toContain(`${number}  ${note}`);
    }
    const caps = text.split("\n").filter((line) => line.startsWith("Notes")).join("").match(/\^/g)!;
    expect(caps.length).toBe(new Set(priced.map((note) => note.day)).size);
  });
});

describe("figures", () => {
  it("of money are no finer than they are known", () => {
    expect([0.2, 8.4, 99.4, 102.6, 842, 1610.4].map((money) => priceWords(money, "GBP"))).toEqual(["under £1", "£8", "£99", "£105", "£840", "£1,610"]);
    expect(aboutMoney(1258, "USD")).toBe("about $1,260");
  });

  it("of the yard are told for each group that stands in it, the lowest and highest of the kinds of year", () => {
    const year = (cows: number, hens: number) => ({ kg: 0, yardDays: { Cows: cows, Hens: hens, Pigs: 40 } });
    const hay = { dry: year(5, 6), usual: year(2, 6), wet: year(2, 20) };
    expect(yardWords({ ...sheet, made: { ...TINY_MADE, hay } }, "Yard", words)).toEqual(["C 2 days (2 to 5)", "L 6 days (6 to 20)"]);
    const alone = { ...TINY_PLAN, stays: TINY_PLAN.stays.filter((stay) => stay.group === "Cows") };
    expect(yardWords({ ...sheet, plan: alone }, "Yard", words)).toEqual(["2 days (2 to 5)"]);
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
