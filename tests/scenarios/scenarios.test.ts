/** Every farm of the house keeps to the published shape, reads without a finding, plans, and is accepted by the check. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { checkPlan } from "../../src/check/check-plan.js";
import type { PlanAnswer } from "../../src/cli/answers.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { readFarm } from "../../src/files/read.js";
import { loadTables } from "../../src/files/tables.js";
import { readGrid } from "../../src/plan/read-grid.js";
import { readPlanFile } from "../../src/plan/read-plan-file.js";
import { daysBetween } from "../../src/quantity/calendar.js";
import { movesOf } from "../../src/sheets/season-days.js";
import { answer, faultsOfShape, freshFolder, inbye, ROOT } from "../cli/inbye.js";

const FOLDER = join(ROOT, "scenarios");
const NAMES = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml"));
const SLOW = 240_000;
const tables = loadTables();

function scenarioOf(name: string): Scenario {
  const read = readFarm(join(FOLDER, name), [], tables);
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return read.value.scenario;
}

describe("scenarios", () => {
  it("are the demo and at least four more, in metric and in US units", () => {
    expect(NAMES).toContain("withy-end.yaml");
    expect(NAMES.length).toBeGreaterThanOrEqual(5);
    expect(new Set(NAMES.map((name) => scenarioOf(name).units))).toEqual(new Set(["metric", "US"]));
  });

  // ajv asks the published schema; values are text there, as in the file
  it.each(NAMES)("%s keeps to the published shape of a farm file", (name) => {
    const typed = parse(readFileSync(join(FOLDER, name), "utf8"), { schema: "failsafe" }) as unknown;
    expect(faultsOfShape("farm", typed)).toEqual([]);
  });

  it.each(NAMES)("%s reads the same twice, and every assumed figure has a source", (name) => {
    const scenario = scenarioOf(name);
    expect(scenarioOf(name)).toEqual(scenario);
    expect(scenario.assumed.filter(({ value, source }) => value === "" || source === "")).toEqual([]);
  });

  it.each(NAMES)("%s plans quickly, every day placed, nothing broken, both files telling the same plan", (name) => {
    const folder = freshFolder();
    try {
      const ran = inbye(["plan", join(FOLDER, name), "--effort", "quick", "--out", folder.path, "--json"], folder.path);
      expect(ran.exit).toBe(0);
      const said = answer<PlanAnswer>(ran, "plan-answer");
      const scenario = scenarioOf(name);
      const json = readPlanFile(readFileSync(join(folder.path, "plan.json"), "utf8"), "plan.json", scenario);
      const grid = readGrid(readFileSync(join(folder.path, "grid.csv"), "utf8"), scenario, "grid.csv");
      if (!json.ok || !grid.ok) throw new Error(JSON.stringify([json, grid]));
      expect(grid.value).toEqual(json.value.plan);
      const report = checkPlan(scenario, json.value.plan);
      expect(report.breaches).toEqual([]);
      expect(report.cost).toBeCloseTo(said.cost, 2);
      expect(said.bound).toBeLessThanOrEqual(said.cost);
      expect(said.moves).toBe(movesOf(scenario, json.value.plan).length); // as the grid and the sheets count them
      const days = json.value.plan.stays.reduce((sum, stay) => sum + daysBetween(stay.firstDay, stay.lastDay) + 1, 0);
      const wanted = scenario.groups.flatMap((group) => group.here).reduce((sum, span) => sum + daysBetween(span.firstDay, span.lastDay) + 1, 0);
      expect(days).toBe(wanted);
    } finally {
      folder.done();
    }
  }, SLOW);
});
