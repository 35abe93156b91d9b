import { readFileSync, readdirSync } from "node:fs";
import { resolve } from "node:path";
import { readScenario } from "../../src/farm/read-scenario.js";
import type { Finding } from "../../src/farm/finding.js";
import type { MapText } from "../../src/farm/map/map-feature.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { loadTables } from "../../src/files/tables.js";

export const TABLES = loadTables();
export const SCENARIOS = resolve(import.meta.dirname, "../../scenarios");

export function scenarioText(name: string): string {
  return readFileSync(resolve(SCENARIOS, name), "utf8");
}

export function filesIn(folder: string): readonly string[] {
  return readdirSync(resolve(SCENARIOS, folder)).filter((name) => name.endsWith(".yaml")).sort();
}

/** The map files of the farms we ship. */
export const MAPS: readonly MapText[] = readdirSync(SCENARIOS).filter((file) => /\.(geojson|gpx|kml)$/.test(file)).map((file) => ({ file, text: scenarioText(file) }));

/** The scenario of a text that must read. */
export function scenarioOf(text: string): Scenario {
  const read = readScenario(text, "farm.yaml", TABLES, undefined, MAPS);
  if (!read.ok) throw new Error(JSON.stringify(read.findings, null, 1));
  return read.value;
}

/** The findings of a text that must not read. */
export function findingsOf(text: string): readonly Finding[] {
  const read = readScenario(text, "farm.yaml", TABLES);
  if (read.ok) throw new Error("this farm reads");
  return read.findings;
}

/** The smallest farm that plans. */
export const LOW_ACRE = `farm: Low Acre
season: 2027-04-20 to 2027-10-31
fields:
  Long Croft:
    cover: 2200 kg/ha
    cells:
      L1: 0.5 ha
      L2: 0.5 ha
      L3: 0.4 ha
      L4: 0.6 ha
      L5: 0.5 ha
groups:
  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }
`;

/** Low Acre with one text replaced, which must be there once. */
export function lowAcre(from: string, to: string): string {
  if (LOW_ACRE.split(from).length !== 2) throw new Error(`not once in the farm: ${from}`);
  return LOW_ACRE.replace(from, to);
}
