import type { Corner } from "../../science/boundary.js";
import { metresOnGround, type Position } from "../../science/distance.js";
import { crossingOf, isInside, turnedAreaM2 } from "../../science/rings.js";
import type { Amiss } from "../desk.js";
import type { MapFeature } from "./map-feature.js";

/** What is amiss with a drawing by itself: its coordinates, its parts, its rings. All of it where one does not hide the other. */
export function groundAmiss({ name, drawn }: MapFeature): readonly Amiss[] {
  if (drawn.kind === "line") return [];
  if (drawn.kind === "point") return coordinatesAmiss(name, [drawn.position]);
  const coordinates = coordinatesAmiss(name, drawn.parts.flat(2));
  if (coordinates.length > 0) return coordinates;
  if (drawn.parts.length !== 1) {
    return [{ code: "ground-in-parts", found: `${name} is drawn in ${drawn.parts.length} parts`, allowed: "a field or cell is one piece of ground", next: "give each part a name, and write each as a cell" }];
  }
  const rings = drawn.parts[0]!;
  const few = rings.findIndex((ring) => new Set(ring.map(String)).size < 3);
  if (few >= 0) return [{ code: "too-few-corners", found: `${few === 0 ? name : `a hole in ${name}`} has fewer than three corners`, allowed: "ground has three corners or more", next: "draw all its corners" }];
  return ringsAmiss(name, rings.map((ring) => metresOnGround(ring, rings[0]![0])));
}

/** Degrees east and north; figures that are none of this globe are turned round, or metres of a grid. */
function coordinatesAmiss(name: string, positions: readonly Position[]): readonly Amiss[] {
  const off = positions.find(([longitude, latitude]) => Math.abs(longitude) > 180 || Math.abs(latitude) > 90);
  if (off === undefined) return [];
  const turned = positions.every(([first, second]) => Math.abs(second) <= 180 && Math.abs(first) <= 90);
  if (turned) return [latitudeFirst(name, `${off.join(", ")} has a latitude of ${off[1]} degrees`)];
  return [{ code: "not-degrees", found: `${name}: ${off.join(", ")} are no degrees`, allowed: "coordinates are longitude and latitude in degrees (WGS 84), not metres of a national grid", next: "save the map in WGS 84 (EPSG 4326)" }];
}

export function latitudeFirst(name: string, found: string): Amiss {
  return { code: "latitude-first", found: `${name}: ${found}`, allowed: "the longitude (east, west) stands before the latitude (north, south)", next: "save the map again, longitude first" };
}

function ringsAmiss(name: string, rings: readonly (readonly Corner[])[]): readonly Amiss[] {
  const crossing = crossingOf(rings);
  if (crossing) return [{ code: "crosses-itself", ...crossingWords(name, rings, crossing), next: "draw the corners in order round the ground" }];
  const outer = rings[0]!;
  if (isFlat(outer)) return [{ code: "no-ground", found: `the corners of ${name} lie in one line`, allowed: "a boundary goes round ground", next: "draw all its corners" }];
  const holes = rings.slice(1);
  const outside = holes.find((hole) => !hole.some((corner) => isInside(outer, corner)));
  const nested = holes.some((hole, i) => holes.some((other, j) => i !== j && isInside(other, hole[0]!)));
  if (!outside && !nested) return [];
  return [{ code: "hole-outside", found: outside ? `a hole of ${name} lies outside it` : `one hole of ${name} lies in another`, allowed: "a hole is ground inside the boundary that does not count, such as a pond", next: "take it out, or draw it where it is" }];
}

type Crossing = NonNullable<ReturnType<typeof crossingOf>>;

function crossingWords(name: string, rings: readonly (readonly Corner[])[], [[ring, corner], [otherRing, otherCorner]]: Crossing): { found: string; allowed: string } {
  const side = (r: number, at: number): string => `from corner ${at + 1} to ${((at + 1) % rings[r]!.length) + 1}`;
  if (ring !== otherRing) return { found: `a hole of ${name} crosses ${ring === 0 ? "its boundary" : "another hole"}`, allowed: "a hole lies whole inside the boundary, apart from others" };
  const whose = ring === 0 ? `the boundary of ${name}` : `a hole of ${name}`;
  return { found: `${whose} crosses itself: its side ${side(ring, corner)} crosses that ${side(ring, otherCorner)}`, allowed: "a boundary goes once round the ground" };
}

/** Narrower than a thousand-millionth of its length squared: no ground, but a line. */
function isFlat(ring: readonly Corner[]): boolean {
  const way = ring.reduce((sum, [x, y], i) => sum + Math.hypot(ring[(i + 1) % ring.length]![0] - x, ring[(i + 1) % ring.length]![1] - y), 0);
  return Math.abs(turnedAreaM2(ring)) < 1e-6 * way * way;
}
