import type { Finding, Result } from "../../src/farm/finding.js";
import type { MapText } from "../../src/farm/map/map-feature.js";
import { readScenario } from "../../src/farm/read-scenario.js";
import type { Cell, Scenario } from "../../src/farm/scenario.js";
import { sha256 } from "../../src/files/read.js";
import { TABLES } from "./read-text.js";

export type Metres = readonly [eastM: number, northM: number];

/** Where farms of tests lie: the open sea. */
const HOME = [-8.5, 50.5] as const;

/** Longitude and latitude of metres from there, to a centimetre. Radii of the ellipsoid at that latitude, from standard geodesy. */
export function degrees([east, north]: Metres): readonly [number, number] {
  return [Number((HOME[0] + east / 70_949.44).toFixed(7)), Number((HOME[1] + north / 111_238.69).toFixed(7))];
}

export const box = (west: number, south: number, east: number, north: number): readonly Metres[] => [[west, south], [east, south], [east, north], [west, north]];

const closed = (ring: readonly Metres[]): readonly (readonly [number, number])[] => [...ring, ring[0]!].map(degrees);

export interface Feature {
  readonly name: string;
  readonly geometry: { readonly type: string; readonly coordinates: unknown };
}

export function ground(name: string, ...rings: readonly (readonly Metres[])[]): Feature {
  return { name, geometry: { type: "Polygon", coordinates: rings.map(closed) } };
}

export function point(name: string, at: Metres): Feature {
  return { name, geometry: { type: "Point", coordinates: degrees(at) } };
}

/** A map file, one feature a line from line 2 on. */
export function geoJson(...features: readonly Feature[]): string {
  const lines = features.map(({ name, geometry }) => JSON.stringify({ type: "Feature", properties: { name }, geometry }));
  return `{ "type": "FeatureCollection", "features": [\n${lines.join(",\n")}\n] }`;
}

/** A farm file of one field's lines, with `map: farm.geojson`. */
export function farmOf(fields: string, map = "farm.geojson"): string {
  return `farm: Sea holm\nseason: 2027-04-20 to 2027-10-31\nmap: ${map}\nfields:\n${fields}groups:\n  Cows: { kind: cattle, class: cow with calf, head: 2, weight: 550 kg }\n`;
}

export function read(text: string, maps: Readonly<Record<string, string>>): Result<Scenario> {
  const texts = Object.entries(maps).map(([file, map]): MapText => ({ file, text: map }));
  return readScenario(text, "farm.yaml", TABLES, sha256, texts);
}

/** The farm of a field's lines on a map, which must read. */
export function farmOn(fields: string, ...features: readonly Feature[]): { readonly scenario: Scenario; readonly notes: readonly Finding[] } {
  const got = read(farmOf(fields), { "farm.geojson": geoJson(...features) });
  if (!got.ok) throw new Error(JSON.stringify(got.findings, null, 1));
  return { scenario: got.value, notes: got.notes };
}

/** The findings of a field's lines on a map, which must not read. */
export function findingsOn(fields: string, map: string, name = "farm.geojson"): readonly Finding[] {
  const got = read(farmOf(fields, name), { [name]: map });
  if (got.ok) throw new Error("this farm reads");
  return got.findings;
}

export function cellOf({ cells }: Scenario, name: string): Cell {
  return cells.find((cell) => cell.name === name)!;
}
