/** Plans walked through years: the usual year is the plan's own, and what is said of the others is what the check says. */
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../../src/check/check-plan.js";
import { weatherYardDays } from "../../../src/decide/weather.js";
import { grownFarm } from "../../../src/decide/weather/grown.js";
import { walkYear } from "../../../src/decide/weather/walk.js";
import { walkedPlan, walkThrough } from "../../../src/decide/weather/walked-plan.js";
import { walkYears } from "../../../src/decide/weather/weather-years.js";
import { drawnYear, steadyYear } from "../../../src/decide/weather/year.js";
import { isGrazer, type Scenario } from "../../../src/farm/scenario.js";
import { cellSimulator } from "../../../src/programme/cell-simulator.js";
import { Draft } from "../../../src/programme/draft.js";
import { planOf } from "../../../src/programme/plan-of.js";
import { buildSeason, regrown } from "../../../src/season/build-season.js";
import { cell, group, tinyFarm } from "../../fixtures/tiny-farm.js";
import { byEye, daysOf, HOUSE } from "./plans.js";

const NOBODY = { asked: false };
const clock = { now: () => 0, sleep: () => Promise.resolve() };
const quiet = (): undefined => undefined;

describe.each(HOUSE)("%s, planned by eye", (_, scenario) => {
  const plan = byEye(scenario);
  const report = checkPlan(scenario, plan);
  const laid = walkedPlan(scenario, plan);

  it("has the plan's own places, hay, yard days and cuts in the usual year", () => {
    expect(report.breaches).toEqual([]);
    const year = steadyYear(laid.season, 1);
    const lived = walkYear(laid, grownFarm(scenario, year), year);
    expect(lived.place).toEqual(laid.plan.place);
    expect(lived.cuts).toEqual(laid.plan.cuts);
    const usual = walkThrough(laid, year);
    expect(usual).toMatchObject({ kind: "usual", growth: 1, failure: null, daysAmiss: 0, hayFedKg: report.measures.hayFedKg, hayMadeKg: report.measures.hayMadeKg, yardDays: report.measures.yardDays });
    expect(usual.hayByWeek.at(-1)).toBeCloseTo(report.measures.hayFedKg, 6);
  });

  it("has the yard days that planning prints in a dry and a wet year", () => {
    const days = weatherYardDays(scenario, laid.plan);
    expect(days.usual).toEqual(report.measures.yardDays);
    for (const kind of ["dry", "wet"] as const) expect(walkThrough(laid, steadyYear(laid.season, scenario.weather[kind])).yardDays).toEqual(days[kind]);
  });

  it("breaks what the plan in the making says it breaks, year by year", () => {
    for (let i = 0; i < 4; i++) {
      const year = drawnYear(laid.season, 3, i);
      const farm = grownFarm(scenario, year);
      const lived = walkYear(laid, farm, year);
      const season = regrown(laid.season, farm);
      const draft = new Draft(season, cellSimulator(season));
      draft.load(lived.place, lived.cuts);
      expect(draft.over > 0, `year ${i}`).toBe(checkPlan(farm, planOf(season, lived)).breaches.length > 0);
    }
  });

  it("keeps the rules of the ground for grazers while nobody is late, be the year as it may", () => {
    for (let i = 0; i < 6; i++) {
      const drawn = drawnYear(laid.season, 4, i);
      const year = { ...drawn, slips: steadyYear(laid.season, 1).slips, away: null };
      const { failures } = walkThrough(laid, year);
      expect([failures.late, failures.away]).toEqual([null, null]);
      const farm = grownFarm(scenario, year);
      const grazers = scenario.groups.filter(({ kind }) => isGrazer(kind)).map(({ name }) => name);
      const broken = checkPlan(farm, planOf(laid.season, walkYear(laid, farm, year))).breaches.filter(({ group: name }) => name !== null && grazers.includes(name));
      expect(broken.filter(({ rule }) => rule === "residual-cover" || rule === "entry-cover" || rule === "demand-met")).toEqual([]);
    }
  });
});

describe("regrown", () => {
  it("is the season of the farm as the year has it", () => {
    const [, scenario] = HOUSE[0]!;
    const season = buildSeason(scenario);
    const farm = grownFarm(scenario, drawnYear(season, 1, 0));
    expect(regrown(season, farm)).toEqual(buildSeason(farm));
  });
});

