import { test, fc } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { seasonGridText } from "../../src/sheets/season-grid-text.js";
import { glyphsOf } from "../../src/sheets/text-glyphs.js";
import { bandsOf, labelWidth } from "../../src/sheets/text-bands.js";
import { seasonDays } from "../../src/sheets/season-days.js";
import { lifelike } from "../fixtures/lifelike.js";
import { daysBetween } from "../../src/quantity/calendar.js";
import { busySeason } from "./busy-season.js";
import { expectGolden } from "../golden/golden.js";
import { TINY, TINY_MADE, TINY_PLAN, TINY_REPORT } from "../golden/tiny-season.js";
import { englishWords } from "../fixtures/planned-farm.js";

const words = englishWords();

const { scenario, plan, report, made } = lifelike();
const busy = busySeason();
const text = (columns: number): string => seasonGridText(scenario, plan, report, made, words, { columns });

describe("season grid for a terminal", () => {
  for (const columns of [80, 200]) {
    it(`is the one that was looked at, ${columns} columns`, () => {
      expectGolden(`tiny/season-grid-${columns}.txt`, seasonGridText(TINY, TINY_PLAN, TINY_REPORT, TINY_MADE, words, { columns }));
    });
  }

  test.prop([fc.integer({ min: 40, max: 240 })], { numRuns: 8 })("never is wider than asked", (columns) => {
    expect(Math.max(...text(columns).split("\n").map((line) => line.length))).toBeLessThanOrEqual(columns);
  }, 30_000);

  it("shows each cell on each day once, as the plan has it", () => {
    const rows = text(80).split("\n").filter((line) => line.startsWith("K4 "));
    const season = rows.map((line) => line.slice(9)).join("");
    expect(season.length).toBe(205);
    const days = seasonDays(scenario);
    for (const stay of plan.stays.filter((one) => one.cell === "K4")) {
      const letter = scenario.groups.find((group) => group.name === stay.group)!.letter;
      for (const day of [stay.firstDay, stay.lastDay]) expect(season[days.indexOf(day)]).toBe(letter);
    }
    expect([...season].filter((sign) => sign === "P").length).toBe(56);
  });

  it("shows the whole code of a place or none of it: a letter alone would mean animals", () => {
    const label = labelWidth(busy.scenario, words);
    const names = [...busy.scenario.cells, ...busy.scenario.yards].map((place) => place.name);
    for (const columns of [80, 100, 200]) {
      const rows = seasonGridText(busy.scenario, busy.plan, busy.report, busy.made, words, { columns }).split("\n");
      for (const { name } of busy.scenario.groups) {
        const stays = rows.filter((row) => row.startsWith(`${name.padEnd(label)} `)).map((row) => row.slice(label + 1));
        expect(stays.length).toBeGreaterThan(0);
        const codes = names.reduce((row, code) => row.replaceAll(code, " "), stays.join(" ")).replaceAll("yard", " ");
        expect(codes).toMatch(/^[-~ ]*$/);
      }
    }
  });

  it("marks two groups in one place as two", () => {
    const rows = seasonGridText(busy.scenario, busy.plan, busy.report, busy.made, words, { columns: 80 }).split("\n");
    const days = (sign: string): number => rows.filter((row) => busy.scenario.cells.some((cell) => row.startsWith(`${cell.name} `))).join("").split(sign).length - 1;
    const beside = busy.plan.stays.filter((stay) => stay.group === "Bull" && stay.cell !== null).reduce((sum, stay) => sum + daysBetween(stay.firstDay, stay.lastDay) + 1, 0);
    expect(days("&")).toBe(beside);
    expect(rows.join(" ")).toContain("b for Cb Bull (1 bull)");
  });

  it("spreads the days evenly over the bands", () => {
    for (const most of [40, 71, 100, 191]) {
      const lengths = bandsOf(seasonDays(scenario), most).map((band) => band.length);
      expect(Math.max(...lengths)).toBeLessThanOrEqual(most);
      // a break is on the nearest Monday, half a week off at most; a band has two of them
      expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(14);
    }
    // 3 days too many for one band are not left to a band of 3
    expect(Math.min(...bandsOf(seasonDays(scenario), 202).map((band) => band.length))).toBeGreaterThan(90);
  });

  it("begins every band but the first on a Monday", () => {
    const bands = bandsOf(seasonDays(scenario), 71);
    expect(bands.map((band) => [band[0], band.length])).toEqual([["2027-04-10", 65], ["2027-06-14", 70], ["2027-08-23", 70]]);
  });

  it("gives a second group of a kind a letter of its own that means nothing else", () => {
    expect([...glyphsOf(TINY)]).toEqual([["Cows", "C"], ["Hens", "L"], ["Pigs", "P"], ["Young cows", "y"]]);
    const odd = { ...TINY, groups: TINY.groups.map((group) => (group.name === "Young cows" ? { ...group, letter: "Cx" } : group)) };
    expect(glyphsOf(odd).get("Young cows")).toBe("y");
  });

  it("colours without moving a character, and says whose stay it colours", () => {
    const seen = new Set<string>();
    const painted = seasonGridText(scenario, plan, report, made, words, {
      columns: 80,
      paint: (piece, part, kind) => {
        seen.add(kind ?? part);
        return `«${piece}»`;
      },
    });
    expect(painted.replaceAll(/[«»]/g, "")).toBe(text(80));
    expect([...seen].sort()).toEqual(["broilers", "cattle", "cut", "head", "layers", "note", "pigs", "shut", "weekend"]);
  });
});
