/** Years drawn by lot. */
import { describe, expect, it } from "vitest";
import { drawnYear, grownRow, steadyYear } from "../../../src/decide/weather/year.js";
import { buildSeason } from "../../../src/season/build-season.js";
import { cell, group, tinyFarm } from "../../fixtures/tiny-farm.js";

const weather = { dry: 0.7, wet: 1.5, month: 0, springDays: 10, lateMoves: 0.1, weekAway: 0.3 };
const season = buildSeason(tinyFarm({ days: 60, cells: [cell("A1")], groups: [group("Cows"), group("Ewes", { kind: "sheep" })], more: { weather } }));
const COUNT = 4000;
const years = Array.from({ length: COUNT }, (_, i) => drawnYear(season, 1, i));

/** Four standard deviations of a share of so many draws: passed once in 16,000 times. */
const close = (found: number, share: number, count: number): void => expect(Math.abs(found / count - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / count));

describe("drawnYear", () => {
  it("is the same for a seed and a number, in whatever order years are drawn", () => {
    expect(drawnYear(season, 1, 7)).toEqual(years[7]);
    expect(drawnYear(season, 1, 3)).toEqual(years[3]);
    expect(drawnYear(season, 2, 7)).not.toEqual(years[7]);
  });

  it("is the same on every machine", () => {
    const { growth, springLate, away } = drawnYear(season, 1, 0);
    expect([growth[0]!.toFixed(9), springLate.toFixed(9), away]).toMatchInlineSnapshot(`
      [
        "0.838366451",
        "0.406368298",
        null,
      ]
    `);
  });

  it("is drier than dry in one of ten, wetter than wet in one, below the usual in half", () => {
    const grown = years.map(({ growth }) => growth[5]!);
    close(grown.filter((one) => one < weather.dry).length, 0.1, COUNT);
    close(grown.filter((one) => one > weather.wet).length, 0.1, COUNT);
    close(grown.filter((one) => one < 1).length, 0.5, COUNT);
    // nothing farther out than one in a hundred: 2.3263 / 1.2816 times as far as one in ten
    expect(Math.min(...grown)).toBeCloseTo(weather.dry ** (2.3263 / 1.2816), 6);
    expect(Math.max(...grown)).toBeCloseTo(weather.wet ** (2.3263 / 1.2816), 6);
  });

  it("has spring within its days in eight of ten, late as often as early", () => {
    close(years.filter(({ springLate }) => Math.abs(springLate) < weather.springDays).length, 0.8, COUNT);
    close(years.filter(({ springLate }) => springLate > 0).length, 0.5, COUNT);
  });

  it("has months of one growth where they do not differ, and within their share in eight of ten where they do", () => {
    expect(years.every(({ growth }) => growth.every((one) => one === growth[0]))).toBe(true);
    const other = { ...season, scenario: { ...season.scenario, weather: { ...weather, dry: 1, wet: 1, month: 0.25 } } };
    const months = Array.from({ length: 400 }, (_, i) => drawnYear(other, 5, i).growth).flat();
    close(months.filter((one) => one > 1 / 1.25 && one < 1.25).length, 0.8, months.length);
  });

  it("has late moves and weeks with nobody as often as it is told to", () => {
    const slips = years.slice(0, 500).flatMap((year) => year.slips.flatMap((days) => [...days]));
    close(slips.filter((days) => days > 0).length, weather.lateMoves, slips.length);
    expect(new Set(slips)).toEqual(new Set([0, 1, 2]));
    const away = years.flatMap((year) => year.away ?? []);
    close(away.length, weather.weekAway, COUNT);
    expect([Math.min(...away), Math.max(...away)]).toEqual([0, season.days - 7]);
  });

  it("has none of it where the farm file says 0", () => {
    const calm = { ...season, scenario: { ...season.scenario, weather: { dry: 1, wet: 1, month: 0, springDays: 0, lateMoves: 0, weekAway: 0 } } };
    for (let i = 0; i < 20; i++) {
      const year = drawnYear(calm, 1, i);
      expect({ ...year, springLate: Math.abs(year.springLate) }).toEqual(steadyYear(calm, 1));
    }
  });
});

// Ireland, ordinary June (shared/growth.json, oceanic-b)
const ROW = [4, 4, 14, 45, 75, 66, 60, 60, 55, 30, 12, 4];
const MONTH = 365.25 / 12;
const even = Array<number>(12).fill(1);

describe("grownRow", () => {
  it("is the row itself in a usual year, and so many times it in others", () => {
    expect(grownRow(ROW, { growth: even, springLate: 0 })).toEqual(ROW);
    expect(grownRow(ROW, { growth: Array<number>(12).fill(0.5), springLate: 0 })).toEqual(ROW.map((kg) => kg / 2));
  });

  it("has each spring month grow what the month before does when spring is a month late, and the month after when early", () => {
    expect(grownRow(ROW, { growth: even, springLate: MONTH })).toEqual([4, 4, 4, 14, 45, 66, 60, 60, 55, 30, 12, 4]);
    expect(grownRow(ROW, { growth: even, springLate: -MONTH })).toEqual([4, 14, 45, 75, 75, 66, 60, 60, 55, 30, 12, 4]);
  });

  it("lies on the straight line between months for days between", () => {
    const april = grownRow(ROW, { growth: even, springLate: MONTH / 4 })[3]!;
    expect(april).toBeCloseTo(45 * 0.75 + 14 * 0.25, 9);
  });

  it("finds spring in the southern half of the year as well", () => {
    const south = [...ROW.slice(6), ...ROW.slice(0, 6)];
    expect(grownRow(south, { growth: even, springLate: MONTH })).toEqual([60, 60, 55, 30, 12, 4, 4, 4, 4, 14, 45, 66]);
  });

  it("leaves ground on which nothing grows, or every month grows alike, as it is", () => {
    expect(grownRow(Array<number>(12).fill(0), { growth: even, springLate: 9 })).toEqual(Array<number>(12).fill(0));
    expect(grownRow(Array<number>(12).fill(50), { growth: even, springLate: -9 })).toEqual(Array<number>(12).fill(50));
  });
});
