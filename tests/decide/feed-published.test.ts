/** The feed budget against printed worked examples; each source stands beside its case. */
import { describe, expect, it } from "vitest";
import { feedBudget } from "../../src/decide/feed-budget.js";
import { carries } from "../../src/decide/feed/carry.js";
import { groupNeed } from "../../src/decide/land.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { UNITS } from "../../src/quantity/units.js";
import { buildSeason } from "../../src/season/build-season.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";
import { bare } from "../rules/animals.js";
import { plainFarm } from "./feed-farms.js";

const solver = highsSolver();
const LB = UNITS.weight["lb"]!;
const ACRE = UNITS.area["ac"]!;
const LB_PER_ACRE = UNITS.cover["lb/ac"]!;
const RESIDUAL = 1500;

/** One acre that does not grow, with so much to eat on it. */
const acre = (lbPerAcre: number) => bare("A1", RESIDUAL + lbPerAcre * LB_PER_ACRE, { areaHa: ACRE });
const carriedBy = async (farm: Scenario) => (await carries(await feedBudget(buildSeason(farm), solver), solver))[0]!.withoutHay;

describe("what the land carries", () => {
  // USDA-NRCS Missouri, "Grazing Management to Meet Animal Performance Targets": 8,000 lb/ac, 65 % used, 3 % of live weight, 200 d,
  // steers from 500 to 800 lb (mean 650): 1.33 an acre
  it("is 1.33 growing steers an acre for 200 days", async () => {
    const steers = group("Steers", { animalClass: "growing", head: 1, weightKg: 500 * LB, gainKgPerDay: (300 * LB) / 199, intake: { shareOfWeight: 0.03, youngShareOfWeight: 0 } });
    const { times, head } = await carriedBy(plainFarm({ days: 200, cells: [acre(8000 * 0.65)], groups: [steers] }));
    expect(times).toBeCloseTo(1.333, 3);
    expect(head).toEqual([1]);
  });

  // Univ. of Maine pasture course, lesson 5, "A Simpler Approach": 9 cow-days (of 30 lb) an acre-inch, 5 in above the residual: 45 cow-days an acre
  it("is one cow on an acre for 45 days, and not for 46", async () => {
    const cow = group("Cows", { head: 1, intake: { kgDmPerHeadDay: 30 * LB } });
    const heads = await Promise.all([45, 46].map(async (days) => (await carriedBy(plainFarm({ days, cells: [acre(9 * 30 * 5)], groups: [cow] }))).head));
    expect(heads).toEqual([[1], [0]]);
  });

  // Univ. of Illinois Extension, stockpiled grass: 2,000 lb/ac, 70 % used, 42 lb a cow and day: 33 cow-days
  it("is 33 cow-days of stockpiled grass", async () => {
    const cow = group("Cows", { head: 1, intake: { kgDmPerHeadDay: 42 * LB } });
    const heads = await Promise.all([33, 34].map(async (days) => (await carriedBy(plainFarm({ days, cells: [acre(2000 * 0.7)], groups: [cow] }))).head));
    expect(heads).toEqual([[1], [0]]);
  });

  it("is as many as need no hay when the budget is made for them, and no more", async () => {
    const farm = (head: number) => plainFarm({ days: 60, cells: [cell("A", { areaHa: 2 }), cell("B", { areaHa: 1.2, coverKgPerHa: 1900 })], groups: [group("Cows", { head })], rules: { "entry-cover": { use: "hard" }, "rest-period": { use: "charged" } } });
    const { head: [most] } = await carriedBy(farm(3));
    const hayDays = async (head: number) => (await feedBudget(buildSeason(farm(head)), solver)).weeks.reduce((sum, week) => sum + week.groups[0]!.hayDays, 0);
    expect(most).toBeGreaterThan(3);
    expect(await hayDays(most!)).toBeCloseTo(0, 6);
    expect(await hayDays(most! + 1)).toBeGreaterThan(0.01);
  });

  it("grows with the hay in store by what the hay feeds", async () => {
    // five cows eat 75 kg a day and the yard takes 75 / 0.88 / 0.9 / 0.95 kg of hay; 30 days of grass for five, 40 days: hay for 10
    const farm = plainFarm({ days: 40, cells: [bare("A", RESIDUAL + 30 * 75, { areaHa: 1 })], groups: [group("Cows")], more: { hay: { inStoreKg: (10 * 75) / 0.88 / 0.9 / 0.95, winterNeedKg: 0, dryMatter: 0.88, feedOutLoss: 0.1, storeLoss: 0.05 } } });
    const [found] = await carries(await feedBudget(buildSeason(farm), solver), solver);
    expect([found!.withoutHay.times, found!.withHay.times]).toEqual([expect.closeTo(0.75, 6), expect.closeTo(1, 6)]);
  });
});

