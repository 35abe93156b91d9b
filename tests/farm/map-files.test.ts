import { DOMParser } from "@xmldom/xmldom";
import { gpx, kml } from "@tmcw/togeojson";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findingText } from "../../src/farm/finding.js";
import { readGeoJson } from "../../src/farm/map/geojson.js";
import { readGpx } from "../../src/farm/map/gpx.js";
import { readKml } from "../../src/farm/map/kml.js";
import type { MapFeature } from "../../src/farm/map/map-feature.js";
import { readJson } from "../../src/farm/map/read-json.js";
import { box, farmOf, geoJson, ground, point, read as readOn } from "./drawn-farm.js";
import { scenarioText } from "./read-text.js";

const RUNS = { seed: 7946, numRuns: 200 };

/** A drawing as GeoJSON has it: rings closed again. */
function geometryOf({ drawn }: MapFeature): unknown {
  if (drawn.kind === "point") return { type: "Point", coordinates: drawn.position };
  return drawn.kind === "ground" ? { type: "Polygon", coordinates: drawn.parts[0]!.map((ring) => [...ring, ring[0]!]) } : null;
}

describe("JSON with places", () => {
  const parsed = (text: string): unknown => {
    try {
      return { value: JSON.stringify(JSON.parse(text)) };
    } catch {
      return "refused";
    }
  };
  const mine = (text: string): unknown => {
    const got = readJson(text);
    return got.ok ? { value: JSON.stringify(got.value) } : "refused";
  };

  it("reads what the language's own reader reads, and refuses what it refuses", () => {
    fc.assert(fc.property(fc.json(), (text) => {
      expect(mine(text)).toEqual(parsed(text));
    }), RUNS);
    fc.assert(fc.property(fc.json(), fc.nat(), fc.constantFrom("", ",", "]", "}", "\"", "0", "-", "1.", "tru", "\\", "\n", ":"), (text, at, piece) => {
      const broken = text.slice(0, at % text.length) + piece + text.slice((at % text.length) + 1);
      expect(mine(broken) === "refused").toBe(parsed(broken) === "refused");
    }), RUNS);
  });

  it("knows where things stand, and where it stops", () => {
    const text = '{ "a": [ 1,\n  { "b": [] } ] }';
    const got = readJson(text);
    expect(got.ok && [got.offsetOf([]), got.offsetOf(["a"]), got.offsetOf(["a", 1]), got.offsetOf(["a", 1, "b"]), got.offsetOf(["a", 0])]).toEqual([0, 7, 14, 21, 7]);
    expect(readJson('{ "a": 1, }')).toEqual({ ok: false, offset: 10, found: "nothing stands after the comma" });
    expect(readJson('{ "a": 1')).toMatchObject({ ok: false, offset: 8, found: "the file ends too soon" });
    expect(readJson("[".repeat(100_000)).ok).toBe(false);
  });
});

describe("outside truth: RFC 7946", () => {
  const feature = (geometry: unknown): string => JSON.stringify({ type: "Feature", properties: { name: "X" }, geometry });

  it("A.3: a polygon with a hole", () => {
    const polygon = {
      type: "Polygon",
      coordinates: [
        [[100.0, 0.0], [101.0, 0.0], [101.0, 1.0], [100.0, 1.0], [100.0, 0.0]],
        [[100.8, 0.8], [100.8, 0.2], [100.2, 0.2], [100.2, 0.8], [100.8, 0.8]],
      ],
    };
    const got = readGeoJson(feature(polygon), "map.geojson");
    expect(got.findings).toEqual([]);
    expect(got.features[0]).toMatchObject({ name: "X", faults: [], line: 1, column: 1 });
    expect(geometryOf(got.features[0]!)).toEqual(polygon);
  });

  it("1.5: a collection of a point, a line and a polygon", () => {
    const text = `{ "type": "FeatureCollection", "features": [
      { "type": "Feature", "geometry": { "type": "Point", "coordinates": [102.0, 0.5] }, "properties": { "prop0": "value0" } },
      { "type": "Feature", "geometry": { "type": "LineString", "coordinates": [[102.0, 0.0], [103.0, 1.0], [104.0, 0.0], [105.0, 1.0]] }, "properties": { "prop0": "value0", "prop1": 0.0 } },
      { "type": "Feature", "geometry": { "type": "Polygon", "coordinates": [[[100.0, 0.0], [101.0, 0.0], [101.0, 1.0], [100.0, 1.0], [100.0, 0.0]]] }, "properties": { "prop0": "value0", "prop1": { "this": "that" } } }
    ] }`;
    const got = readGeoJson(text, "map.geojson");
    expect(got.findings).toEqual([]);
    expect(got.features.map(({ drawn, line, column }) => [drawn.kind, line, column])).toEqual([["point", 2, 7], ["line", 3, 7], ["ground", 4, 7]]);
  });

  it("3.1.6: a ring ends where it begins", () => {
    const open = readGeoJson(feature({ type: "Polygon", coordinates: [[[0, 0], [1, 0], [1, 1]]] }), "map.geojson");
    expect(open.features[0]!.faults.map(({ code }) => code)).toEqual(["ring-open"]);
  });

  it("3.2: a feature may lie nowhere, and a position may have a height", () => {
    expect(readGeoJson(feature(null), "map.geojson")).toEqual({ features: [], findings: [] });
    const high = readGeoJson(feature({ type: "Point", coordinates: [1, 2, 30] }), "map.geojson");
    expect(high.features[0]!.drawn).toEqual({ kind: "point", position: [1, 2] });
  });
});

