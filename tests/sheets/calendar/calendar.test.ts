/** A plan's calendar, read by ical.js 2.2.1 and held against the plan's own stays. */
import { createHash } from "node:crypto";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Plan, Stay } from "../../../src/plan/plan.js";
import { addDays, weekdayOf } from "../../../src/quantity/calendar.js";
import { calendarOf, type Calendar, type CalendarInput } from "../../../src/sheets/calendar/calendar.js";
import { cell, group, tinyFarm } from "../../fixtures/tiny-farm.js";
import { englishWords, plannedFarm } from "../../fixtures/planned-farm.js";
import { expectedOf } from "./expected-events.js";
import { readIcs, type ReadEvent } from "./read-ics.js";

const { scenario, plan, made } = plannedFarm("withy-end");
const hash = (text: string): string => createHash("sha256").update(text).digest("hex");
const input: CalendarInput = { scenario, plan, made, former: null, sequence: 1, of: { groups: null, person: null }, words: englishWords(), hash };
const made1 = calendarOf(input);
const { events, name, method } = readIcs(made1.text);
const told = (list: readonly ReadEvent[]): string[] => list.map(({ day, summary }) => `${day} ${summary}`).sort();

/** The plan with the cows one day longer in their nth cell, one shorter in the next. */
function aDayLater(nth: number): Plan {
  const cows = plan.stays.filter((stay) => stay.group === "Cows").sort((a, b) => (a.firstDay < b.firstDay ? -1 : 1));
  const [one, next] = [cows[nth]!, cows[nth + 1]!];
  const changed = (stay: Stay): Stay => (stay === one ? { ...stay, lastDay: addDays(stay.lastDay, 1) } : stay === next ? { ...stay, firstDay: addDays(stay.firstDay, 1) } : stay);
  return { ...plan, stays: plan.stays.map(changed) };
}

