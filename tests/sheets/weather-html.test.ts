/** The picture of hay by week: self-contained, and its lines lie where the figures are. */
import { describe, expect, it } from "vitest";
import type { LivedYear } from "../../src/decide/weather/lived-year.js";
import { weatherSummary } from "../../src/decide/weather/weather-summary.js";
import { weatherHtml } from "../../src/sheets/weather-html.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { faultsOf } from "./well-formed.js";

const farm = tinyFarm({ days: 21, cells: [cell("A1")], groups: [group("Cows")], more: { farm: "Low & Acre" } });
const year = (kg: number): LivedYear =>
  ({ kind: "usual", growth: 1, hayFedKg: kg, hayMadeKg: 0, hayByWeek: [0, kg / 2, kg], yardDays: { Cows: 0 }, failures: { grass: null, late: null, away: null }, failure: null, daysAmiss: 0 });
const years = Array.from({ length: 100 }, (_, i) => year(10 * (i + 1)));
const page = weatherHtml(farm, weatherSummary(farm, years));

describe("weatherHtml", () => {
  it("is one well-formed page without script or anything from elsewhere", () => {
    expect(faultsOf(page)).toEqual([]);
    expect(page).not.toMatch(/<script|https?:|url\((?!#)|@import/);
    expect(page).toContain("Low &amp; Acre");
  });

  it("tells the three amounts in words, in the drawing and in the table beside it", () => {
    expect(page).toContain("half the years 500 kg, 8 years in 10 800 kg, 19 years in 20 950 kg");
    for (const words of ["half the years", "8 years in 10", "19 years in 20"]) expect(page.split(words).length).toBeGreaterThan(2);
    expect(page).toContain("<td>15 May</td><td>500 kg</td><td>800 kg</td><td>950 kg</td><td>0</td>");
  });

  it("ends each line at its height: 1,000 kg is the top of the axis, at 8 mm, none the foot, at 104 mm", () => {
    for (const kg of [500, 800, 950]) {
      const at = Math.round((104 - (96 * kg) / 1000) * 100) / 100;
      expect(page, `${kg} kg`).toMatch(new RegExp(`d="M20 104[^"]*L212 ${String(at).replace(".", "\\.")}[" L]`));
    }
  });

  it("draws years without hay, and a season of one week", () => {
    const none = weatherHtml(farm, weatherSummary(farm, [year(0)]));
    expect(none).not.toMatch(/NaN|Infinity/);
    const week = weatherHtml(farm, weatherSummary(farm, [{ ...year(30), hayByWeek: [30] }]));
    expect(week).not.toMatch(/NaN|Infinity/);
  });
});
