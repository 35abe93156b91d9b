/** A plan tried on many years, by the built command. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { WeatherAnswer } from "../../src/cli/weather-shape.js";
import type { CheckAnswer } from "../../src/cli/answers.js";
import { answer, freshFolder, inbye } from "./inbye.js";

const folder = freshFolder();
afterAll(folder.done);

const FARM = `farm: Low Acre
season: 2027-04-20 to 2027-05-20
fields:
  Long Croft:
    cover: 2300 kg/ha
    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha, L4: 0.6 ha, L5: 0.5 ha }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }
people:
  Owner: { minutes: 2 h }
`;

/** Three or four days in each cell in turn, a word a day. */
const GRID = ["day,Cows", ..."L1 L1 L1 L2 L2 L2 L3 L3 L3 L4 L4 L4 L5 L5 L5 L5 yard yard yard yard yard L1 L1 L1 L2 L2 L2 L3 L3 L3 L4".split(" ").map((word, t) =>
  `${new Date(Date.UTC(2027, 3, 20 + t)).toISOString().slice(0, 10)},${word}`), ""].join("\n");

const unwrapped = (words: string): string => words.replace(/\s+/g, " ");
const weather = (...more: string[]) => inbye(["weather", "low-acre.yaml", "grid.csv", ...more], folder.path);

beforeAll(() => {
  writeFileSync(join(folder.path, "low-acre.yaml"), FARM);
  writeFileSync(join(folder.path, "grid.csv"), GRID);
});

describe("weather", () => {
  it("agrees with the check on the usual year, and fails in no more years than there are", () => {
    const check = answer<CheckAnswer>(inbye(["check", "low-acre.yaml", "grid.csv", "--json"], folder.path), "check-answer");
    expect(check.breaches).toEqual([]);
    const ran = weather("--years", "40", "--json");
    const said = answer<WeatherAnswer>(ran, "weather-answer");
    expect(ran.exit).toBe(0);
    expect(said.usualYear.yardDays).toEqual(check.yardDays);
    expect(said.years).toBe(40);
    expect(said.firstFailures.reduce((sum, { years }) => sum + years, 0)).toBe(said.failed.years);
    expect(said.kinds.reduce((sum, { years }) => sum + years, 0)).toBe(40);
    expect(said.kinds.reduce((sum, { failed }) => sum + failed, 0)).toBe(said.failed.years);
    const [half, most, nearly] = said.hay;
    expect(half!.kg).toBeLessThanOrEqual(most!.kg);
    expect(most!.kg).toBeLessThanOrEqual(nearly!.kg);
    expect(said.hayByWeek.at(-1)!.kg).toEqual(said.hay.map(({ kg }) => kg));
    expect(said.figures).toBeNull();
  });

  it("says the same twice, and something else for another seed", () => {
    expect(weather("--years", "10", "--json").out).toBe(weather("--years", "10", "--json").out);
    expect(weather("--years", "10", "--json", "--seed", "2").out).not.toBe(weather("--years", "10", "--json").out);
  });

  it("tells people how it was tried, how often it fails, and what hay to hold, in 80 columns", () => {
    const { out } = weather("--years", "40");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
    const words = unwrapped(out);
    const said = answer<WeatherAnswer>(weather("--years", "40", "--json"), "weather-answer");
    expect(words).toContain(`It failed in ${said.failed.years} of 40 years`);
    for (const part of ["How it was tried", "The weak spots", "half the years", "8 years in 10", "19 years in 20", "dry usual wet"]) expect(words).toContain(part);
    expect(words).not.toMatch(/quantile|percentile|simulat|confidence|Monte/i);
  });

  it("takes the weather from the farm file: where nothing can differ, no year does", () => {
    writeFileSync(join(folder.path, "calm.yaml"), `${FARM}weather: { dry: 100 %, wet: 100 %, month: 0 %, spring: 0 d, late-moves: 0 %, week-away: 0 % }\n`);
    const said = answer<WeatherAnswer>(inbye(["weather", "calm.yaml", "grid.csv", "--years", "5", "--json"], folder.path), "weather-answer");
    expect(said.failed.years).toBe(0);
    expect(said.hay.map(({ kg }) => kg)).toEqual(Array(3).fill(said.usualYear.hayFedKg));
    expect(said.kinds.map(({ years }) => years)).toEqual([0, 5, 0]);
  });

  it("draws a picture only where a folder is named, and never over another", () => {
    expect(weather("--years", "5", "--out", "picture").exit).toBe(0);
    const page = readFileSync(join(folder.path, "picture/weather.html"), "utf8");
    expect(page).toContain("Low Acre: hay fed by week, 5 made-up years");
    const again = weather("--years", "6", "--out", "picture");
    expect(again.exit).toBe(2);
    expect(again.out).toContain("file-exists");
    expect(readFileSync(join(folder.path, "picture/weather.html"), "utf8")).toBe(page);
    expect(weather("--years", "6", "--out", "picture", "--replace").exit).toBe(0);
    weather("--years", "5");
    expect(existsSync(join(folder.path, "plans"))).toBe(false);
  });

  it("says that a plan breaks rules as it stands, tries it all the same, and ends with 3", () => {
    writeFileSync(join(folder.path, "bad.csv"), GRID.replace(/,L2/g, ",L1"));
    const ran = inbye(["weather", "low-acre.yaml", "bad.csv", "--years", "3"], folder.path);
    expect(ran.exit).toBe(3);
    expect(unwrapped(ran.out)).toMatch(/The plan breaks a rule in \d+ places? as it stands, whatever the year/);
  });

  it.each([["0"], ["10001"], ["two"], ["1.5"]])("refuses --years %s before it does anything", (years) => {
    const ran = weather("--years", years, "--out", "none");
    expect(ran.exit).toBe(2);
    expect(unwrapped(ran.out)).toContain("A whole number from 1 to 10000");
    expect(existsSync(join(folder.path, "none"))).toBe(false);
  });
});
