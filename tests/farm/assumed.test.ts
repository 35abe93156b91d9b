import { describe, expect, it } from "vitest";
import { RULES } from "../../src/rules/index.js";
import type { Parameter } from "../../src/rules/rule.js";
import { readScenario } from "../../src/farm/read-scenario.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { LOW_ACRE, scenarioOf, TABLES } from "./read-text.js";

type Plain = string | readonly string[] | { readonly [key: string]: Plain };

const UNITS: Readonly<Record<string, string>> = {
  money: "GBP", "money/d": "GBP/d", "money/t": "GBP/t", "money/ha": "GBP/ha", "money/kg": "GBP/kg", "day of year": "", month: "",
};

function figure(parameter: Parameter): string {
  const value = parameter.usual ?? parameter.most;
  return `${value} ${UNITS[parameter.unit] ?? parameter.unit}`.trim();
}

const rules = Object.fromEntries(
  RULES.map((rule) => [rule.id, { ...Object.fromEntries(rule.parameters.map((p) => [p.key, figure(p)])), ...(rule.uses.length > 1 ? { use: rule.use } : {}) }]),
);

const ground = {
  cover: "2200 kg/ha", "cover-date": "2027-04-18", water: "stream", "water-walk": "10 m", shade: "yes", "wet-ground": "yes", mow: "no", slope: "3 %", fence: "90 m",
};
const handling = { "move-takes": "20 min", "set-takes": "20 min", "people-to-move": "1", turnout: "2027-04-25", housing: "2027-10-20", here: "2027-04-21 to 2027-10-30" };
const eats = { nitrogen: "0.2 kg/d", "water-need": "50 L/d", gain: "0.1 kg/d" };

/** A farm on which every figure is typed. */
const FULL: { readonly [key: string]: Plain } = {
  farm: "All told", units: "metric", season: "2027-04-20 to 2027-10-31", growth: "oceanic-a", "growth-scale": "60 %",
  fields: {
    One: { distance: "50 m", cells: { A1: { area: "0.5 ha", ...ground }, A2: { area: "0.4 ha", ...ground } } },
    Two: { distance: "90 m", ...ground, cells: { B1: { area: "0.4 ha" }, B2: { area: "0.6 ha" } } },
  },
  groups: {
    Cows: {
      kind: "cattle", class: "cow with calf", head: "2", weight: "550 kg", letter: "C", young: "2", "young-weight": "70 kg", "young-gain": "0.9 kg/d",
      intake: "14 kg/d", "young-nitrogen": "0.05 kg/d", yard: "Barn", ...eats, ...handling,
    },
    Pigs: { kind: "pigs", class: "weaner", head: "4", weight: "20 kg", letter: "P", intake: "0.2 kg/d", strip: "90 m2", "strip-days": "6 d", yard: "Barn", ...eats, ...handling },
    Hens: { kind: "layers", head: "12", weight: "2 kg", letter: "L", pen: "Ark", intake: "20 g/d", yard: "Barn", ...eats, ...handling, nitrogen: "1 g/d", "water-need": "0.3 L/d", gain: "0 kg/d" },
  },
  pens: { Ark: { size: "2 m x 3 m", count: "1", step: "2 d", "step-takes": "12 min", "moved-by": "hand" } },
  yards: { Barn: { cost: "3 GBP/d", room: "40", open: "2027-04-20 to 2027-10-31" } },
  people: { Owner: { tows: "yes", minutes: "4 h" } },
  kit: { nets: { "50 m": "2" }, reels: { "200 m": "4" }, energisers: "3", "least-voltage": "3 kV", "least-voltage-wool": "4 kV" },
  hay: { "in-store": "2 t", "winter-need": "4 t", "dry-matter": "85 %", "feed-out-loss": "8 %", "store-loss": "6 %" },
  prices: { hay: "140 GBP/t", labour: "13 GBP/h", mowing: "150 GBP/ha", haul: "1 GBP" },
  weather: { dry: "75 %", wet: "125 %", month: "15 %", spring: "7 d", "late-moves": "3 %", "week-away": "10 %" },
  trodden: "12 %", "ceiling-cover": "4800 kg/ha",
  rules,
  "housing-orders": { autumn: { days: "from 2027-10-01", known: "2027-09-20", kinds: "layers" } },
};

/** JSON is YAML, so the farm needs no writer. */
function textOf(farm: Plain): string {
  return JSON.stringify(farm);
}

type Path = readonly string[];

function pathsOf(node: Plain, at: Path = []): readonly Path[] {
  if (typeof node === "string" || Array.isArray(node)) return [at];
  return Object.entries(node).flatMap(([key, inner]) => pathsOf(inner, [...at, key]));
}

function without(node: Plain, [key, ...rest]: Path): Plain {
  const map = node as { readonly [key: string]: Plain };
  const { [key!]: inner, ...others } = map;
  return rest.length === 0 ? others : Object.fromEntries(Object.entries(map).map(([k, v]) => [k, k === key ? without(inner!, rest) : v]));
}

/** What the farm is, without what it says of itself. */
function figures(farm: Scenario): Scenario {
  return { ...farm, assumed: [], print: "", form: null };
}

describe("assumed", () => {
  const full = scenarioOf(textOf(FULL));

  it("is empty when every figure is typed", () => {
    expect(full.assumed).toEqual([]);
  });

  /** Left out, these mean none, and nothing is taken in their stead. */
  const MEANS_NONE = /people\.Owner|housing-orders|energisers|nets|reels/;

  const paths = pathsOf(FULL).filter((path) => !MEANS_NONE.test(path.join(".")));

  it("tries each figure of the farm and of its rules", () => {
    expect(paths.length).toBeGreaterThan(150);
  });

  it.each(paths.map((path) => [path.join(" "), path] as const))("has a row more, with its source, without %s", (_name, path) => {
    const read = readScenario(textOf(without(FULL, path)), "farm.yaml", TABLES);
    if (!read.ok) {
      // What is needed has no default.
      expect(read.findings.every((f) => ["key-missing", "pen-missing"].includes(f.code))).toBe(true);
      return;
    }
    if (JSON.stringify(figures(read.value)) !== JSON.stringify(figures(full))) expect(read.value.assumed.length).toBeGreaterThan(0);
    for (const row of read.value.assumed) for (const text of [row.key, row.value, row.source, row.status]) expect(text).not.toBe("");
  });

  it("names the ground or group a default was taken for, once for all of them", () => {
    const rows = scenarioOf(LOW_ACRE).assumed.map((row) => row.key);
    expect(rows.filter((key) => key.startsWith("shade"))).toEqual(["shade of every cell", "shade first-month", "shade last-month", "shade pigs-price", "shade grazers-price", "shade use"]);
    expect(new Set(rows).size).toBe(rows.length);
  });

  it("says plainly that nobody was written, and who is taken", () => {
    const rows = scenarioOf(LOW_ACRE).assumed;
    expect(rows.find((row) => row.key === "people")).toMatchObject({ value: "one owner, at home every day with 4 h for the animals, who tows", source: "judgement" });
  });

  it("gives a published figure its source and status", () => {
    const rows = scenarioOf(LOW_ACRE).assumed;
    expect(rows.find((row) => row.key === "nitrogen of Cows")).toMatchObject({ value: "0.227 kg/d", status: "verified" });
    expect(rows.find((row) => row.key === "rest-period flush")).toMatchObject({ value: "21 d", status: "verified" });
    expect(rows.find((row) => row.key === "rest-period price")).toMatchObject({ source: "judgement", status: "judgement" });
  });
});
