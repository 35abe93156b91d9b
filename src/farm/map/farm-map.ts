import type { Boundary, Corner } from "../../science/boundary.js";
import { metresOnGround, middleOf, type Position } from "../../science/distance.js";
import { areaM2Of, groundOnLeft } from "../../science/rings.js";
import { say, type Desk } from "../desk.js";
import { nearNames } from "../near-names.js";
import type { MapNode, Place } from "../tree.js";
import { groundAmiss } from "./check-ground.js";
import { sayFar } from "./far-off.js";
import type { MapFeature, MapText } from "./map-feature.js";
import { readMaps, type NamedMap } from "./read-maps.js";
import { namesUsed } from "./used-names.js";

/** Ground as the map has it, in metres from the middle of the whole farm. */
export interface MappedGround extends Place {
  readonly name: string;
  readonly boundary: Boundary;
  readonly areaHa: number;
  /** Longitudes and latitudes as one line of JSON. */
  readonly drawn: string;
}

export interface MappedPoint {
  readonly at: Corner;
  /** Longitude and latitude as one line of JSON. */
  readonly drawn: string;
}

/** What the map says of this farm. */
export interface FarmMap {
  /** By name; null where the ground is drawn and its drawing refused. */
  readonly ground: ReadonlyMap<string, MappedGround | null>;
  /** Gates by field or cell, and the yard by the name it has there. */
  readonly gates: ReadonlyMap<string, MappedPoint>;
  readonly yard: MappedPoint | null;
  /** Names of all ground on it, used or not. */
  readonly names: readonly string[];
  /** Names of lines, which hold no ground. */
  readonly lines: readonly string[];
  /** False where a file or a part of one could not be read. */
  readonly whole: boolean;
}

/** Lays the farm's names on its map files; null for a farm that names none. */
export function mapOf(desk: Desk, root: MapNode, maps: readonly MapText[]): FarmMap | null {
  const named = readMaps(desk, root, maps);
  if (named === null) return null;
  const features = named.flatMap(({ read }) => read?.features ?? []);
  const used = namesUsed(root);
  const ground = oneEach(desk, features.filter(({ drawn, name }) => drawn.kind === "ground" && used.ground.has(name)));
  const points = oneEach(desk, features.filter(({ drawn, name }) => drawn.kind === "point" && (used.gates.has(name) || isYard(name))));
  const sound = sayFar(desk, ground.filter((feature) => isSound(desk, feature)), points.filter((feature) => isSound(desk, feature)));
  for (const { file, read } of named) if (read?.findings.length === 0) sayEmpty(desk, file, read.features, [...ground, ...points]);
  noteNear(desk, features, used.ground);
  const middle = middleOf(sound.flatMap(positionsOf));
  const onGround = new Map(sound.flatMap((feature) => (feature.drawn.kind === "ground" ? [[feature.name, mapped(feature, middle)] as const] : [])));
  const gates = new Map(sound.flatMap((feature) => (feature.drawn.kind === "point" ? [[feature.name, pointOf(feature.drawn.position, middle)] as const] : [])));
  const namesOf = (kind: MapFeature["drawn"]["kind"]): readonly string[] => features.filter(({ drawn, name }) => drawn.kind === kind && name !== "").map(({ name }) => name);
  return {
    ground: new Map(ground.map(({ name }) => [name, onGround.get(name) ?? null])),
    gates,
    yard: [...gates].find(([name]) => isYard(name))?.[1] ?? null,
    names: namesOf("ground"),
    lines: namesOf("line"),
    whole: named.every(isWhole),
  };
}

const isWhole = ({ read }: NamedMap): boolean => read !== null && read.findings.length === 0;
const isYard = (name: string): boolean => name.toLowerCase() === "yard";

/** The first of each name; one drawn again is a finding. */
function oneEach(desk: Desk, features: readonly MapFeature[]): readonly MapFeature[] {
  return features.filter((feature, i) => {
    const first = features.findIndex(({ name }) => name === feature.name);
    if (first === i) return true;
    const { file, line } = features[first]!;
    say(desk, feature, { code: "feature-twice", found: `${feature.name} is drawn here and in ${file}, line ${line}`, allowed: "one gate, one name", next: "take one of them out, or give it another name" });
    return false;
  });
}

/** Says what is amiss with a drawing, or passes on its notes. */
function isSound(desk: Desk, feature: MapFeature): boolean {
  const amiss = feature.faults.length > 0 ? [] : groundAmiss(feature);
  desk.findings.push(...feature.faults);
  desk.notes.push(...feature.notes);
  for (const fault of amiss) say(desk, feature, fault);
  return feature.faults.length + amiss.length === 0;
}

function positionsOf({ drawn }: MapFeature): readonly Position[] {
  return drawn.kind === "ground" ? drawn.parts.flat(2) : drawn.kind === "point" ? [drawn.position] : [];
}

function mapped(feature: MapFeature, middle: Position): MappedGround {
  const parts = feature.drawn.kind === "ground" ? feature.drawn.parts : [];
  const boundary = groundOnLeft({ rings: parts[0]!.map((ring) => metresOnGround(ring, middle)), north: true });
  const { name, file, line, column } = feature;
  return { name, file, line, column, boundary, areaHa: areaM2Of(boundary) / 10_000, drawn: JSON.stringify(parts[0]) };
}

function pointOf(position: Position, middle: Position): MappedPoint {
  return { at: metresOnGround([position], middle)[0]!, drawn: JSON.stringify(position) };
}

/** A file of which nothing serves the farm. */
function sayEmpty(desk: Desk, file: string, features: readonly MapFeature[], serving: readonly MapFeature[]): void {
  if (features.some((feature) => (feature.drawn.kind === "ground" && feature.name !== "") || serving.includes(feature))) return;
  const at = { file, line: 1, column: 1 };
  const ground = features.filter(({ drawn }) => drawn.kind === "ground").length;
  const lines = features.filter(({ drawn }) => drawn.kind === "line").length;
  const found = ground > 0 ? `no ground in ${file} has a name` : lines > 0 ? `${file} holds lines and no ground` : `there is no ground in ${file}, and no gate of this farm`;
  say(desk, at, { code: "map-empty", found, allowed: "ground is drawn as a polygon (GeoJSON, KML) or walked round as a track (GPX), under the name of a field or cell", next: ground > 0 ? "give each a name" : "draw it so, or take the file out of map" });
}

/** Ground that nobody uses, and that is spelt nearly as a field or cell that is not on the map. */
function noteNear(desk: Desk, features: readonly MapFeature[], used: ReadonlySet<string>): void {
  const drawn = features.filter((feature) => feature.drawn.kind === "ground" && feature.name !== "");
  const lacking = [...used].filter((name) => !drawn.some((feature) => feature.name === name));
  for (const feature of drawn.filter(({ name }) => !used.has(name))) {
    const near = nearNames(feature.name, lacking);
    const { file, line, column, name } = feature;
    if (near.length > 0) desk.notes.push({ file, line, column, code: "map-name-near", found: `no field or cell is called ${name}`, allowed: `${near.join(" and ")} ${near.length > 1 ? "are" : "is"} not on the map`, next: "write one name in both if they are one" });
  }
}
