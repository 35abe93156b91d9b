import { describe, expect, it } from "vitest";
import { findingsOf, lowAcre, scenarioOf } from "./read-text.js";

const closed = (written: string) => lowAcre("cover: 2200 kg/ha", `cover: 2200 kg/ha\n    closed: { path: ${written} }`);
const spans = (written: string) => scenarioOf(closed(written)).cells[0]!.closed.map((c) => [c.firstDay, c.lastDay]);
const refused = (written: string) => findingsOf(closed(written)).map((f) => [f.code, f.next]);

describe("days", () => {
  it("are one day, from a day to a day, from a day on, until a day; both ends count", () => {
    expect(spans("2027-06-01")).toEqual([["2027-06-01", "2027-06-01"]]);
    expect(spans("2027-06-01 to 2027-06-09")).toEqual([["2027-06-01", "2027-06-09"]]);
    expect(spans("from 2027-10-01")).toEqual([["2027-10-01", "2027-10-31"]]);
    expect(spans("until 2027-05-07")).toEqual([["2027-04-20", "2027-05-07"]]);
    expect(spans("[from 2027-10-01, until 2027-05-07]")).toEqual([["2027-04-20", "2027-05-07"], ["2027-10-01", "2027-10-31"]]);
  });

  // ISO 8601 and the calendar: 2028 is a leap year, 2027 and 2100 are not.
  it("are days of the calendar", () => {
    expect(spans("2028-02-29")).toEqual([["2028-02-29", "2028-02-29"]]);
    for (const day of ["2027-02-29", "2100-02-29", "2027-04-31", "2027-13-01", "2027-00-10", "2027-4-1", "27-04-01", "2027-04-01T00:00", "9999-12-31", "0204-04-01"]) {
      expect(refused(day).map(([code]) => code), day).toEqual(["day-form"]);
    }
  });

  it("of other countries are asked back", () => {
    expect(refused("10/4/2027")).toEqual([["day-form", "2027-10-04 or 2027-04-10?"]]);
    expect(refused("25.4.2027")).toEqual([["day-form", "2027-04-25?"]]);
    expect(refused("2027/4/5")).toEqual([["day-form", "2027-04-05?"]]);
  });

  it("the other way round are said so", () => {
    expect(refused("2027-07-04 to 2027-05-12")).toEqual([["days-reversed", "2027-05-12 to 2027-07-04?"]]);
    expect(findingsOf(lowAcre("weight: 550 kg", "weight: 550 kg, turnout: 2027-06-01, housing: 2027-05-01")).map((f) => f.code)).toEqual(["days-reversed"]);
  });

  it("of a season are a week to four hundred", () => {
    expect(findingsOf(lowAcre("2027-10-31", "2027-04-25")).map((f) => f.code)).toEqual(["out-of-reach"]);
    expect(scenarioOf(lowAcre("2027-10-31", "2027-04-26")).season).toEqual({ firstDay: "2027-04-20", lastDay: "2027-04-26" });
  });

  it("outside the season are noted, and not planned", () => {
    const here = scenarioOf(lowAcre("weight: 550 kg", "weight: 550 kg, here: [2026-01-01 to 2026-02-01, 2027-03-01 to 2027-05-01]")).groups[0]!.here;
    expect(here).toEqual([{ firstDay: "2027-04-20", lastDay: "2027-05-01" }]);
  });
});
