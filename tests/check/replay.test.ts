import { describe, expect, it } from "vitest";
import { replayPlan } from "../../src/check/replay.js";
import type { Plan } from "../../src/plan/plan.js";
import { cell, group, tinyFarm, type TinyFarm } from "../fixtures/tiny-farm.js";
import { bare, cows, ewes, hens, pigs } from "../rules/animals.js";
import { day, planFromRows, type Rows } from "../rules/grid.js";

const EMPTY: Plan = { stays: [], cuts: [] };

function replayed(farm: TinyFarm, rows: Rows, cuts: readonly string[] = []) {
  const scenario = tinyFarm(farm);
  return replayPlan(scenario, planFromRows(scenario, rows, cuts));
}

/** Outside truth: the logistic law dB/dt = 4 g (B/K)(1 - B/K) stepped by the classical Runge-Kutta method. */
function logisticByRungeKutta(cover: number, growth: number, ceiling: number, days: number): number {
  const slope = (b: number) => 4 * growth * (b / ceiling) * (1 - b / ceiling);
  const step = 1 / 50;
  let b = cover;
  for (let i = 0; i < days * 50; i++) {
    const k1 = slope(b);
    const k2 = slope(b + (step / 2) * k1);
    const k3 = slope(b + (step / 2) * k2);
    const k4 = slope(b + step * k3);
    b += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  return b;
}

describe("ground without animals", () => {
  const twoMonths = Array.from({ length: 12 }, (_, month) => (month === 4 ? 60 : month === 5 ? 30 : 0));

  it("grows by the logistic law, month by month", () => {
    const { cover } = replayed({ days: 61, cells: [cell("A", { coverKgPerHa: 1500, growthByMonth: twoMonths })], groups: [] }, {}).cells[0]!;
    const endOfMay = logisticByRungeKutta(1500, 60, 5000, 31);
    expect(cover).toHaveLength(62);
    expect(cover[31]).toBeCloseTo(endOfMay, 4);
    expect(cover[61]).toBeCloseTo(logisticByRungeKutta(endOfMay, 30, 5000, 30), 4);
  });

  it("has grown since the day its cover was known", () => {
    const known = cell("A", { coverKgPerHa: 1500, growthByMonth: Array<number>(12).fill(40), coverDate: "2027-04-21" });
    expect(replayed({ cells: [known], groups: [] }, {}).cells[0]!.cover[0]).toBeCloseTo(logisticByRungeKutta(1500, 40, 5000, 10), 4);
  });

  it("stands still until a later day on which its cover is known", () => {
    const rented = cell("A", { coverKgPerHa: 1500, coverDate: day(4), ours: { firstDay: day(4), lastDay: day(9) } });
    const { cover, inHand } = replayed({ days: 10, cells: [rented], groups: [] }, {}).cells[0]!;
    expect(cover.slice(0, 4)).toEqual([1500, 1500, 1500, 1500]);
    expect(cover[4]).toBeCloseTo(logisticByRungeKutta(1500, 50, 5000, 1), 4);
    expect([...inHand]).toEqual([0, 0, 0, 1, 1, 1, 1, 1, 1, 0]);
  });

  it("above its ceiling falls back", () => {
    const { cover } = replayed({ days: 5, cells: [cell("A", { coverKgPerHa: 5500 })], groups: [] }, {}).cells[0]!;
    expect(cover[5]).toBeLessThan(5500);
    expect(cover[5]).toBeGreaterThan(5000);
  });
});

describe("grazing", () => {
  it("takes intake and what is trodden from the open ground, then grows", () => {
    // 75 kg DM and 15 % of 0.3 ha: 287.5 kg/ha
    const { cover } = replayed({ days: 3, cells: [cell("A", { coverKgPerHa: 2600 })], groups: [cows()] }, { Cows: "A*2 yard" }).cells[0]!;
    const second = logisticByRungeKutta(2600 - 287.5, 50, 5000, 1);
    expect(cover[1]).toBeCloseTo(second, 4);
    expect(cover[2]).toBeCloseTo(logisticByRungeKutta(second - 287.5, 50, 5000, 1), 4);
  });

  it("parts what goes into eaten and trodden, and takes no more than stands", () => {
    // 0.3 ha x 250 kg/ha above the 50 that stay: 75 kg go, of which 75 / 1.15 eaten
    const { cover, balance } = replayed({ days: 2, cells: [bare("A", 300)], groups: [cows()] }, { Cows: "A*2" }).cells[0]!;
    expect(cover[1]).toBeCloseTo(50, 9);
    expect(balance.eaten).toBeCloseTo(75 / 1.15, 9);
    expect(balance.trodden).toBeCloseTo(75 - 75 / 1.15, 9);
    expect(balance.end).toBeCloseTo(15, 9);
  });

  it("goes by the weight of the day, and each batch begins at the first weight again", () => {
    const batches = cows({ weightKg: 100, gainKgPerDay: 1, head: 1, here: [{ firstDay: "2027-04-30", lastDay: day(2) }, { firstDay: day(4), lastDay: day(5) }] });
    const { groups } = replayed({ days: 5, cells: [cell("A")], groups: [batches] }, { Cows: "A*2 . A*2" });
    expect([...groups[0]!.alone.weightKg]).toEqual([101, 102, 0, 100, 101]);
    expect([...groups[0]!.alone.intakeKg]).toEqual([2.525, 2.55, 0, 2.5, 2.525].map((kg) => expect.closeTo(kg, 9)));
  });

  it("counts young ones in weight, intake and nitrogen, with shares of their own", () => {
    const { groups } = replayed({ days: 1, cells: [cell("A")], groups: [cows({ young: { head: 4, weightKg: 100, gainKgPerDay: 1 } })] }, { Cows: "A" });
    const { weightKg, intakeKg, nitrogenKg } = groups[0]!.alone;
    expect([weightKg[0], intakeKg[0], nitrogenKg[0]]).toEqual([3400, 81, 5 * 0.227 + 4 * 0.023].map((x) => expect.closeTo(x, 9)));
  });

  it("adds those that run with a group to it, on those days only", () => {
    const bull = group("Bull", { head: 1, weightKg: 1000, runsWith: { with: "Cows", days: [{ firstDay: day(2), lastDay: day(2) }] } });
    const { groups, stays } = replayed({ days: 3, cells: [cell("A"), cell("B")], groups: [cows(), bull] }, { Cows: "A*3", Bull: "B A B" });
    expect([...groups[0]!.party.intakeKg]).toEqual([75, 100, 75]);
    expect([...groups[1]!.party.intakeKg]).toEqual([25, 0, 25]);
    expect(stays.map(({ group: g, first, last }) => [g, first, last])).toEqual([[0, 0, 2], [1, 0, 0], [1, 2, 2]]);
  });

  it("joins lines of a group in a cell on touching days into one stay", () => {
    const scenario = tinyFarm({ days: 6, cells: [cell("A")], groups: [cows()] });
    const line = (first: number, last: number) => ({ group: "Cows", cell: "A", yard: null, firstDay: day(first), lastDay: day(last) });
    expect(replayPlan(scenario, { stays: [line(4, 5), line(1, 3)], cuts: [] }).stays).toEqual([{ group: 0, cell: 0, first: 0, last: 4, days: 5 }]);
  });

  it("leaves out a second group typed into a cell", () => {
    const alone = replayed({ days: 4, cells: [cell("A")], groups: [cows(), ewes()] }, { Cows: "A*4" }).cells[0]!;
    const shared = replayed({ days: 4, cells: [cell("A")], groups: [cows(), ewes()] }, { Cows: "A*4", Ewes: "A*4" }).cells[0]!;
    expect(shared.cover).toEqual(alone.cover);
  });
});

describe("strips", () => {
  it("of birds are taken week by week, grazed, shut and joined again", () => {
    // 7 days: positions on days 1, 4 and 7, 0.09 ha; 1.5 x 7 x 1.15 = 12.075 kg go. Then 21 days shut: open on day 29
    const { lots, open, cover, shut } = replayed({ days: 30, cells: [bare("A", 2600)], groups: [hens()] }, { Hens: "A*7 yard*23" }).cells[0]!;
    expect(lots.map(({ first, last, areaHa }) => [first, last, areaHa])).toEqual([[0, 6, expect.closeTo(0.09, 12)]]);
    expect([open[0], open[1], open[27], open[28]]).toEqual([0.3, expect.closeTo(0.21, 12), expect.closeTo(0.21, 12), 0.3]);
    expect([shut[0], shut[27], shut[28]]).toEqual([1, 1, 0]);
    expect([cover[27], cover[28]]).toEqual([expect.closeTo(2600, 9), expect.closeTo(2600 - 12.075 / 0.3, 9)]);
  });

  it("go on from week to week with the days of the stay, not of the week", () => {
    // 10 days of 3-day positions: days 1, 4, 7 in the first week, day 10 in the second
    const { lots } = replayed({ days: 10, cells: [bare("A", 2600)], groups: [hens()] }, { Hens: "A*10" }).cells[0]!;
    expect(lots.map(({ first, last, wantedHa }) => [first, last, wantedHa])).toEqual([[0, 6, expect.closeTo(0.09, 12)], [7, 9, expect.closeTo(0.03, 12)]]);
  });

  it("take no lot in a week in which no position begins", () => {
    const { lots } = replayed({ days: 16, cells: [bare("A", 2600)], groups: [pigs({}, { days: 14 })] }, { Pigs: "A*16" }).cells[0]!;
    expect(lots.map(({ first, last, wantedHa }) => [first, last, wantedHa])).toEqual([[0, 6, 0.02], [14, 15, 0.02]]);
  });

  it("of pigs are turned to what rooting leaves; what they do not eat is trodden", () => {
    // 0.02 ha from 2,600 to 500: 42 kg go, of which eight pigs eat 0.3 kg for 7 days: 16.8
    const { balance, shut } = replayed({ days: 8, cells: [bare("A", 2600)], groups: [pigs()] }, { Pigs: "A*7 yard" }).cells[0]!;
    expect([balance.eaten, balance.trodden]).toEqual([expect.closeTo(16.8, 9), expect.closeTo(25.2, 9)]);
    expect(shut[7]).toBe(2);
  });

  it("grow again from the day after their week", () => {
    const { balance } = replayed({ days: 9, cells: [cell("A")], groups: [hens()] }, { Hens: "A*7 yard*2" }).cells[0]!;
    const grazed = 2600 - 12.075 / 0.09;
    const end = logisticByRungeKutta(2600, 50, 5000, 9) * 0.21 + logisticByRungeKutta(grazed, 50, 5000, 2) * 0.09;
    expect(balance.end).toBeCloseTo(end, 4);
  });

  it("stay shut until the last of them is ready", () => {
    // hens' ground of days 1 to 7 alone would open on day 29; that of day 12 holds it until day 34
    const { open } = replayed({ days: 36, cells: [bare("A", 2600)], groups: [hens()] }, { Hens: "A*7 yard*4 A yard*24" }).cells[0]!;
    expect([open[28], open[32], open[33]]).toEqual([expect.closeTo(0.18, 12), expect.closeTo(0.18, 12), 0.3]);
  });

  it("are left to graze round behind a back fence", () => {
    // 86.25 kg of the 0.21 ha left open: 410.7 kg/ha
    const { cover } = replayed({ days: 9, cells: [bare("A", 2600)], groups: [hens(), cows()] }, { Hens: "A*7 yard*2", Cows: "yard*7 A yard" }).cells[0]!;
    expect(cover[8]).toBeCloseTo(2600 - 86.25 / 0.21, 9);
  });
});

describe("cuts", () => {
  it("take the open ground to stubble in the evening, after the day's growth", () => {
    const { cover, cuts, balance } = replayed({ days: 3, cells: [cell("A", { coverKgPerHa: 4000 })], groups: [] }, {}, ["A hay 2"]).cells[0]!;
    const stands = logisticByRungeKutta(4000, 50, 5000, 2);
    expect(cuts).toHaveLength(1);
    expect(cuts[0]!.coverKgPerHa).toBeCloseTo(stands, 4);
    expect(cuts[0]!.hayKg).toBeCloseTo(((stands - 1800) * 0.3 * 0.8) / 0.88, 4);
    expect(cover[2]).toBe(1800);
    expect(balance.cut).toBeCloseTo((stands - 1800) * 0.3, 4);
  });

  it("of short grass take nothing", () => {
    const { cover, cuts } = replayed({ days: 2, cells: [bare("A", 1500)], groups: [] }, {}, ["A hay 1"]).cells[0]!;
    expect([cover[1], cuts[0]!.hayKg]).toEqual([1500, 0]);
  });

  it("that the owner fixed are made whether the plan lists them or not", () => {
    const closed = cell("A", { closed: [{ firstDay: day(1), lastDay: day(2), reason: "hay" }], coverKgPerHa: 4000 });
    const { cuts } = replayPlan(tinyFarm({ days: 3, cells: [closed], groups: [] }), EMPTY).cells[0]!;
    expect(cuts.map(({ day: t, owners, listed }) => [t, owners, listed])).toEqual([[1, true, false]]);
  });
});
