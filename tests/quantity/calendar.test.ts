import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { addDays, dayNumber, daysBetween, isIsoDate, isoDate, monthOf, spanHolds, weekdayOf } from "../../src/quantity/calendar.js";

describe("calendar", () => {
  it("counts days over month, leap year and century", () => {
    expect(addDays("2027-04-30", 1)).toBe("2027-05-01");
    expect(addDays("2028-02-28", 1)).toBe("2028-02-29");
    expect(addDays("2100-02-28", 1)).toBe("2100-03-01");
    expect(daysBetween("2027-04-10", "2027-10-31")).toBe(204);
  });

  it("knows days that do not exist", () => {
    expect(["2026-02-30", "2027-13-01", "2027-4-1", "10/4/2027"].map(isIsoDate)).toEqual([false, false, false, false]);
    expect(() => dayNumber("2026-02-30")).toThrow("no such day");
  });

  it("counts both ends of a span", () => {
    const span = { firstDay: "2027-05-12", lastDay: "2027-07-04" };
    expect(["2027-05-11", "2027-05-12", "2027-07-04", "2027-07-05"].map((day) => spanHolds(span, day))).toEqual([false, true, true, false]);
  });

  it("goes to day numbers and back", () => {
    fc.assert(fc.property(fc.integer({ min: -200_000, max: 200_000 }), (day) => dayNumber(isoDate(day)) === day));
  });

  it("outside truth: weekdays of known dates", () => {
    // ISO 8601 takes Saturday 2000-01-01 as its reference; the first moon landing was on a Sunday.
    expect(weekdayOf("2000-01-01")).toBe(5);
    expect(weekdayOf("1969-07-20")).toBe(6);
    // The engine's own calendar, by another road than the arithmetic in the code.
    fc.assert(fc.property(fc.integer({ min: -30_000, max: 60_000 }), (day) => {
      const date = new Date(`${isoDate(day)}T12:00:00Z`);
      return weekdayOf(isoDate(day)) === (date.getUTCDay() + 6) % 7 && monthOf(isoDate(day)) === date.getUTCMonth();
    }));
  });
});
