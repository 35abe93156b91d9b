import { describe, expect, it } from "vitest";
import { NO_HANDOVER, type Handover } from "../../src/farm/handover.js";
import type { Cell, Group, Scenario } from "../../src/farm/scenario.js";
import { loadTables } from "../../src/files/tables.js";
import { cautionsFor, cautionsOn } from "../../src/plan/cautions.js";
import type { Plan } from "../../src/plan/plan.js";
import { addDays } from "../../src/quantity/calendar.js";
import { englishWords, plannedFarm } from "../fixtures/planned-farm.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

const { cautionRows: ROWS } = loadTables();
const strip = { areaHa: 0.01, days: 3, movedBy: "tow" as const, stepMinutes: 40, nets: 1, pen: "House" };

const cows = group("Cows", { young: { head: 5, weightKg: 80, gainKgPerDay: 1 } });
const bull = group("Bull", { animalClass: "bull" });
const steers = group("Steers", { animalClass: "store 12-18 mo" });
const bullocks = group("Bullocks", { animalClass: "non-breeding bullock" });
const sheep = group("Sheep", { kind: "sheep", animalClass: "ewe dry" });
const goats = group("Goats", { kind: "goats", animalClass: "" });
const ponies = group("Ponies", { kind: "horses", animalClass: "pony" });
const pigs = group("Pigs", { kind: "pigs", animalClass: "weaner" });
const boar = group("Boar", { kind: "pigs", animalClass: "boar" });
const sow = group("Sow", { kind: "pigs", animalClass: "sow with litter" });
const hens = group("Hens", { kind: "layers", animalClass: "", strip });
const chicks = group("Broilers", { kind: "broilers", animalClass: "", strip: { ...strip, movedBy: "hand", nets: 0 } });
const turkeys = group("Turkeys", { kind: "turkeys", animalClass: "", strip });

/** Ground, animals and days on which a caution is asked for. */
interface Case {
  readonly groups: readonly Group[];
  /** First day of a season of three weeks. */
  readonly from?: string;
  readonly cell?: Partial<Cell>;
  readonly handover?: Partial<Handover>;
  readonly more?: Partial<Scenario>;
  readonly cut?: string;
  readonly inYard?: boolean;
}

const seasonOf = (given: Case): { readonly scenario: Scenario; readonly plan: Plan } => {
  const scenario = tinyFarm({ firstDay: given.from ?? "2027-05-01", cells: [cell("H1", given.cell)], groups: given.groups, more: { ...given.more, handover: { ...NO_HANDOVER, cautions: ROWS, ...given.handover } } });
  const where = given.inYard ? { cell: null, yard: "Yard" } : { cell: "H1", yard: null };
  const stays = scenario.groups.flatMap((one) => one.here.map((span) => ({ group: one.name, ...where, ...span })));
  return { scenario, plan: { stays, cuts: given.cut ? [{ cell: "H1", cut: "hay", day: given.cut }] : [] } };
};

const topics = (given: Case): readonly string[] => {
  const { scenario, plan } = seasonOf(given);
  return cautionsFor(scenario, plan).map((caution) => caution.topic);
};

const PATH = { publicPaths: ["H1"] };
const CALVING = { births: { Cows: [{ firstDay: "2027-05-03", lastDay: "2027-05-06" }], Sheep: [{ firstDay: "2027-05-03", lastDay: "2027-05-06" }] } };
const LATE = [{ firstDay: "2027-05-05", lastDay: "2027-05-21" }];
const SOON = [{ firstDay: "2027-05-01", lastDay: "2027-05-10" }];
const ORDER = { housingOrders: [{ name: "order", known: "2027-05-01", kinds: ["layers" as const], firstDay: "2027-05-10", lastDay: "2027-05-12" }] };

