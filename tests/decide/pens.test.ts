/** What pens come to over a season, cell by cell, and what a plan takes of their ground. */
import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { checkPlan } from "../../src/check/check-plan.js";
import { pensOfFarm, type PenInCell, type PenOnFarm } from "../../src/decide/pens/pens-of-farm.js";
import type { Cell, Group, Scenario, Strip } from "../../src/farm/scenario.js";
import type { Plan, Stay } from "../../src/plan/plan.js";
import { addDays } from "../../src/quantity/calendar.js";
import { cell, group, tinyFarm, type TinyFarm } from "../fixtures/tiny-farm.js";
import { lShape, rectangle } from "../science/ground-shapes.js";

const FIRST = "2027-05-01";

function penOf(sidesM: readonly [number, number], days: number, count = 1, more: Partial<Strip> = {}): Strip {
  return { areaHa: (sidesM[0] * sidesM[1] * count) / 10_000, days, movedBy: "hand", stepMinutes: 10, nets: 0, pen: "Ark", each: { sidesM, count }, ...more };
}

function hens(strip: Strip, more: Partial<Group> = {}): Group {
  return group("Hens", { letter: "L", kind: "layers", animalClass: "", head: 40, nitrogenKgPerHeadDay: 0.001534, intake: { kgDmPerHeadDay: 0.025 }, strip, ...more });
}

function farm(cells: readonly Cell[], groups: readonly Group[], more: Partial<TinyFarm> = {}): Scenario {
  return tinyFarm({ days: 100, firstDay: FIRST, cells, groups, ...more });
}

function stay(name: string, at: string, first: number, last: number): Stay {
  return { group: name, cell: at, yard: null, firstDay: addDays(FIRST, first), lastDay: addDays(FIRST, last) };
}

function planOf(...stays: readonly Stay[]): Plan {
  return { stays, cuts: [] };
}

function onlyPen(scenario: Scenario, plan: Plan | null = null): PenOnFarm {
  return pensOfFarm(scenario, plan).find((pen) => pen.group.name === "Hens")!;
}

function firstCell(scenario: Scenario, plan: Plan | null = null): PenInCell {
  return onlyPen(scenario, plan).cells[0]!;
}

describe("what a pen works in a season", () => {
  it("common practice: 2.4 x 3.0 m moved every second day for 200 days works 100 positions, 0.072 ha, a seventieth of 5 ha", () => {
    const cells = Array.from({ length: 10 }, (_, i) => cell(`H${i}`, { areaHa: 0.5 }));
    const pen = onlyPen(farm(cells, [hens(penOf([2.4, 3], 2))], { days: 200 }));
    expect([pen.daysOut, pen.worked]).toEqual([200, 100]);
    expect(pen.workedHa).toBeCloseTo(0.072, 12);
    expect(Math.round(1 / pen.shareOfFarm / 10) * 10).toBe(70);
  });

  it("counts days by the farm file: here, out, and under no housing order; each batch begins a position anew", () => {
    const here = [{ firstDay: FIRST, lastDay: addDays(FIRST, 9) }, { firstDay: addDays(FIRST, 20), lastDay: addDays(FIRST, 49) }];
    const housingOrders = [{ name: "autumn", known: FIRST, kinds: ["layers" as const], firstDay: addDays(FIRST, 40), lastDay: addDays(FIRST, 99) }];
    const pen = onlyPen(farm([cell("H1")], [hens(penOf([2.4, 3], 3), { here })], { more: { housingOrders } }));
    // 10 days and 20 days: 4 and 7 positions of three days
    expect([pen.daysOut, pen.worked, pen.firstOut]).toEqual([30, 11, FIRST]);
  });

  it("with a plan, counts what the plan uses", () => {
    const pen = onlyPen(farm([cell("H1"), cell("H2")], [hens(penOf([2.4, 3], 2))]), planOf(stay("Hens", "H1", 0, 9), stay("Hens", "H2", 10, 12)));
    expect(pen.worked).toBe(7);
  });
});