describe("the calendar of Withy End", () => {
  it("has an event for each move and job that the stays ask for, and no other", () => {
    expect(told(events)).toEqual(expectedOf(scenario, plan));
    expect(made1.events).toBe(events.length);
  });

  it("names each event once, by a UUID that tells nothing (RFC 9562 5.8)", () => {
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
    expect(events.every(({ uid }) => /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/.test(uid))).toBe(true);
  });

  it("has a cut once that the plan names twice on a day", () => {
    expect(plan.cuts.length).toBeGreaterThan(0);
    expect(calendarOf({ ...input, plan: { ...plan, cuts: [...plan.cuts, ...plan.cuts] } }).text).toBe(made1.text);
  });

  it("is published, named after the farm, and dated by the plan and not by the clock", () => {
    expect([name, method]).toEqual(["Withy End: moves and jobs", "PUBLISH"]);
    expect(new Set(events.map(({ stamp }) => stamp))).toEqual(new Set([`${made.madeOn}T00:00:00Z`]));
    expect(calendarOf(input).text).toBe(made1.text);
  });

  it("ends every line with CRLF and keeps it within 75 octets (RFC 5545 3.1)", () => {
    expect(made1.text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    expect(made1.text.split("\r\n").every((line) => Buffer.byteLength(line, "utf8") <= 75)).toBe(true);
  });

  it("reminds of a morning the evening before, and of a dusk that day; what is firm is confirmed", () => {
    const triggers = (end: RegExp): Set<string> => new Set(events.filter(({ summary }) => end.test(summary)).flatMap((event) => event.triggers));
    expect([triggers(/ → /), triggers(/, evening$/), triggers(/, dusk$/), triggers(/^Fetch kit/)]).toEqual([new Set(["-PT5H"]), new Set(["PT12H"]), new Set(["PT17H"]), new Set()]);
    expect(events.every(({ day, status }) => status === (day <= made.firmTo ? "CONFIRMED" : "TENTATIVE"))).toBe(true);
  });

  it("says what a tow needs, where, and who is at home", () => {
    const tow = events.find(({ summary }) => /^Layers \S+ → \S+$/.test(summary))!;
    expect([tow.place, tow.categories]).toEqual([tow.summary.split(" → ")[1], ["Layers"]]);
    expect(tow.description).toMatch(/About \d+ min\.\nTwo people, never alone\.\nA tow: Owner\. Nobody between tractor and house/);
    expect(tow.description).toMatch(/At home: Owner \(tows\)/);
  });
});

describe("a calendar of some", () => {
  const of = (some: Partial<CalendarInput["of"]>, farm = scenario): readonly ReadEvent[] => readIcs(calendarOf({ ...input, scenario: farm, of: { ...input.of, ...some } }).text).events;

  it("has a group's jobs alone: no walk, no cut, the same names", () => {
    const cows = of({ groups: ["Cows"] });
    expect(told(cows)).toEqual(told(events.filter(({ categories }) => categories.includes("Cows"))));
    expect(cows.every(({ uid }) => events.some((one) => one.uid === uid))).toBe(true);
    expect(of({ groups: ["Cows", "Pigs"] }).length).toBe(cows.length + of({ groups: ["Pigs"] }).length);
  });

  // scenarios/withy-end.yaml: the helper is there on Wednesdays and Saturdays and does not tow; ISO 8601 numbers Monday first
  it("has a person's days at home", () => {
    const helpers = events.filter(({ day }) => [2, 5].includes(weekdayOf(day)));
    expect(told(of({ person: "Helper" }))).toEqual(told(helpers));
    expect(of({ person: "Owner" }).length).toBe(events.length);
  });

  it("leaves tows that take one person to those who tow", () => {
    const alone = { ...scenario, groups: scenario.groups.map((one) => ({ ...one, peopleToMove: 1 })) };
    const tows = ({ summary }: ReadEvent): boolean => /^Step Layers|^Layers .+ → /.test(summary);
    expect(of({ person: "Helper" }).some(tows)).toBe(true);
    expect(of({ person: "Helper" }, alone).some(tows)).toBe(false);
    expect(of({ person: "Owner" }, alone).some(tows)).toBe(true);
  });
});

describe("a calendar of a changed plan", () => {
  const changed = aDayLater(4);
  const later: Calendar = calendarOf({ ...input, plan: changed, former: plan, sequence: 2 });
  const now = readIcs(later.text).events;
  const gone = now.filter(({ status }) => status === "CANCELLED");
  const kept = now.filter(({ uid, status }) => status !== "CANCELLED" && events.some((one) => one.uid === uid));

  it("calls off what was moved, under its old name, and has it anew", () => {
    const [before, after] = [expectedOf(scenario, plan), expectedOf(scenario, changed)];
    expect(told(gone)).toEqual(before.filter((line) => !after.includes(line)).map((line) => line.replace(/ /, " Called off: ")));
    expect(gone.length).toBeGreaterThan(0);
    expect(gone.every(({ uid, triggers }) => events.some((one) => one.uid === uid) && triggers.length === 0)).toBe(true);
    expect(later.events - later.kept).toBe(after.filter((line) => !before.includes(line)).length);
    expect([later.events, later.cancelled, later.kept]).toEqual([after.length, gone.length, kept.length]);
  });

  it("keeps the names of all others, with a higher sequence", () => {
    const named = (list: readonly ReadEvent[]) => new Map(list.map(({ uid, day, summary }) => [uid, `${day} ${summary}`]));
    const old = named(events);
    expect(kept.every(({ uid, day, summary }) => old.get(uid) === `${day} ${summary}`)).toBe(true);
    expect(new Set(now.map(({ sequence }) => sequence))).toEqual(new Set([2]));
  });

  it("has nothing but what is called off where no stay is left", () => {
    const none = calendarOf({ ...input, plan: { stays: [], cuts: [] }, former: plan, of: { groups: ["Cows"], person: null } });
    expect(none.events).toBe(0);
    expect(none.cancelled).toBe(events.filter(({ categories }) => categories.includes("Cows")).length);
  });
});

describe("names", () => {
  const letters = fc.string({ unit: fc.constantFrom("Корова", "ё", "🐄", ";", ",", "\\", "\n", "<script>", "'", "\"", ":", "a", "x".repeat(60)), minLength: 1, maxLength: 8 });

  test.prop([letters, letters, letters], { numRuns: 50 })("of any letters come back from a reader as they are", (farm, herd, place) => {
    const names = [`${herd}1`, `${place}1`, `${place}2`] as const;
    const made3 = { ...tinyFarm({ days: 6, firstDay: "2027-05-01", cells: [cell(names[1]), cell(names[2])], groups: [group(names[0])] }), farm };
    const stays = [{ cell: names[1], firstDay: "2027-05-01", lastDay: "2027-05-03" }, { cell: names[2], firstDay: "2027-05-04", lastDay: "2027-05-06" }];
    const read = readIcs(calendarOf({ ...input, scenario: made3, plan: { stays: stays.map((one) => ({ group: names[0], yard: null, ...one })), cuts: [] } }).text);
    const move = read.events.find(({ day, summary }) => day === "2027-05-04" && summary.includes(" → "))!;
    expect([read.name, move.summary, move.place, move.categories]).toEqual([`${farm}: moves and jobs`, `${names[0]} ${names[1]} → ${names[2]}`, names[2], [names[0]]]);
  });
});