describe("outside truth: GPX and KML as a general library reads them", () => {
  interface Theirs {
    readonly properties: { readonly name?: string };
    readonly geometry: { readonly type: string; readonly coordinates: unknown };
  }
  const read = (library: typeof kml | typeof gpx, text: string) => library(new DOMParser().parseFromString(text, "text/xml") as never).features as unknown as readonly Theirs[];

  const KML = `<kml xmlns="http://www.opengis.net/kml/2.2"><Document><Folder><Placemark><name> Pond  field</name><MultiGeometry>
    <Polygon><outerBoundaryIs><LinearRing><coordinates>-8.5,50.5,0 -8.49,50.5,0
      -8.49,50.51,0 -8.5,50.5,0</coordinates></LinearRing></outerBoundaryIs>
      <innerBoundaryIs><LinearRing><coordinates>-8.495,50.502 -8.494,50.502 -8.494,50.503 -8.495,50.502</coordinates></LinearRing></innerBoundaryIs></Polygon>
    </MultiGeometry></Placemark><Placemark><name>yard</name><Point><coordinates>-8.5,50.49</coordinates></Point></Placemark></Folder></Document></kml>`;

  it.each([["the farm's", scenarioText("rushy-leys.kml")], ["one with a hole and a point", KML]])("KML: %s", (_, text) => {
    const theirs = read(kml, text);
    const mine = readKml(text, "map.kml").features;
    expect(mine.map(({ name }) => name)).toEqual(theirs.map((feature) => String(feature.properties.name).trim()));
    const flat = (geometry: unknown): unknown => JSON.parse(JSON.stringify(geometry).replace(/,0(?=\])/g, "")) as unknown;
    expect(mine.map(geometryOf)).toEqual(theirs.map(({ geometry }) => flat(geometry)));
  });

  it("GPX: the farm's track and gate", () => {
    const text = scenarioText("rushy-leys.gpx");
    const theirs = read(gpx, text);
    const mine = readGpx(text, "map.gpx").features;
    expect(mine.map(({ name, drawn }) => [name, drawn.kind])).toEqual([["M2", "point"], ["M2", "ground"]]);
    const track = theirs.find(({ geometry }) => geometry.type === "LineString")!.geometry;
    const drawn = mine[1]!.drawn;
    expect(drawn.kind === "ground" && drawn.parts).toEqual([[track.coordinates]]);
    expect(geometryOf(mine[0]!)).toEqual(theirs.find(({ geometry }) => geometry.type === "Point")!.geometry);
  });
});

describe("reading maps never throws", () => {
  const FILES = ["rushy-leys.geojson", "rushy-leys.kml", "rushy-leys.gpx"];
  const PIECES = ["", "<", ">", "&", "{", "}", "[", "]", ",", "\"", "null", "-", "9e999", "12a", "M1", "L1", "__proto__", "\u0000", "<!DOCTYPE x>", "&m;", "</trk>", "1e2", " "];
  const farm = farmOf("  Croft:\n    cover: 2200 kg/ha\n    cells: { M1: {}, M2: { area: 0.4 ha }, P1: { boundary: Long leys } }\n", `[${FILES.join(", ")}]`);

  it("on maps with pieces put in and taken out", () => {
    const change = fc.record({ at: fc.nat(), out: fc.nat({ max: 30 }), piece: fc.constantFrom(...PIECES) });
    fc.assert(fc.property(fc.constantFrom(...FILES), fc.array(change, { minLength: 1, maxLength: 3 }), (file, changes) => {
      const maps = Object.fromEntries(FILES.map((name) => [name, scenarioText(name)]));
      const text = changes.reduce((map, { at, out, piece }) => map.slice(0, at % map.length) + piece + map.slice((at % map.length) + out), maps[file]!);
      const got = readOn(farm, { ...maps, [file]: text });
      if (got.ok) expect(got.value.cells.every((cell) => cell.areaHa > 0)).toBe(true);
      else expect(got.findings.length).toBeGreaterThan(0);
      for (const finding of got.ok ? got.notes : got.findings) {
        expect(finding.line).toBeGreaterThanOrEqual(1);
        expect(finding.column).toBeGreaterThanOrEqual(1);
        expect(findingText(finding)).not.toMatch(/undefined|NaN|\[object/);
      }
    }), RUNS);
  });

  it("and reads that farm as it stands", () => {
    const got = readOn(farm, Object.fromEntries(FILES.map((name) => [name, scenarioText(name)])));
    expect(got.ok ? got.value.cells.map(({ boundary }) => boundary?.rings.length) : got.findings).toEqual([1, 1, 2]);
    expect(geoJson(ground("A1", box(0, 0, 9, 9)), point("yard", [0, 0])).split("\n")).toHaveLength(4);
  });
});
