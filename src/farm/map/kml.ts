import type { Element } from "@xmldom/xmldom";
import type { Position } from "../../science/distance.js";
import type { Finding } from "../finding.js";
import { closedRing } from "./geojson.js";
import { faultAt, NOWHERE, type MapFeature, type MapRead } from "./map-feature.js";
import { below, placeOf, positionFrom, rootOf, textIn, within } from "./read-xml.js";

/** Reads KML 2.2: polygons with inner boundaries, and points. Source: OGC 07-147r2. */
export function readKml(text: string, file: string): MapRead {
  const root = rootOf(text, file, "kml");
  if ("features" in root) return root;
  return { features: below(root, "Placemark").flatMap((placemark) => featuresOf(placemark, file)), findings: [] };
}

/** A placemark may hold ground and a point. */
function featuresOf(placemark: Element, file: string): readonly MapFeature[] {
  const name = textIn(placemark, "name");
  const place = placeOf(placemark, file);
  const faults: Finding[] = [];
  const rings = (element: Element, within_: string): readonly (readonly Position[])[] => below(element, within_).flatMap((side) => below(side, "LinearRing")).map((ring) => closedRing(positionsOf(ring, file, name, faults), placeOf(ring, file), name, faults));
  const parts = below(placemark, "Polygon").map((polygon) => [...rings(polygon, "outerBoundaryIs").slice(0, 1), ...rings(polygon, "innerBoundaryIs")]);
  const points = below(placemark, "Point").map((point) => positionsOf(point, file, name, faults)[0] ?? NOWHERE);
  const ground: readonly MapFeature[] = parts.length > 0 ? [{ name, ...place, drawn: { kind: "ground", parts }, faults, notes: [] }] : [];
  const gates = points.slice(0, 1).map((position): MapFeature => ({ name, ...place, drawn: { kind: "point", position }, faults, notes: [] }));
  return parts.length + gates.length > 0 ? [...ground, ...gates] : [{ name, ...place, drawn: { kind: "line" }, faults, notes: [] }];
}

/** "-2.51,52.1,0 -2.50,52.1,0": longitude, latitude and height, with no blank inside. */
function positionsOf(element: Element, file: string, name: string, faults: Finding[]): readonly Position[] {
  const coordinates = within(element, "coordinates")[0];
  const tuples = (coordinates?.textContent ?? "").trim().split(/\s+/).filter((tuple) => tuple !== "");
  const positions = tuples.map((tuple) => positionFrom(tuple.split(",")[0], tuple.split(",")[1]));
  const wrong = positions.indexOf(null);
  if (wrong >= 0) faults.push(faultAt(placeOf(coordinates!, file), "map-form", `${name}: ${tuples[wrong]!.slice(0, 40)} is no position`, "a position is longitude, comma, latitude, without blanks", "save the map again"));
  return positions.filter((position) => position !== null);
}