describe("positions", () => {
  it("are those of the shape where it is known, else counted by area, with a square only as if", () => {
    const ring = lShape(30, 30, 15, 15);
    const scenario = farm([cell("H1", { areaHa: 0.0675, boundary: { rings: [ring] } }), cell("H2", { areaHa: 0.0675 })], [hens(penOf([4, 4], 1))]);
    const [known, byArea] = onlyPen(scenario).cells as [PenInCell, PenInCell];
    // three lanes of 7 in the broad part, 12 m of its 15, and four lanes of 3 above them
    expect([known.layout.asIf, known.positions, known.layout.lanes.length]).toEqual([false, 33, 7]);
    expect(byArea).toMatchObject({ positions: 42, layout: { asIf: true, positions: 36 } });
  });

  it("of two pens that stand at once take two places each", () => {
    const boundary = { rings: [rectangle(20, 12)] };
    const one = firstCell(farm([cell("H1", { areaHa: 0.024, boundary })], [hens(penOf([4, 4], 1, 2))]));
    expect([one.layout.middles.length, one.positions, one.lastsDays]).toEqual([15, 7, 7]);
  });

  it("of strips without sides are squares of their area", () => {
    const pigs = group("Hens", { kind: "pigs", head: 8, strip: { areaHa: 0.0144, days: 7, movedBy: "hand", stepMinutes: 60, nets: 0, pen: null } });
    const one = firstCell(farm([cell("H1", { areaHa: 0.12, boundary: { rings: [rectangle(50, 24)] } })], [pigs]));
    expect([one.layout.alongM, one.layout.acrossM, one.positions]).toEqual([12, 12, 8]);
  });
});

describe("outside truth: nitrogen on the footprint", () => {
  // USDA-NRCS, highest published nitrogen of a table bird, 0.067 kg (shared/poultry.json); 75 birds on 11.1 m2 moved daily for 35 days: arithmetic.
  const broilers = hens(penOf([3.7, 3], 1), { kind: "broilers", head: 75, nitrogenKgPerHeadDay: 0.067 / 35, intake: { kgDmPerHeadDay: 0.0107 } });

  it("75 table birds lay down 129 kg N/ha a pass: one pass stays under 250 kg, a second would not, nor two days", () => {
    const one = firstCell(farm([cell("H1")], [broilers]));
    expect(Math.round(one.run.nitrogenKgPerHa)).toBe(129);
    expect(one.run.passesUnderCeiling).toBe(1);
    expect(one.limits.find(({ by }) => by === "nitrogen")!.days).toBe(1);
  });

  it("what lay there within twelve months before counts, what lay there earlier does not", () => {
    const past = (day: string) => farm([cell("H1", { pastNitrogen: [{ day, kgPerHa: 125 }] })], [broilers]);
    expect(firstCell(past("2026-09-01")).run.passesUnderCeiling).toBe(0);
    expect(firstCell(past("2026-09-01")).step).toBe(null);
    expect(firstCell(past("2026-04-01")).run.passesUnderCeiling).toBe(1);
  });

  it("what other animals drop there in the plan counts, its own birds' does not", () => {
    const scenario = farm([cell("H1")], [group("Cows"), broilers]);
    const ownOnly = firstCell(scenario, planOf(stay("Hens", "H1", 0, 40)));
    expect(ownOnly.run.passesUnderCeiling).toBe(1);
    // 5 cows at 0.227 kg N a day on 0.3 ha: 3.78 kg/ha a day, so that 32 days leave less than 129 of 250
    expect(firstCell(scenario, planOf(stay("Cows", "H1", 50, 80))).run.passesUnderCeiling).toBe(1);
    expect(firstCell(scenario, planOf(stay("Cows", "H1", 50, 82))).run.passesUnderCeiling).toBe(0);
  });
});

describe("how long on one position", () => {
  it("is the least of the rule for steps, nitrogen and the grass under the birds, each with its source", () => {
    const assumed = [{ key: "pen-steps most-step", value: "3 d", source: "a page", status: "verified" }];
    const one = firstCell(farm([cell("H1", { coverKgPerHa: 2050 })], [hens(penOf([4, 5], 2))], { more: { assumed } }));
    // 2,000 kg/ha over 20 m2 are 4 kg; 40 hens eat and tread 1.15 kg a day; 0.0614 kg N a day on 20 m2 are 30.7 kg/ha
    expect(one.limits).toEqual([
      { by: "step", days: 3, source: "a page" }, { by: "grass", days: 3, source: "the farm file" }, { by: "nitrogen", days: 8, source: "the farm file" },
    ]);
    expect(one.step).toBe(2);
  });

  it("shortens a step that the ground does not bear, and says what would last the season", () => {
    const crowded = firstCell(farm([cell("H1", { coverKgPerHa: 1250 })], [hens(penOf([4, 5], 3))]));
    expect(crowded.limits[0]).toMatchObject({ by: "grass", days: 2 });
    expect(crowded.step).toBe(2);
    // 100 days: at 3 days 34 positions are wanted, at 2 days 50; 0.1 ha holds 50
    const small = firstCell(farm([cell("H1", { areaHa: 0.1 })], [hens(penOf([4, 5], 1))]));
    expect([small.positions, small.stepToLast]).toEqual([50, 2]);
  });

  it("of pigs is the pressure: 8 pigs on 160 m2 reach 3,600 pig-days/ha after 7 days", () => {
    const pigs = group("Hens", { kind: "pigs", head: 8, nitrogenKgPerHeadDay: 0.024, strip: { areaHa: 0.016, days: 7, movedBy: "hand", stepMinutes: 60, nets: 0, pen: null } });
    expect(firstCell(farm([cell("H1")], [pigs])).limits).toMatchObject([{ by: "pressure", days: 7 }, { by: "nitrogen", days: 20 }]);
  });
});

