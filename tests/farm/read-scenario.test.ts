import { describe, expect, it } from "vitest";
import { lowAcre, LOW_ACRE, scenarioOf, scenarioText } from "./read-text.js";

const withyEnd = scenarioOf(scenarioText("withy-end.yaml"));
const cell = (name: string) => withyEnd.cells.find((c) => c.name === name)!;
const group = (name: string) => withyEnd.groups.find((g) => g.name === name)!;

describe("readScenario", () => {
  it("reads the demo farm: 18 cells in five fields, 4.9 ha, four groups", () => {
    expect(withyEnd.cells.length).toBe(18);
    expect(withyEnd.fields.map((f) => f.name)).toEqual(["Home field", "Apple garth", "Knoll", "Far field", "Water meadow"]);
    expect(withyEnd.cells.reduce((sum, c) => sum + c.areaHa, 0)).toBeCloseTo(4.9, 1);
    expect(withyEnd.groups.map((g) => [g.name, g.letter, g.head])).toEqual([["Cows", "C", 5], ["Layers", "L", 60], ["Broilers", "B", 150], ["Pigs", "P", 8]]);
  });

  it("lets a field's word hold for its cells, and a cell's own win", () => {
    expect([cell("H1").past, cell("H4").past]).toEqual([
      [{ by: "cattle", lastDay: "2026-10-20", share: 1 }],
      [{ by: "cattle", lastDay: "2026-10-20", share: 1 }, { by: "layers", lastDay: "2026-09-28", share: 0.2 }],
    ]);
    expect(cell("W2").fenceM).toBe(220);
    // Two sides of a square of 0.47 ha.
    expect(cell("W1").fenceM).toBeCloseTo(2 * Math.sqrt(4700), 9);
  });

  it("reads closed days with open ends as the season's", () => {
    expect(cell("W1").closed).toEqual([
      { reason: "wet", firstDay: "2027-04-10", lastDay: "2027-05-07" },
      { reason: "wet", firstDay: "2027-10-11", lastDay: "2027-10-31" },
    ]);
    expect(cell("K2").closed).toEqual([{ reason: "nesting", firstDay: "2027-04-10", lastDay: "2027-06-20" }]);
  });

  it("scales the growth row", () => {
    // Row oceanic-b has 75 kg DM/ha/day in May.
    expect(cell("H1").growthByMonth[4]).toBeCloseTo(75 * 0.55, 9);
  });

  it("turns pens, nets and strips into ground: (50/4)^2 m2 in the net, 2 x 3.6 x 4 m2 in the pens, 160 m2 for the pigs", () => {
    expect(group("Layers").strip).toMatchObject({ areaHa: 0.015625, days: 3, movedBy: "tow", nets: 1, stepMinutes: 70 });
    expect(group("Broilers").strip).toMatchObject({ areaHa: 0.00288, days: 1, movedBy: "hand", nets: 0, stepMinutes: 20 });
    expect(group("Pigs").strip).toMatchObject({ areaHa: 0.016, days: 7, pen: null });
  });

  it("keeps birds in from housing on, and out from turnout on", () => {
    expect(group("Layers").out).toEqual({ firstDay: "2027-04-28", lastDay: "2027-10-23" });
    expect(group("Broilers").here).toEqual([{ firstDay: "2027-05-20", lastDay: "2027-06-23" }, { firstDay: "2027-08-05", lastDay: "2027-09-08" }]);
  });

  it("keeps pigs off the meadow, by kind", () => {
    expect(cell("W1").notFor).toEqual(["Pigs"]);
    expect(group("Pigs").mayEnter).not.toContain("W1");
    expect(group("Cows").mayEnter).toContain("W1");
  });

  it("puts a group's stay limit under its rule", () => {
    expect(scenarioOf(lowAcre("head: 2", "head: 2, stay-limit: 5 d")).rules.groups["Cows"]).toEqual({ "stay-limit": { figures: { limit: 5 } } });
  });

  it("takes the dearest word on minutes: a weekday over weekdays", () => {
    expect(withyEnd.people.map((p) => p.minutesByWeekday)).toEqual([[150, 150, 150, 150, 150, 240, 240], [0, 0, 90, 0, 0, 120, 0]]);
    const owner = scenarioOf(`${LOW_ACRE}people:\n  Owner: { minutes: { every day: 2 h, weekends: 3 h, sunday: 90 min, 2027-06-01: 40 min } }\n`).people[0]!;
    expect(owner.minutesByWeekday).toEqual([120, 120, 120, 120, 120, 180, 90]);
    expect(owner.minutesByDay).toEqual({ "2027-06-01": 40 });
  });

  it("reads money by the kilo and hour, hay in kilos", () => {
    expect(withyEnd.prices).toEqual({ currency: "GBP", hayPerKg: 0.15, labourPerHour: 14, mowingPerHa: 180, haul: 0 });
    expect(withyEnd.hay.inStoreKg).toBe(3000);
  });
});

