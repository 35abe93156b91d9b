import { readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { cellSimulator } from "../../../src/programme/cell-simulator.js";
import { Draft } from "../../../src/programme/draft.js";
import { handRule } from "../../../src/programme/hand-rule.js";
import { planOf } from "../../../src/programme/plan-of.js";
import { snapshot } from "../../../src/programme/snapshot.js";
import type { Scenario } from "../../../src/farm/scenario.js";
import type { Plan } from "../../../src/plan/plan.js";
import { addDays } from "../../../src/quantity/calendar.js";
import { readFarm } from "../../../src/files/read.js";
import { loadTables } from "../../../src/files/tables.js";
import { buildSeason } from "../../../src/season/build-season.js";

/** The plan by eye. */
export function byEye(scenario: Scenario): Plan {
  const season = buildSeason(scenario);
  const draft = new Draft(season, cellSimulator(season));
  handRule(draft);
  return planOf(season, snapshot(draft));
}

/** A plan of one group, a word a day: a cell, or "yard". */
export function daysOf(scenario: Scenario, group: string, words: string, cuts: Plan["cuts"] = []): Plan {
  const { firstDay } = scenario.season;
  const yard = scenario.yards[0]!.name;
  const stays = words.trim().split(/\s+/).map((word, t) => ({
    group, cell: word === "yard" ? null : word, yard: word === "yard" ? yard : null, firstDay: addDays(firstDay, t), lastDay: addDays(firstDay, t),
  }));
  return { stays, cuts };
}

const FOLDER = resolve(import.meta.dirname, "../../../scenarios");

/** Every farm of the house by its file's name. */
export const HOUSE: readonly (readonly [string, Scenario])[] = readdirSync(FOLDER).filter((name) => name.endsWith(".yaml")).map((name) => {
  const read = readFarm(join(FOLDER, name), [], loadTables());
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return [name, read.value.scenario] as const;
});