describe("days of grass ahead", () => {
  /** A hectare that ends a week with so much above the residual, eaten at so much a day. */
  async function daysAfterAWeek(aboveKg: number, headOf: number, kgEach: number, residual = RESIDUAL): Promise<number | null> {
    const farm = plainFarm({
      days: 7, cells: [bare("A", residual + aboveKg + 7 * headOf * kgEach, { areaHa: 1 })], groups: [group("Cows", { head: headOf, intake: { kgDmPerHeadDay: kgEach } })],
      rules: { "residual-cover": { figures: { grazers: residual } } },
    });
    return (await feedBudget(buildSeason(farm), solver)).weeks[0]!.daysInHand;
  }

  // Irish Farmers Journal, "Farmer know-how: grassland management": 3 livestock units/ha of 18 kg; 702, 864, 540 kg/ha: 13, 16, 10 days
  it.each([[702, 13], [864, 16], [540, 10]])("are, of %s kg/ha, %s", async (above, days) => {
    expect(await daysAfterAWeek(above, 3, 18)).toBeCloseTo(days, 6);
  });

  // Irish Farmers Journal 500350: (800 - 550) / 20 = 12.5, printed as 12 days left
  it("are 12 and a half of 800 down to 550 at 20 a day", async () => {
    expect(await daysAfterAWeek(800 - 550, 1, 20, 550)).toBeCloseTo(12.5, 6);
  });
});

describe("cells needed", () => {
  // Penn State, "Four Steps to Rotational Grazing", step 3: 35 days of rest, 3 of grazing: 13. Univ. of Florida IFAS: 28 and 4: 8
  it.each([[35, 3, 13], [28, 4, 8]])("are, for %s days of rest and %s of grazing, %s", (rest, stay, cells) => {
    const farm = tinyFarm({ cells: [cell("A")], groups: [group("Cows")], rules: { "rest-period": { figures: { flush: 21, midsummer: rest } }, "stay-limit": { figures: { cattle: stay } } } });
    expect(groupNeed(buildSeason(farm), 0).cellsNeeded).toBe(cells);
  });
});

describe("hay for days kept in", () => {
  // Iowa Beef Center, calculating winter hay needs: 150 cows of 1,200 lb at 2.5 %, 180 d: 405 short tons of dry matter; at 85 % dry matter
  // and 5 % waste 501
  it("is 501 short tons for 150 cows and 180 days", async () => {
    const cows = group("Cows", { head: 150, weightKg: 1200 * LB, out: { firstDay: "2030-01-01", lastDay: "2030-01-02" } });
    const farm = tinyFarm({ days: 180, cells: [cell("A")], groups: [cows], more: { hay: { inStoreKg: 0, winterNeedKg: 0, dryMatter: 0.85, feedOutLoss: 0.05, storeLoss: 0 } } });
    const { weeks } = await feedBudget(buildSeason(farm), solver);
    const tons = (of: (week: (typeof weeks)[number]) => number) => weeks.reduce((sum, week) => sum + of(week), 0) / UNITS.weight["short ton"]!;
    expect(tons((week) => week.keptInHayKg)).toBeCloseTo(405, 6);
    expect(tons((week) => week.groups[0]!.keptInHayStoredKg)).toBeCloseTo(501.5, 0);
  });
});

describe("growth", () => {
  // Logistic regrowth, closed form: at a ceiling of 5,000 and 0.07 a day, 1,500 becomes 3,000 kg/ha in (1 / 0.07) ln(3000 x 3500 / (1500 x 2000)) = 17.9 days
  it("of ground that nobody uses is the closed form's", async () => {
    const farm = plainFarm({ days: 18, cells: [cell("A", { areaHa: 1, coverKgPerHa: 1500, growthByMonth: Array<number>(12).fill(87.5) })], groups: [group("Cows", { here: [{ firstDay: "2027-05-01", lastDay: "2027-05-01" }], out: { firstDay: "2030-01-01", lastDay: "2030-01-02" } })], more: { ceilingCover: 5000 } });
    const grown = (await feedBudget(buildSeason(farm), solver)).weeks.reduce((sum, week) => sum + week.grownKg, 0);
    expect(grown).toBeCloseTo(5000 / (1 + (5000 / 1500 - 1) * Math.exp(-0.07 * 18)) - 1500, 6);
    expect(grown).toBeGreaterThan(1500);
    expect(grown).toBeLessThan(1600);
  });
});