describe("order", () => {
  it("keeps names that look like numbers as written", () => {
    const text = lowAcre("L1: 0.5 ha\n      L2: 0.5 ha", "10: 0.5 ha\n      2: 0.5 ha");
    expect(scenarioOf(text).cells.map((c) => c.name)).toEqual(["10", "2", "L3", "L4", "L5"]);
  });

  it("walks as `walk` says, the rest as written", () => {
    const farm = scenarioOf(`${LOW_ACRE}walk: L4, L2\n`);
    expect(farm.cells.map((c) => c.name)).toEqual(["L4", "L2", "L1", "L3", "L5"]);
    expect(farm.groups[0]!.mayEnter).toEqual(["L4", "L2", "L1", "L3", "L5"]);
  });
});

describe("the smallest farm", () => {
  const farm = scenarioOf(LOW_ACRE);

  it("has an owner, a yard and prices taken for it, and says so", () => {
    expect(farm.people).toHaveLength(1);
    expect(farm.groups[0]!.yard).toBe(farm.yards[0]!.name);
    const keys = farm.assumed.map((row) => row.key);
    for (const key of ["people", "yard of Cows", "price of hay", "growth of every cell", "residual-cover grazers"]) expect(keys).toContain(key);
  });

  it("gives each cow of a class with calves one calf", () => {
    expect(farm.groups[0]!.young?.head).toBe(2);
  });
});

describe("ground", () => {
  const area = (written: string): number => scenarioOf(lowAcre("L1: 0.5 ha", `L1: ${written}`)).cells[0]!.areaHa;

  it("measures boundaries and sides: closed forms", () => {
    expect(area("{ boundary: [0 m x 0 m, 60 m x 0 m, 60 m x 45 m, 0 m x 45 m] }")).toBeCloseTo(0.27, 12);
    // A right-angled triangle of 30, 40 and 50 m holds 600 m2; two of them make the rectangle.
    expect(area("{ sides: [30 m, 40 m, 50 m] }")).toBeCloseTo(0.06, 12);
    expect(area("{ sides: [30 m, 40 m, 30 m, 40 m], diagonal: 50 m }")).toBeCloseTo(0.12, 12);
  });

  it("takes an acre for 4046.8564224 m2 (exact by agreement of 1959)", () => {
    expect(area("1.4 ac")).toBeCloseTo((1.4 * 4046.8564224) / 10_000, 12);
  });

  it("scales growth to the tonnes a year that the owner says it grows", () => {
    const months = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    const growth = scenarioOf(`${LOW_ACRE}grows: 6.5 t/ha\n`).cells[0]!.growthByMonth;
    const year = growth.reduce((sum, g, i) => sum + g * months[i]!, 0);
    // The row's total is printed to the whole kilogram.
    expect(year / 6500).toBeCloseTo(1, 3);
  });

  it("takes a sward's published rest, under the owner's own", () => {
    // Univ. of Georgia CAES: tall fescue rests 15-30 days.
    const farm = scenarioOf(lowAcre("cover: 2200 kg/ha", "cover: 2200 kg/ha\n    sward: tall fescue\n    rules: { rest-period: { midsummer: 35 d } }"));
    expect(farm.rules.fields["Long Croft"]!["rest-period"]!.figures).toEqual({ floor: 15, flush: 15, midsummer: 35 });
  });
});

describe("animals", () => {
  const cows = (more: string) => scenarioOf(lowAcre("weight: 550 kg", `weight: 550 kg, ${more}`)).groups[0]!;

  it("counts nitrogen at the weight half-way through the stay: SI 2008/2349, pigs of 31-66 kg drop 24 g", () => {
    expect(group("Pigs").nitrogenKgPerHeadDay).toBe(0.024);
    expect(cows("gain: 0 kg/d").nitrogenKgPerHeadDay).toBe(0.227);
  });

  it("reads intake as a share of weight or by the head", () => {
    expect(cows("intake: 2.5 %").intake).toMatchObject({ shareOfWeight: 0.025 });
    expect(cows("intake: 15 kg/d").intake).toEqual({ kgDmPerHeadDay: 15 });
  });

  it("weans young on a day", () => {
    expect(cows("young-until: 2027-09-30").young).toMatchObject({ head: 2, lastDay: "2027-09-30" });
    expect(cows("young: 0").young).toBeNull();
  });

  it("joins and parts: a bull that runs with the cows for two months", () => {
    const bull = scenarioOf(scenarioText("long-riggs.yaml")).groups.find((g) => g.name === "Bull")!;
    expect(bull.runsWith).toEqual({ with: "Cows", days: [{ firstDay: "2027-07-01", lastDay: "2027-08-31" }] });
    expect(bull.out).toEqual({ firstDay: "2027-07-01", lastDay: "2027-08-31" });
    expect(bull.peopleToMove).toBe(2);
  });

  it("gives a second group of a kind a letter of its own", () => {
    const farm = scenarioOf(`${LOW_ACRE}  Heifers: { kind: cattle, class: heifer, head: 2, weight: 380 kg }\n`);
    expect(farm.groups.map((g) => g.letter)).toEqual(["C", "Ch"]);
  });

  it("sizes a pigs' strip for 3,500 pig-days/ha", () => {
    const pigs = scenarioOf(`${LOW_ACRE}  Pigs: { kind: pigs, class: grower, head: 5, weight: 40 kg }\n`).groups[1]!;
    expect((5 * pigs.strip!.days) / pigs.strip!.areaHa).toBeCloseTo(3500, 6);
  });
});