describe("fresh ground in a plan", () => {
  const strip = penOf([5, 4], 3);

  it("is taken in order, counted on from stay to stay", () => {
    const scenario = farm([cell("H1", { areaHa: 0.1 }), cell("H2")], [hens(strip)]);
    const taken = firstCell(scenario, planOf(stay("Hens", "H1", 0, 9), stay("Hens", "H2", 10, 20), stay("Hens", "H1", 21, 26))).taken!;
    expect(taken.stays.map(({ firstPosition, lastPosition }) => [firstPosition, lastPosition])).toEqual([[1, 4], [5, 6]]);
    expect([taken.used, taken.left, taken.runsOut]).toEqual([6, 44, null]);
  });

  it("runs out on the day on which one position more is wanted than there are", () => {
    const scenario = farm([cell("H1", { areaHa: 0.02 })], [hens(strip)]);
    expect(firstCell(scenario, planOf(stay("Hens", "H1", 0, 29))).taken).toMatchObject({ used: 10, left: 0, runsOut: null });
    expect(firstCell(scenario, planOf(stay("Hens", "H1", 0, 30))).taken).toMatchObject({ used: 10, left: 0, runsOut: addDays(FIRST, 30) });
  });

  it("comes back when its rest is over", () => {
    const rules = { "poultry-rest": { figures: { layers: 30 } } };
    const scenario = farm([cell("H1", { areaHa: 0.02 })], [hens(strip)], { rules });
    // the first position is left on day 2: thirty days later is day 33
    expect(firstCell(scenario, planOf(stay("Hens", "H1", 0, 29), stay("Hens", "H1", 33, 40))).taken!.runsOut).toBe(null);
    expect(firstCell(scenario, planOf(stay("Hens", "H1", 0, 29), stay("Hens", "H1", 32, 40))).taken!.runsOut).toBe(addDays(FIRST, 32));
  });

  it("is short of what rests from before the season, and of what other birds took", () => {
    const past = [{ by: "layers" as const, lastDay: addDays(FIRST, -200), share: 0.25 }];
    const one = firstCell(farm([cell("H1", { areaHa: 0.02, past })], [hens(strip)]), planOf(stay("Hens", "H1", 0, 23)));
    expect(one.resting).toEqual({ share: 0.25, until: addDays(FIRST, 70) });
    expect(one.taken!.runsOut).toBe(addDays(FIRST, 21));
    const ducks = { ...hens(penOf([5, 4], 3)), name: "Ducks", letter: "D", kind: "ducks" as const };
    const shared = farm([cell("H1", { areaHa: 0.02 })], [ducks, hens(strip)]);
    expect(firstCell(shared, planOf(stay("Ducks", "H1", 0, 14), stay("Hens", "H1", 20, 34))).taken).toMatchObject({ left: 0, runsOut: null });
    expect(firstCell(shared, planOf(stay("Ducks", "H1", 0, 14), stay("Hens", "H1", 20, 35))).taken!.runsOut).toBe(addDays(FIRST, 35));
  });

  it("runs out by this count exactly where the check says that birds find no rested ground", () => {
    const whole = (min: number, max: number) => fc.integer({ min, max });
    fc.assert(fc.property(whole(2, 12), whole(0, 11), whole(1, 40), whole(1, 40), (room, used, first, second) => {
      const past = [{ by: "layers" as const, lastDay: addDays(FIRST, -20), share: Math.min(used, room) / room }];
      const scenario = farm([cell("H1", { areaHa: room * strip.areaHa, past })], [hens(strip)]);
      const plan = planOf(stay("Hens", "H1", 0, first - 1), stay("Hens", "H1", 50, 49 + second));
      const broken = checkPlan(scenario, plan).breaches.some(({ rule }) => rule === "poultry-rest");
      expect(firstCell(scenario, plan).taken!.runsOut !== null).toBe(broken);
    }), { numRuns: 200, seed: 15 });
  });
});
