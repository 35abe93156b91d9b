/** A grid that any spreadsheet saved is the plan that was written, and the file written again is the same to the byte. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test, fc } from "@fast-check/vitest";
import { afterAll, describe, expect } from "vitest";
import { readTableFile } from "../../src/files/read.js";
import { GRID_FORMS, readGrid } from "../../src/plan/read-grid.js";
import { addDays, daysBetween } from "../../src/quantity/calendar.js";
import { gridCsv } from "../../src/sheets/grid-csv.js";
import { savedBy, type Dialect } from "./dialects.js";
import { oddFarm, planOn } from "./odd-names.js";

const folder = mkdtempSync(join(tmpdir(), "inbye-dialects-"));
afterAll(() => rmSync(folder, { recursive: true }));

const number = (day: string, from: string): string => String(daysBetween(from, day));
const inEnglish = (day: string, how: Intl.DateTimeFormatOptions): string => new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", ...how }).format(new Date(`${day}T00:00:00Z`));
const parts = (how: (y: string, m: string, d: string) => string) => (day: string): string => how(...(day.split("-") as [string, string, string]));
const bare = (text: string): string => String(Number(text));

/** Days as spreadsheets of many countries write them, or show them when their owner says so. */
const DAYS: Readonly<Record<string, (day: string) => string>> = {
  iso: (day) => day,
  isoAtMidnight: (day) => `${day} 00:00:00`,
  us: parts((y, m, d) => `${bare(m)}/${bare(d)}/${y}`),
  usTwoFigures: parts((y, m, d) => `${m}/${d}/${y.slice(2)}`),
  usAtMidnight: parts((y, m, d) => `${bare(m)}/${bare(d)}/${y} 12:00:00 AM`),
  british: parts((y, m, d) => `${d}/${m}/${y}`),
  dotted: parts((y, m, d) => `${d}.${m}.${y}`),
  dottedTwoFigures: parts((y, m, d) => `${d}.${m}.${y.slice(2)}`),
  dottedWithBlanks: parts((y, m, d) => `${bare(d)}. ${bare(m)}. ${y}`),
  dottedToTheEnd: parts((y, m, d) => `${bare(d)}.${bare(m)}.${y}.`),
  withYearMark: parts((y, m, d) => `${bare(d)}.${m}.${y} г.`),
  dashed: parts((y, m, d) => `${bare(d)}-${bare(m)}-${y}`),
  yearFirst: parts((y, m, d) => `${y}/${m}/${d}`),
  yearFirstDotted: parts((y, m, d) => `${y}. ${m}. ${d}.`),
  yearFirstTwoFigures: parts((y, m, d) => `${y.slice(2)}/${m}/${d}`),
  noYear: parts((_y, m, d) => `${d}/${m}`),
  name: (day) => inEnglish(day, { day: "numeric", month: "long", year: "numeric" }),
  weekday: (day) => inEnglish(day, { weekday: "short", day: "numeric", month: "short", year: "numeric" }),
  nameFirst: parts((y, m, d) => `${inEnglish(`${y}-${m}-${d}`, { month: "long" })} ${bare(d)}, ${y}`),
  nameNoYear: parts((y, m, d) => `${bare(d)}-${inEnglish(`${y}-${m}-${d}`, { month: "short" }).slice(0, 3)}`),
  serial: (day) => number(day, "1899-12-30"),
  serialFrom1904: (day) => number(day, "1904-01-01"),
};

const dialect: fc.Arbitrary<Dialect> = fc.record({
  delimiter: fc.constantFrom(",", ";", "\t"), quoted: fc.boolean(), lineEnd: fc.constantFrom("\r\n", "\n", "\r"),
  encoding: fc.constantFrom("utf-8", "utf-8 with mark", "utf-16le", "utf-16be"), columns: fc.nat(3), rows: fc.nat(3), day: fc.constantFrom(...Object.values(DAYS)),
});

const season = oddFarm.chain((farm) => {
  const { firstDay, lastDay } = farm.season;
  const days = Array.from({ length: daysBetween(firstDay, lastDay) + 1 }, (_, i) => addDays(firstDay, i));
  return fc.record({ farm: fc.constant(farm), plan: planOn(farm, days) });
});

function readBack(bytes: Uint8Array, farm: Parameters<typeof gridCsv>[0]) {
  const path = join(folder, "grid.csv");
  writeFileSync(path, bytes);
  const text = readTableFile(path);
  if (!text.ok) throw new Error(JSON.stringify(text.findings));
  const read = readGrid(text.value, farm, "grid.csv");
  if (!read.ok) throw new Error(JSON.stringify(read.findings, null, 1));
  return read.value;
}

describe("a grid through spreadsheets", () => {
  for (const form of GRID_FORMS) {
    test.prop([season, dialect], { numRuns: 300 })(`comes back the same in form ${form}`, ({ farm, plan }, how) => {
      const written = gridCsv(farm, plan, form);
      const back = readBack(savedBy(how, written), farm);
      expect(back).toEqual(plan);
      expect(gridCsv(farm, back, form)).toBe(written);
    });
  }
});
