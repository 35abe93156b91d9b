/** The day sheet's tasks against the work of the plan, on every day of two seasons. */
import { describe, expect, it } from "vitest";
import { NO_CALLS } from "../../src/farm/calls.js";
import { daySheet } from "../../src/sheets/day/day-sheet.js";
import { daySheetHtml } from "../../src/sheets/day/day-sheet-html.js";
import { daySheetText } from "../../src/sheets/day/day-sheet-text.js";
import { DEEDS } from "../../src/sheets/day/model.js";
import { seasonWork } from "../../src/work/season-work.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { faultsOf } from "./well-formed.js";

const words = englishWords();
const given = (day: string) => ({ day, printedOn: "2027-04-01", calls: NO_CALLS });

describe.each(["withy-end", "rushy-leys"] as const)("every day of %s", (farm) => {
  const sheet = plannedFarm(farm);
  const season = seasonWork(sheet.scenario, sheet.plan);
  const days = season.map((work) => ({ work, told: daySheet(sheet, words, given(work.day)) }));

  it("numbers its tasks from 1, and has every job of the plan in one of them", () => {
    for (const { work, told } of days) {
      const tasks = told.parts.flatMap((part) => part.tasks);
      expect(tasks.map(({ number }) => number)).toEqual(tasks.map((_, i) => i + 1));
      const done = new Set(tasks.flatMap(({ jobs }) => jobs.map(({ id }) => id)));
      const wanted = work.jobs.filter(({ kind }) => ["move", "arrive", "part", "join", "leave", "step", "strip", "set", "collect", "dusk", "cut", "walk"].includes(kind));
      expect([work.day, wanted.filter(({ id }) => !done.has(id)).map(({ id }) => id)]).toEqual([work.day, []]);
    }
  });

  it("prints minutes that add up, and no farther from the plan's than rounding to five goes", () => {
    for (const { work, told } of days) {
      for (const { sum, minutes } of told.parts) {
        const figures = /^(.*) = (\d+) min$/.exec(sum);
        if (figures) expect(figures[1]!.split(" + ").reduce((all, one) => all + Number.parseInt(one, 10), 0)).toBe(minutes);
      }
      const planned = work.roundMinutes + work.jobs.reduce((all, { minutes }) => all + minutes, 0);
      const printed = told.parts.reduce((all, { minutes }) => all + minutes, 0);
      expect(Math.abs(printed - planned)).toBeLessThanOrEqual(2.5 + 1e-9);
    }
  });

  it("keeps the order in every task: energiser off, dead birds out, net, on, reading, stock in, doors", () => {
    for (const { told } of days) {
      // A second look goes from place to place, and begins anew at each.
      for (const { key, lines } of told.parts.flatMap((part) => part.tasks).filter((task) => task.key !== "second-look")) {
        // Of ground walked into, what stands under First is the new ground's and comes before the old one's energiser is off.
        const own = lines.filter(({ name }) => name !== "first").flatMap(({ steps }) => steps.flatMap(({ deed }) => (deed === null ? [] : [DEEDS.indexOf(deed)])));
        expect([told.day, key, own]).toEqual([told.day, key, [...own].sort((a, b) => a - b)]);
      }
    }
  });

  it("stands on one sheet of A4 up to nine tasks", () => {
    for (const { work, told } of days) {
      const tasks = told.parts.reduce((sum, part) => sum + part.tasks.length, 0);
      if (tasks < 7) continue;
      const html = daySheetHtml(sheet, words, { ...given(work.day), paper: "a4" });
      const pages = html.split('<section class="page"').length - 1;
      expect([work.day, tasks, pages]).toEqual([work.day, tasks, tasks <= 9 ? 1 : pages]);
    }
  });

  it("asks where everybody is before anything is done", () => {
    for (const { told } of days.slice(2)) expect(told.before.boxes.length).toBeGreaterThan(0);
  });

  it("is well-formed, self-contained, and says NOT FILLED IN where nobody is named", () => {
    for (const { day } of season.filter((_, i) => i % 23 === 0)) {
      const html = daySheetHtml(sheet, words, { ...given(day), paper: "a4" });
      expect(faultsOf(html)).toEqual([]);
      expect(html).not.toMatch(/<script|https?:|@import|url\(/);
      expect(html).toContain("NOT FILLED IN");
      expect(daySheetText(sheet, words, given(day), 80)).toMatch(/call\b/);
    }
  });
});

describe("what a sheet tells of the farm", () => {
  const sheet = plannedFarm("withy-end");
  const text = daySheetText(sheet, words, { day: "2027-06-16", printedOn: "2027-04-01", calls: { calls: { Owner: "01632 960014" }, whereWeAre: null, phone: null } }, 100).replaceAll(/\s+/g, " ");

  it("works out feed, and ground in the net, from heads", () => {
    // 60 hens at 125 g; a net of 50 m laid as a square holds 12.5 m x 12.5 m
    expect(text).toContain("To feed: 7.5 kg layers pellets, 125 g each");
    expect(text).toContain("156 m²");
    expect(text).toContain("Owner: 01632 960014");
  });

  it("tells a US farm in pounds, gallons and feet", () => {
    const american = { ...sheet, scenario: { ...sheet.scenario, units: "US" as const } };
    const told = daySheetText(american, words, given("2027-06-16"), 100).replaceAll(/\s+/g, " ");
    // a pound is 0.45359237 kg, a foot 0.3048 m: 7.5 kg, 125 g, 50 m, (12.5 m) squared
    expect(told).toContain("To feed: 16.5 lb layers pellets, 0.28 lb each");
    expect(told).toContain("Net, 164 ft round the house in a square: 1681 sq ft");
    // the cautions keep the figures of their standards
    expect(told.split("Never waits")[0]).not.toMatch(/\d (kg|g|l|m|m²)\b/);
  });

  it("leaves a line to write on where the farm file does not say", () => {
    const silent = { ...sheet, scenario: { ...sheet.scenario, handover: { ...sheet.scenario.handover, feed: {} } } };
    expect(daySheetText(silent, words, given("2027-06-16"), 100)).toContain("To feed, and where it lies: ____");
  });
});
