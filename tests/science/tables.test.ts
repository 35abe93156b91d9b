import { describe, expect, it } from "vitest";
import { BIRDS, KINDS } from "../../src/farm/scenario.js";
import { RULES } from "../../src/rules/index.js";
import { classesOf, classRow, rowOf, STATUSES, type Row, type Tables } from "../../src/science/tables.js";
import { TABLES } from "./published.js";

const named = Object.entries(TABLES) as [keyof Tables, readonly Row<unknown>[]][];

describe("tables", () => {
  it.each(named)("%s: every row says where it comes from", (_, rows) => {
    expect(rows.length).toBeGreaterThan(0);
    expect(rows.filter((row) => !STATUSES.includes(row.status) || row.source.length < 5)).toEqual([]);
    // What was read somewhere has more of a source than the word "judgement".
    expect(rows.filter((row) => row.source === "judgement" && row.status.startsWith("verified"))).toEqual([]);
  });

  it("names every row once, but for classes that change with weight", () => {
    for (const [table, rows] of Object.entries(TABLES as Tables)) {
      const names = (rows as readonly (Row<unknown> & { fromKg?: number })[]).map((row) => `${row.key} from ${row.fromKg ?? 0}`);
      expect(new Set(names).size, table).toBe(names.length);
    }
  });

  it("has intake, nitrogen, water and weight of every class of every kind", () => {
    for (const kind of KINDS) {
      const bird = (BIRDS as readonly string[]).includes(kind);
      const classes = bird ? [null] : [...classesOf(TABLES, kind), "young"];
      expect(classes.length, kind).toBeGreaterThan(bird ? 0 : 2);
      for (const name of classes) {
        const weight = rowOf(TABLES.weights, name === null ? kind : `${kind}.${name}`);
        expect(weight.least).toBeLessThan(weight.value);
        expect(weight.most).toBeGreaterThan(weight.value);
        for (const rows of [TABLES.intake, TABLES.nitrogen, TABLES.water]) expect(classRow(rows, kind, name, weight.value).key).toBe(weight.key);
      }
    }
  });

  it("takes the heaviest row that the animal reaches", () => {
    expect(classRow(TABLES.nitrogen, "pigs", "weaner", 12).value).toBe(0.0041);
    expect(classRow(TABLES.nitrogen, "pigs", "weaner", 13).value).toBe(0.0142);
    expect(classRow(TABLES.nitrogen, "pigs", "weaner", 90).value).toBe(0.033);
    expect(() => classRow(TABLES.nitrogen, "pigs", "hen", 90)).toThrow("no row pigs.hen");
    expect(() => rowOf(TABLES.growth, "moon")).toThrow("no row moon");
  });

  it("knows every source a rule rests on", () => {
    const known = new Set(["judgement", "common practice", ...TABLES.defaults.map((row) => row.key), ...TABLES.sources.map((row) => row.key)]);
    const sources = RULES.flatMap((rule) => [rule.source, ...rule.parameters.map((p) => p.source)]);
    expect(sources.filter((source) => !known.has(source))).toEqual([]);
  });

  it("gives a rule the default that its table says", () => {
    // These rows stand beside several figures of one rule: the day spring ends, the longest step, the walk's two ends.
    const beside = ["grass-in-hand spring-until", "pen-steps most-step", "water walk-free", "water walk-most"];
    const differ = RULES.flatMap((rule) => rule.parameters.flatMap((p) => {
      const row = TABLES.defaults.find((r) => r.key === p.source);
      return row && row.value !== p.usual ? [`${rule.id} ${p.key}`] : [];
    }));
    expect(differ).toEqual(beside);
  });

  it("keeps a default within its own reach", () => {
    expect(TABLES.defaults.filter((row) => row.value < row.least || row.value > row.most)).toEqual([]);
  });
});
