/** Month and week sheets read back from their HTML, against the work that the plan asks for. */
import { describe, expect, it } from "vitest";
import type { Scenario } from "../../src/farm/scenario.js";
import type { Sheet } from "../../src/sheets/made.js";
import { monthSheetHtml } from "../../src/sheets/month/month-sheet.js";
import { monthSheetText } from "../../src/sheets/month/month-text.js";
import { mondayOf } from "../../src/sheets/week/rows.js";
import { weekSheetHtml } from "../../src/sheets/week/week-sheet.js";
import { weekSheetText } from "../../src/sheets/week/week-text.js";
import { seasonWork } from "../../src/work/season-work.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { faultsOf } from "./well-formed.js";

const words = englishWords();
const bare = (html: string): string => html.replaceAll(/<svg[\s\S]*?<\/svg>/g, "").replaceAll(/<[^>]+>/g, " ").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replaceAll("&amp;", "&").replaceAll(/\s+/g, " ").trim();
const rowsOf = (html: string): readonly string[] => [...html.matchAll(/<tr style[\s\S]*?<\/tr>/g)].map(([row]) => row);
const MOVES = ["move", "arrive", "part"];

describe.each(["withy-end", "rushy-leys"] as const)("%s", (farm) => {
  const sheet = plannedFarm(farm);
  const work = seasonWork(sheet.scenario, sheet.plan);
  const months = [...new Set(work.map(({ day }) => day.slice(0, 7)))];

  it.each(months)("has every move of %s once with a box, and every group's place each night", (month) => {
    const rows = rowsOf(monthSheetHtml(sheet, words, { month, paper: "a4" }));
    const days = work.filter(({ day, jobs }) => day.startsWith(month) && (jobs.length > 0 || day >= sheet.scenario.season.firstDay));
    expect(rows).toHaveLength(days.length);
    days.forEach(({ jobs, standing, people }, i) => {
      const moves = jobs.filter(({ kind }) => MOVES.includes(kind));
      expect(rows[i]!.match(/class="tick"/g) ?? []).toHaveLength(moves.length);
      for (const { from, to } of moves) expect(bare(rows[i]!)).toContain(`${from?.name ?? "in"} → ${to!.name}`);
      const boxes = rows[i]!.split('<td class="group">').slice(1).map((box) => bare(box.split("</td>")[0]!));
      sheet.scenario.groups.forEach((group, g) => {
        const at = standing.find((one) => one.group === group.name);
        if (at) expect(boxes[g]).toContain(at.host === null ? at.place.name : `with ${at.host}`);
        else expect(boxes[g]).toBe("");
      });
      const home = bare(/<td class="home">.*?<\/td>/.exec(rows[i]!)![0]);
      expect(home).toBe(String(people.length));
    });
  });

  it("has in each week every move, set and shutting in, and a count of every group", () => {
    for (let i = 1; i < work.length; i += 7) {
      const html = weekSheetHtml(sheet, words, { week: work[i]!.day, paper: "letter" });
      const rows = rowsOf(html);
      const days = work.filter(({ day }) => mondayOf(day) === mondayOf(work[i]!.day));
      expect(rows).toHaveLength(days.length);
      rows.forEach((row, r) => {
        const day = days[r]!;
        const told = bare(row);
        expect(told).toContain(words.dayMonth(day.day));
        const of = (kinds: readonly string[]) => day.jobs.filter(({ kind }) => kinds.includes(kind));
        expect(row.match(/class="move"/g) ?? []).toHaveLength(of(MOVES).length);
        for (const { from, to } of of(MOVES)) expect(told).toContain(`${from?.name ?? "in"} → ${to!.name}`);
        for (const { to } of of(["set"])) expect(told).toContain(`Set ${to!.name} for`);
        for (const { group } of of(["shut-in"])) expect(told).toContain(`Keep ${group} shut in for the tow`);
        expect(row.match(/class="count"/g) ?? []).toHaveLength(day.standing.length);
      });
    }
  });

  it("is well-formed, self-contained and black on white", () => {
    for (const html of [monthSheetHtml(sheet, words, { month: "2027-06", paper: "letter" }), weekSheetHtml(sheet, words, { week: "2027-06-16", paper: "a4" })]) {
      expect(faultsOf(html)).toEqual([]);
      expect(html).not.toMatch(/<script|https?:|@import|url\(/);
      expect([...html.matchAll(/#[0-9a-f]{3,6}\b/gi)].map(([colour]) => colour).filter((colour) => !["#000", "#fff", "#e2e2e2", "#e8e8e8"].includes(colour))).toEqual([]);
    }
  });

  it("says the same as plain text", () => {
    const month = monthSheetText(sheet, words, "2027-06", 110);
    const june = work.filter(({ day }) => day.startsWith("2027-06"));
    const moves = june.flatMap(({ jobs }) => jobs.filter(({ kind }) => kind === "move"));
    expect(month.match(/ → /g)!.length - 1).toBe(moves.length);
    const week = weekSheetText(sheet, words, "2027-06-16", 80);
    for (const { from, to } of june.filter(({ day }) => day >= "2027-06-14" && day <= "2027-06-20").flatMap(({ jobs }) => jobs.filter(({ kind }) => kind === "move"))) expect(week).toContain(`${from!.name} → ${to!.name}`);
    expect(Math.max(...week.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});

describe("sheets of farms out of the common", () => {
  const sheet = plannedFarm("withy-end");

  function renamed(to: (name: string) => string): Sheet {
    const groups = sheet.scenario.groups.map((group) => ({ ...group, name: to(group.name), follows: group.follows === null ? null : to(group.follows) }));
    const scenario: Scenario = { ...sheet.scenario, groups };
    return { ...sheet, scenario, plan: { ...sheet.plan, stays: sheet.plan.stays.map((stay) => ({ ...stay, group: to(stay.group) })) } };
  }

  it("takes names of 60 letters, in Cyrillic, and with signs of HTML in them", () => {
    for (const to of [(name: string) => `${name} of the old walled garden by the far end of the lane, east`, (name: string) => `${name} Коровы`, (name: string) => `${name}<script>alert(1)</script>&"`]) {
      for (const html of [monthSheetHtml(renamed(to), words, { month: "2027-06", paper: "a4" }), weekSheetHtml(renamed(to), words, { week: "2027-06-16", paper: "a4" })]) {
        expect(faultsOf(html)).toEqual([]);
        expect(html).not.toContain("<script");
        expect(bare(html)).toContain(to("Pigs"));
      }
    }
  });

  it("shares eight groups out over two sheets, each group once", () => {
    const more = sheet.scenario.groups.map((group) => ({ ...group, name: `${group.name} 2`, letter: `${group.letter}b`, follows: null }));
    const stays = sheet.plan.stays.map((stay) => ({ ...stay, group: `${stay.group} 2` }));
    const twice = { ...sheet, scenario: { ...sheet.scenario, groups: [...sheet.scenario.groups, ...more] }, plan: { ...sheet.plan, stays: [...sheet.plan.stays, ...stays] } };
    const html = monthSheetHtml(twice, words, { month: "2027-06", paper: "a4" });
    const sheets = html.split('<section class="page">').slice(1);
    expect(sheets).toHaveLength(2);
    expect(sheets.map((one) => bare(one.split("</thead>")[0]!).match(/(Cows|Layers|Broilers|Pigs)( 2)?/g)!.length)).toEqual([4, 4]);
    expect(html).toContain("sheet 2 of 2");
  });

  it("shows the evening before the season, and only the days that the season has", () => {
    expect(bare(monthSheetHtml(sheet, words, { month: "2027-04", paper: "a4" }))).toMatch(/Jobs 9 Fri .*Set /);
    expect(rowsOf(monthSheetHtml(sheet, words, { month: "2027-04", paper: "a4" }))).toHaveLength(22);
    expect(bare(weekSheetHtml(sheet, words, { week: "2027-04-10", paper: "a4" }))).toContain("Fri 9 Apr to Sun 11 Apr 2027");
  });
});