/** Two cells, five cows; the plan has them out every day. */
function twoCells(growth: number, more: Partial<Scenario> = {}): Scenario {
  const grows = { growthByMonth: Array<number>(12).fill(growth) };
  return tinyFarm({ days: 14, cells: [cell("A1", { ...grows, areaHa: 1 }), cell("A2", { ...grows, areaHa: 1 })], groups: [group("Cows")], more });
}

const TURNS = "A1 A1 A1 A1 A1 A1 A1 A2 A2 A2 A2 A2 A2 A2";

describe("walkYears", () => {
  const farm = twoCells(20);
  const plan = daysOf(farm, "Cows", TURNS);

  it("has the same years first when more are asked for, and others for another seed", async () => {
    const few = await walkYears(farm, plan, { years: 5, seed: 1 }, clock, quiet, NOBODY);
    const many = await walkYears(farm, plan, { years: 12, seed: 1 }, clock, quiet, NOBODY);
    expect(many.years.slice(0, 5)).toEqual(few.years);
    const other = await walkYears(farm, plan, { years: 5, seed: 2 }, clock, quiet, NOBODY);
    expect(other.years).not.toEqual(few.years);
  });

  it("keeps the years done when the owner stops it, and at least one", async () => {
    let time = 0;
    const stop = { asked: false };
    const slow = { now: () => (time += 1), sleep: () => Promise.resolve() };
    const ended = await walkYears(farm, plan, { years: 50, seed: 1 }, slow, (done) => (stop.asked = done >= 7), stop);
    expect([ended.years.length, ended.stopped]).toEqual([7, true]);
    expect((await walkYears(farm, plan, { years: 50, seed: 1 }, slow, quiet, { asked: true })).years.length).toBe(1);
  });

  it("walks ground on which nothing grows", async () => {
    const dead = twoCells(0);
    const { usual, years } = await walkYears(dead, daysOf(dead, "Cows", TURNS), { years: 3, seed: 1 }, clock, quiet, NOBODY);
    expect([usual, ...years].map(({ growth, kind }) => [growth, kind])).toEqual(Array(4).fill([1, "usual"]));
  });
});

describe("livedYear", () => {
  // 86.25 kg a day off 1 ha, nothing grows: 2,600 lasts seven days down to 1,996, then 2,050 down to 1,500 six days and not seven
  const short = tinyFarm({
    days: 14, cells: [cell("A1", { areaHa: 1, growthByMonth: Array<number>(12).fill(0) }), cell("A2", { areaHa: 1, coverKgPerHa: 2050, growthByMonth: Array<number>(12).fill(0) })], groups: [group("Cows")],
  });

  it("names day, cell, rule and figures of grazers kept in the yard", () => {
    const laid = walkedPlan(short, daysOf(short, "Cows", TURNS));
    // the plan in the usual year: six days in A2, then back to A1 is not in it: the last day falls to the yard
    const year = walkThrough(laid, steadyYear(laid.season, 1));
    expect(year.daysAmiss).toBe(1);
    expect(year.failure).toEqual({
      day: 13, cause: "grass", rule: "residual-cover", group: "Cows", cell: "A2", found: "1440 kg DM/ha left", allowed: "at least 1500 kg DM/ha left", inYard: true,
    });
  });

  it("puts a rule that broke down to the move that was late", () => {
    const farm = tinyFarm({ days: 8, cells: [cell("A1", { growthByMonth: Array<number>(12).fill(0) }), cell("A2"), cell("A3")], groups: [group("Cows")] });
    const laid = walkedPlan(farm, daysOf(farm, "Cows", "A1 A1 A1 A2 A2 A3 A3 A3"));
    const usual = steadyYear(laid.season, 1);
    expect(walkThrough(laid, usual).failure).toBeNull();
    // 2,600 less four days of 287.5: 1,450
    const slips = usual.slips.map((days) => days.map((_, t) => (t === 3 ? 1 : 0)));
    expect(walkThrough(laid, { ...usual, slips }).failures).toMatchObject({
      grass: null, away: null, late: { day: 3, rule: "residual-cover", cell: "A1", found: "1450 kg DM/ha left", inYard: false },
    });
  });
});