/** For each row a farm to which it applies, and one to which it does not. */
const CASES: Readonly<Record<string, readonly [applies: Case, not: Case]>> = {
  "bull": [{ groups: [bull] }, { groups: [bullocks] }],
  "cow-with-calf": [{ groups: [cows] }, { groups: [steers] }],
  "births-cattle": [{ groups: [cows], handover: CALVING }, { groups: [steers], handover: CALVING }],
  "boar": [{ groups: [boar] }, { groups: [pigs] }],
  "sow": [{ groups: [sow] }, { groups: [pigs] }],
  "public-path-cattle": [{ groups: [steers], handover: PATH }, { groups: [steers], handover: { publicPaths: ["H2"] } }],
  "public-path": [{ groups: [hens], handover: PATH }, { groups: [hens], handover: PATH, inYard: true }],
  "tow": [{ groups: [hens] }, { groups: [chicks] }],
  "fence": [{ groups: [hens] }, { groups: [chicks] }],
  "pen": [{ groups: [chicks] }, { groups: [hens] }],
  "hands": [{ groups: [turkeys] }, { groups: [pigs] }],
  "hands-births": [{ groups: [sheep], handover: CALVING }, { groups: [cows], handover: CALVING }],
  "heat": [{ groups: [cows], from: "2027-07-01" }, { groups: [cows], from: "2027-05-01" }],
  "pigs-in-heat": [{ groups: [pigs], from: "2027-08-01" }, { groups: [cows], from: "2027-08-01" }],
  "bloat": [{ groups: [sheep], from: "2027-10-01" }, { groups: [sheep], from: "2027-11-01" }],
  "tetany": [{ groups: [cows], from: "2027-03-01" }, { groups: [steers], from: "2027-03-01" }],
  "dead-birds": [{ groups: [hens, goats] }, { groups: [hens, ponies] }],
  "copper": [{ groups: [sheep, pigs] }, { groups: [goats, pigs] }],
  "copper-feed": [{ groups: [sheep, hens] }, { groups: [sheep, ponies] }],
  "ionophores": [{ groups: [ponies, hens] }, { groups: [ponies, sheep] }],
  "apples": [{ groups: [pigs], from: "2027-09-01", cell: { shade: true } }, { groups: [pigs], from: "2027-06-01", cell: { shade: true } }],
  "plants": [{ groups: [ponies] }, { groups: [hens] }],
  "frost": [{ groups: [cows], from: "2027-12-20" }, { groups: [cows], from: "2027-06-01" }],
  "fluke": [{ groups: [sheep], from: "2027-09-01", cell: { wetGround: true } }, { groups: [sheep], from: "2027-09-01" }],
  "dusk": [{ groups: [hens] }, { groups: [cows] }],
  "feed-ban": [{ groups: [pigs, goats] }, { groups: [pigs, ponies] }],
  "scraps": [{ groups: [pigs] }, { groups: [cows] }],
  "scraps-birds": [{ groups: [hens] }, { groups: [cows] }],
  "housing-order": [{ groups: [hens], more: ORDER }, { groups: [turkeys], more: ORDER }],
  "bird-flu": [{ groups: [hens] }, { groups: [cows] }],
  "blackhead": [{ groups: [turkeys, hens] }, { groups: [turkeys, cows] }],
  "open-water": [{ groups: [hens], cell: { water: "pond" } }, { groups: [hens], cell: { water: "trough" } }],
  "carcasses": [{ groups: [hens] }, { groups: [cows] }],
  "standstill": [{ groups: [{ ...pigs, here: LATE }] }, { groups: [{ ...pigs, here: SOON }] }],
  "papers": [{ groups: [{ ...pigs, here: SOON }] }, { groups: [pigs] }],
  "withdrawal": [{ groups: [{ ...chicks, here: SOON }] }, { groups: [{ ...chicks, here: LATE }] }],
  "registration-birds": [{ groups: [{ ...hens, here: LATE }] }, { groups: [hens] }],
  "registration": [{ groups: [{ ...sheep, here: LATE }] }, { groups: [sheep] }],
  "nesting": [{ groups: [cows], from: "2027-06-01", cut: "2027-06-10" }, { groups: [cows], from: "2027-09-01", cut: "2027-09-10" }],
};

