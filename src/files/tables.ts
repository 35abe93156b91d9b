import { readFileSync } from "node:fs";
import { z } from "zod";
import { CAUTION_WHERE, STATUSES, type Tables } from "../science/tables.js";

const row = <V extends z.ZodType, M extends z.ZodRawShape>(value: V, more: M) =>
  z.strictObject({
    key: z.string().min(1), value, unit: z.string(), appliesTo: z.string().min(1), source: z.string().min(1), status: z.enum(STATUSES),
    ...more,
  });

const number = z.number();
const range = z.tuple([number, number]).refine(([least, most]) => least <= most, "a range runs from least to most");
const perClass = row(number.nonnegative(), { fromKg: number.nonnegative() });
const limits = { least: number, most: number };

const month = number.int().min(1).max(12);
const caution = z.strictObject({
  key: z.string().regex(/^[a-z-]+$/), rank: number.int().min(1).max(4), kinds: z.array(z.string().min(1)), where: z.enum(CAUTION_WHERE), class: z.string().min(1).optional(),
  "in-milk": z.boolean().optional(), beside: z.array(z.string().min(1)).min(1).optional(), months: z.tuple([month, month]).optional(), source: z.string().min(1), status: z.enum(STATUSES),
});

const TABLES = {
  growth: row(z.array(number.nonnegative()).length(12), { total: number.positive(), printedTotal: number.nullable(), hemisphere: z.enum(["north", "south"]) }),
  animalUnits: row(number.positive(), {}),
  intake: perClass,
  weights: row(number.positive(), limits),
  nitrogen: perClass,
  water: perClass,
  swards: row(z.strictObject({ beginIn: range, endIn: range, restDays: range }), {}),
  heights: row(z.strictObject({ fair: range, good: range, excellent: range }), {}),
  utilisation: row(range, {}),
  poultry: row(number, {}),
  pigs: row(number, {}),
  cautions: row(number, {}),
  cautionRows: caution,
  defaults: row(number, limits),
  sources: row(z.string().min(1), {}),
};

const FILES: Readonly<Record<keyof Tables, string>> = {
  growth: "growth", animalUnits: "animal-units", intake: "intake", weights: "weights", nitrogen: "nitrogen", water: "water", swards: "swards",
  heights: "heights", utilisation: "utilisation", poultry: "poultry", pigs: "pigs", cautions: "cautions", cautionRows: "caution-rows", defaults: "planner-defaults", sources: "sources",
};

/**
 * Reads the published tables from the package's own `shared/` folder and holds them against their types.
 *
 * Look a row up with `rowOf(tables.growth, "oceanic-b")`, a class's figure with
 * `classRow(tables.nitrogen, "cattle", "cow with calf", 620)`, a kind's classes with `classesOf(tables, "pigs")`
 * (all in science/tables). A planner's default: `rowOf(tables.defaults, "entry-cover.grazers")`.
 */
export function loadTables(): Tables {
  const read = Object.entries(FILES).map(([name, file]) => [name, tableOf(name as keyof Tables, file)]);
  return Object.fromEntries(read) as Tables;
}

function tableOf(name: keyof Tables, file: string): unknown {
  const text = readFileSync(new URL(`../../shared/${file}.json`, import.meta.url), "utf8");
  const parsed = z.array<z.ZodType>(TABLES[name]).safeParse(JSON.parse(text));
  if (!parsed.success) throw new Error(`shared/${file}.json: ${z.prettifyError(parsed.error)}`);
  return parsed.data;
}
