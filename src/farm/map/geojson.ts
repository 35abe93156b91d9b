import { z } from "zod";
import type { Position } from "../../science/distance.js";
import type { Finding } from "../finding.js";
import type { Place } from "../tree.js";
import { faultAt, NOWHERE, refused, type Drawn, type MapFeature, type MapRead } from "./map-feature.js";
import { readJson } from "./read-json.js";

const position = z.array(z.number()).min(2);
const ring = z.array(position);

/** Of what may be drawn, what can be ground or a gate; lines are known so that they can be told. */
const geometry = z.discriminatedUnion("type", [
  z.object({ type: z.literal("Polygon"), coordinates: z.array(ring).min(1) }),
  z.object({ type: z.literal("MultiPolygon"), coordinates: z.array(z.array(ring).min(1)).min(1) }),
  z.object({ type: z.literal("Point"), coordinates: position }),
  z.object({ type: z.enum(["MultiPoint", "LineString", "MultiLineString"]), coordinates: z.array(z.unknown()) }),
  z.object({ type: z.literal("GeometryCollection"), geometries: z.array(z.unknown()) }),
]);

const feature = z.object({
  type: z.literal("Feature"),
  properties: z.looseObject({ name: z.unknown().optional() }).nullish(),
  geometry: z.unknown(),
});

const collection = z.object({ type: z.literal("FeatureCollection"), features: z.array(z.unknown()) });

type PlaceOf = (path: readonly PropertyKey[]) => Place;

/** Reads a Feature or a FeatureCollection. Source: RFC 7946. */
export function readGeoJson(text: string, file: string): MapRead {
  const read = readJson(text);
  const place = placer(text, file);
  if (!read.ok) return refused(file, place(read.offset), "json-form", `the map is not well-formed JSON: ${read.found}`, "a .geojson file is JSON from end to end", "save it again from the program that drew it");
  const placeOf: PlaceOf = (path) => place(read.offsetOf(path));
  const whole = collection.safeParse(read.value);
  const found = whole.success ? whole.data.features.map((value, i) => oneFeature(value, ["features", i], placeOf)) : [oneFeature(read.value, [], placeOf)];
  const type = (read.value as { type?: unknown } | null)?.type;
  if (!whole.success && type !== "Feature") {
    const known = typeof type === "string" ? `a ${type}` : "neither of the two";
    return refused(file, placeOf([]), "map-form", `the map is ${known}`, "a map is a FeatureCollection, or one Feature with its name", "save it again with names and ground");
  }
  return { features: found.flatMap((one) => ("name" in one ? one : [])), findings: found.flatMap((one) => ("name" in one ? [] : one.findings)) };
}

/** Lines and columns of offsets in a text, both from 1. */
function placer(text: string, file: string): (offset: number) => Place {
  const starts = [0, ...[...text.matchAll(/\r\n|\n|\r/g)].map((end) => end.index + end[0].length)];
  return (offset) => {
    let [low, high] = [0, starts.length];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle;
    }
    return { file, line: low + 1, column: offset - starts[low]! + 1 };
  };
}

/** A feature that is drawn nowhere is passed over. */
function oneFeature(value: unknown, path: readonly PropertyKey[], placeOf: PlaceOf): MapFeature | { readonly findings: readonly Finding[] } {
  const read = feature.safeParse(value);
  if (!read.success) return { findings: [faultAt(placeOf(path), "map-form", "here stands no Feature", "a FeatureCollection is a list of Features, each with properties and geometry", "take it out, or save the map again")] };
  const name = nameOf(read.data.properties?.name);
  if (read.data.geometry === null || read.data.geometry === undefined) return { findings: [] };
  const place = placeOf(path);
  const drawn = geometry.safeParse(read.data.geometry);
  if (!drawn.success) {
    const issue = drawn.error.issues[0]!;
    const where = issue.path.map(String).join(" ");
    const broken: Drawn = (read.data.geometry as { type?: unknown }).type === "Point" ? { kind: "point", position: NOWHERE } : { kind: "ground", parts: [] };
    return { name, ...place, drawn: broken, notes: [], faults: [faultAt(placeOf([...path, "geometry", ...issue.path]), "map-form", `${name}: ${where === "" ? "the geometry" : where} is not as it should be`, "coordinates are lists of longitude and latitude, as RFC 7946 has them", "save the map again")] };
  }
  const faults: Finding[] = [];
  return { name, ...place, drawn: drawnOf(drawn.data, [...path, "geometry", "coordinates"], placeOf, name, faults), faults, notes: [] };
}

function nameOf(written: unknown): string {
  return typeof written === "string" || typeof written === "number" ? String(written).trim() : "";
}

function drawnOf(read: z.infer<typeof geometry>, path: readonly PropertyKey[], placeOf: PlaceOf, name: string, faults: Finding[]): Drawn {
  if (read.type === "Point") return { kind: "point", position: positionOf(read.coordinates) };
  if (read.type !== "Polygon" && read.type !== "MultiPolygon") return { kind: "line" };
  const parts = read.type === "Polygon" ? [read.coordinates] : read.coordinates;
  const at = (part: number, i: number): Place => placeOf([...path, ...(read.type === "Polygon" ? [] : [part]), i]);
  return { kind: "ground", parts: parts.map((rings, part) => rings.map((one, i) => closedRing(one.map(positionOf), at(part, i), name, faults))) };
}

function positionOf(coordinates: readonly number[]): Position {
  return [coordinates[0]!, coordinates[1]!];
}

/** A ring without its last position, which must be its first again; where it is not, that is a fault. */
export function closedRing(positions: readonly Position[], at: Place, name: string, faults: Finding[]): readonly Position[] {
  const [first, last] = [positions[0], positions.at(-1)];
  if (first && last && first[0] === last[0] && first[1] === last[1] && positions.length > 1) return positions.slice(0, -1);
  faults.push(faultAt(at, "ring-open", `${name}: the boundary does not come back to its first corner`, "the last position of a ring is the first again", "add the first position at its end, or close it where it was drawn"));
  return positions;
}