describe("every row of the cautions", () => {
  it("has a case here", () => {
    expect(Object.keys(CASES).sort()).toEqual(ROWS.map(({ key }) => key).sort());
  });

  it.each(ROWS.map(({ key }) => [key] as const))("%s applies where it should, and nowhere else", (topic) => {
    const [applies, not] = CASES[topic]!;
    expect(topics(applies)).toContain(topic);
    expect(topics(not)).not.toContain(topic);
    expect(topics({ groups: [] })).toEqual(["codes"]);
  });

  it("is said in short sentences, and names its source", () => {
    const words = englishWords();
    const keys = new Set(Object.entries(loadTables()).flatMap(([, rows]) => (rows as readonly { readonly key?: string }[]).map(({ key }) => key)));
    for (const { key, source } of [...ROWS, { key: "codes", source: "common practice" }]) {
      const text = words.say(`caution.${key}`);
      expect(text).toMatch(/[.?]$/);
      expect(Math.max(...text.split(/[.?:] /).map((sentence) => sentence.length))).toBeLessThan(90);
      expect(source).toMatch(/https:|^rows? |^21 CFR|common practice|from memory/);
      for (const [row] of source.startsWith("row") ? source.matchAll(/[a-z-]+\.[a-z-]+(?=,| and| of)/g) : []) expect([...keys]).toContain(row);
    }
  });

  it("stands where its rank puts it: what hurts people, what kills animals, law, the rest", () => {
    expect(ROWS.map(({ rank }) => rank)).toEqual(ROWS.map(({ rank }) => rank).sort((a, b) => a - b));
  });
});

describe("cautions of a season", () => {
  it("end with local codes, the vet and licensed practice, on whatever farm", () => {
    for (const farm of ["withy-end", "rushy-leys"] as const) {
      const { scenario, plan } = plannedFarm(farm);
      const told = cautionsFor(scenario, plan);
      expect(told.at(-1)!.topic).toBe("codes");
      expect(new Set(told.map(({ topic }) => topic)).size).toBe(told.length);
      for (const { rank } of told.slice(0, 3)) expect(rank).toBe(1);
    }
    expect(englishWords().say("caution.codes")).toBe("Follow local codes, the vet and licensed practice.");
  });

  it("tell on which days, first and last, where it is not always", () => {
    const { scenario, plan } = seasonOf({ groups: [cows], from: "2027-05-20", handover: { births: { Cows: [{ firstDay: "2027-05-25", lastDay: "2027-05-27" }] } } });
    const daysOf = (topic: string) => cautionsFor(scenario, plan).find((one) => one.topic === topic)!.days;
    expect(daysOf("births-cattle")).toEqual({ firstDay: "2027-05-25", lastDay: "2027-05-27" });
    expect(daysOf("tetany")).toEqual({ firstDay: "2027-05-20", lastDay: "2027-05-31" });
    expect(daysOf("heat")).toEqual({ firstDay: "2027-06-01", lastDay: "2027-06-09" });
    expect(daysOf("cow-with-calf")).toBeNull();
  });

  it("go over the turn of the year where their months do", () => {
    const months = (from: string) => topics({ groups: [cows], from }).includes("frost");
    expect([months("2027-09-01"), months("2027-09-20"), months("2027-12-20"), months("2028-04-25"), months("2028-05-01")]).toEqual([false, true, true, true, false]);
  });
});

describe("cautions of a day", () => {
  it("are those of the season on that day, in the same order", () => {
    const { scenario, plan } = plannedFarm("withy-end");
    const season = cautionsFor(scenario, plan);
    for (let day = scenario.season.firstDay; day <= scenario.season.lastDay; day = addDays(day, 9)) {
      const today = cautionsOn(scenario, plan, day).map(({ topic }) => topic);
      expect(today).toEqual(season.map(({ topic }) => topic).filter((topic) => today.includes(topic)));
      for (const { topic, days } of season) if (days && (day < days.firstDay || day > days.lastDay)) expect(today).not.toContain(topic);
    }
  });

  it("are of the animals that are here, where they stand", () => {
    const { scenario, plan } = plannedFarm("withy-end");
    const inApple = plan.stays.find((stay) => stay.group === "Cows" && stay.cell?.startsWith("A"))!;
    expect(cautionsOn(scenario, plan, inApple.firstDay).map(({ topic }) => topic)).toContain("public-path-cattle");
    expect(cautionsOn(scenario, plan, addDays(inApple.firstDay, -1)).map(({ topic }) => topic)).not.toContain("public-path-cattle");
    expect(cautionsOn(scenario, plan, "2027-04-15").map(({ topic }) => topic)).toContain("births-cattle");
    expect(cautionsOn(scenario, plan, "2027-04-15").map(({ topic }) => topic)).not.toContain("pen");
  });
});
