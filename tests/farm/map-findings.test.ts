import { describe, expect, it } from "vitest";
import { farmOf, box, degrees, findingsOn, geoJson, ground, point, read, type Feature, type Metres } from "./drawn-farm.js";

const CROFT = "  Croft:\n    cover: 2200 kg/ha\n    cells: { A1: {}, A2: { area: 0.4 ha } }\n";
const A1 = ground("A1", box(0, 0, 60, 60));
const YARD = point("yard", [0, -80]);

const codes = (fields: string, ...features: readonly Feature[]): string[] => findingsOn(fields, geoJson(...features)).map(({ code }) => code);
const turned = (feature: Feature): Feature => ({ ...feature, geometry: { ...feature.geometry, coordinates: turnedRound(feature.geometry.coordinates) } });

function turnedRound(coordinates: unknown): unknown {
  const list = coordinates as readonly unknown[];
  return typeof list[0] === "number" ? [list[1], list[0]] : list.map(turnedRound);
}

describe("what may be amiss with a drawing", () => {
  const bow: readonly Metres[] = [[0, 0], [60, 60], [60, 0], [0, 60]];

  it.each([
    ["a ring that crosses itself", ground("A1", bow), "crosses-itself"],
    ["two corners", ground("A1", [[0, 0], [60, 0], [0, 0]]), "too-few-corners"],
    ["three in a line", ground("A1", [[0, 0], [0, 30], [0, 60]]), "no-ground"],
    ["a hole outside", ground("A1", box(0, 0, 60, 60), box(80, 0, 90, 10)), "hole-outside"],
    ["a hole across its boundary", ground("A1", box(0, 0, 60, 60), box(50, 20, 70, 30)), "crosses-itself"],
    ["a hole in a hole", ground("A1", box(0, 0, 60, 60), box(10, 10, 40, 40), box(20, 20, 30, 30)), "hole-outside"],
    ["two parts", { name: "A1", geometry: { type: "MultiPolygon", coordinates: [[[[0, 0], [0.001, 0], [0, 0.001], [0, 0]]], [[[1, 1], [1.001, 1], [1, 1.001], [1, 1]]]] } }, "ground-in-parts"],
    ["metres of a grid", { name: "A1", geometry: { type: "Polygon", coordinates: [[[352000, 512000], [352060, 512000], [352060, 512060], [352000, 512000]]] } }, "not-degrees"],
    ["latitudes beyond the pole", { name: "A1", geometry: { type: "Polygon", coordinates: [[[-43.6, 170.3], [-43.601, 170.3], [-43.6, 170.301], [-43.6, 170.3]]] } }, "latitude-first"],
    ["a ring left open", { name: "A1", geometry: { type: "Polygon", coordinates: [[[0, 0], [0.001, 0], [0, 0.001]]] } }, "ring-open"],
    ["a line", { name: "A1", geometry: { type: "LineString", coordinates: [[0, 0], [0.001, 0]] } }, "not-on-map"],
    ["texts for figures", { name: "A1", geometry: { type: "Polygon", coordinates: [[["0", "1"]]] } }, "map-form"],
    ["a garden", ground("A1", box(0, 0, 5, 5)), "out-of-reach"],
    ["a parish", ground("A1", box(0, 0, 1000, 1000)), "out-of-reach"],
    ["its name misspelt", ground("A 1", box(0, 0, 60, 60)), "not-on-map"],
  ])("%s", (_, feature, code) => {
    expect(codes(CROFT, feature, ground("B1", box(200, 0, 260, 60)))).toEqual([code]);
  });

  it("says where, what was found, and what to do", () => {
    expect(findingsOn(CROFT, geoJson(YARD, ground("A1", bow)))).toEqual([{
      file: "farm.geojson", line: 3, column: 1, code: "crosses-itself", found: "the boundary of A1 crosses itself: its side from corner 1 to 2 crosses that from corner 3 to 4",
      allowed: "a boundary goes once round the ground", next: "draw the corners in order round the ground",
    }]);
    expect(findingsOn(CROFT, geoJson(ground("A 1", box(0, 0, 60, 60))))[0]).toMatchObject({ file: "farm.yaml", line: 7, column: 14, allowed: "on the map: A 1", next: "A 1?" });
  });

  it("finds a yard or ground far off, and coordinates that turning round would mend", () => {
    expect(codes(CROFT, A1, point("A1", [10, 0]), turned(YARD))).toEqual(["latitude-first"]);
    expect(codes(CROFT, A1, point("A1", [10, 0]), { ...YARD, geometry: { type: "Point", coordinates: [-7.5, 50.5] } })).toEqual(["far-off"]);
    expect(codes(CROFT, turned(A1), point("A1", [10, 0]), YARD)).toEqual(["latitude-first"]);
  });

  it("finds one name drawn twice, but not a gate in its ground", () => {
    expect(codes(CROFT, A1, ground("A1", box(100, 0, 160, 60)), point("A1", [0, 0]))).toEqual(["feature-twice"]);
  });

  it("does not judge what the farm does not use", () => {
    const got = read(farmOf(CROFT), { "farm.geojson": geoJson(A1, ground("Church", bow), ground("Church", bow)) });
    expect(got.ok && got.notes).toEqual([]);
  });

  it("tells all at once, in order of the files", () => {
    const found = findingsOn("  Croft:\n    cover: 2200 kg/ha\n    cells: { A1: {}, A2: {}, A3: { area: 0.3 } }\n", geoJson(ground("A2", bow), ground("A1", [[0, 0], [0, 9], [0, 60]])));
    expect(found.map(({ file, line, code }) => [file, line, code])).toEqual([["farm.yaml", 7, "unit-missing"], ["farm.geojson", 2, "crosses-itself"], ["farm.geojson", 3, "no-ground"]]);
  });
});

describe("what may be amiss with a map file", () => {
  const one = (map: string, name: string) => findingsOn(CROFT, map, name)[0]!;

  it.each([
    ["farm.geojson", '{ "type": "FeatureCollection",\n  "features": [ }', "json-form", 2, 17],
    ["farm.geojson", "", "json-form", 1, 1],
    ["farm.geojson", '{ "type": "Polygon", "coordinates": [] }', "map-form", 1, 1],
    ["farm.geojson", '{ "type": "FeatureCollection", "features": [\n 7 ] }', "map-form", 1, 44],
    ["farm.geojson", '{ "type": "FeatureCollection", "features": [] }', "map-empty", 1, 1],
    ["farm.kml", "<kml>\n<Placemark></kml>", "xml-form", 2, 1],
    ["farm.kml", "<gpx/>", "map-form", 1, 1],
    ["farm.kml", "<kml><Placemark><name>A1</name><LineString><coordinates>0,0 1,1</coordinates></LineString></Placemark></kml>", "map-empty", 1, 1],
    ["farm.gpx", "", "xml-form", 1, 1],
    ["farm.gpx", '<gpx><wpt lat="50" lon="-8"><name>well</name></wpt></gpx>', "map-empty", 1, 1],
  ])("%s that is %s", (name, map, code, line, column) => {
    expect(findingsOn(CROFT, map, name)).toContainEqual(expect.objectContaining({ file: name, code, line, column }));
  });

  it.each([
    ["farm.gpx", '<gpx><wpt lat="50.5"><name>yard</name></wpt></gpx>', "map-form"],
    ["farm.kml", "<kml><Placemark><name>A1</name><Point><coordinates>here</coordinates></Point></Placemark></kml>", "map-form"],
    ["farm.gpx", '<gpx><trk><name>A1</name><trkseg><trkpt lat="50.5" lon="-8.5"/><trkpt lat="50.5" lon="west"/><trkpt lat="50.501" lon="-8.501"/></trkseg></trk></gpx>', "map-form"],
    ["farm.gpx", '<gpx><trk><name>A1</name><trkseg><trkpt lat="50.5" lon="-8.5"/></trkseg><trkseg><trkpt lat="50.501" lon="-8.5"/><trkpt lat="50.501" lon="-8.501"/></trkseg></trk></gpx>', "track-broken"],
    ["farm.kml", "<kml><Placemark><name>A1</name><Polygon><outerBoundaryIs><LinearRing><coordinates>0,0 0.001, 0 0.001,0.001 0,0</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark></kml>", "map-form"],
  ])("%s with a drawing that is broken", (name, map, code) => {
    expect(findingsOn(CROFT, map, name).map((finding) => finding.code)).toContain(code);
  });

  it("is of a kind that is read, beside the farm file, and there", () => {
    expect(one("", "farm.kmz")).toMatchObject({ code: "map-kind", file: "farm.yaml", line: 3, column: 6 });
    expect(one("", "maps/farm.kml").code).toBe("map-kind");
    expect(read(farmOf(CROFT), {})).toMatchObject({ ok: false, findings: [{ code: "no-file", line: 3, column: 6 }] });
    const twice = read(farmOf(CROFT, "farm.geojson, farm.geojson"), { "farm.geojson": geoJson(A1) });
    expect(twice).toMatchObject({ ok: false, findings: [{ code: "name-twice", column: 20 }] });
  });

  it("has names", () => {
    expect(findingsOn(CROFT, geoJson({ ...A1, name: "" }))).toContainEqual(expect.objectContaining({ code: "map-empty", found: "no ground in farm.geojson has a name" }));
  });
});

describe("what may be amiss between cells and fields", () => {
  const TWO = "  Croft:\n    cover: 2200 kg/ha\n    cells: { A1: {}, A2: {} }\n";
  const field = ground("Croft", box(0, 0, 120, 60));

  it("lets drawings differ by two in a hundred, and no more", () => {
    const near = read(farmOf(TWO), { "farm.geojson": geoJson(field, A1, ground("A2", box(59.5, 0, 120.4, 60))) });
    expect(near.ok && near.notes).toEqual([]);
    expect(codes(TWO, field, A1, ground("A2", box(57, 0, 117, 60)))).toEqual(["cells-overlap"]);
    expect(codes(TWO, field, ground("A1", box(-3, 0, 57, 60)), ground("A2", box(60, 0, 118, 60)))).toEqual(["cell-outside"]);
    expect(codes(TWO, field, A1, ground("A2", box(64, 0, 130, 60)))).toEqual(["cells-over-field", "cell-outside"]);
  });

  it("finds cells of two fields in each other", () => {
    const fields = "  Croft:\n    cover: 2200 kg/ha\n    cells: { A1: {} }\n  Holm:\n    cover: 2200 kg/ha\n    cells: { B1: {} }\n";
    expect(findingsOn(fields, geoJson(A1, ground("B1", box(30, 0, 90, 60))))).toMatchObject([{ code: "cells-overlap", line: 10, found: "B1 and A1 share 0.18 ha on the map" }]);
  });

  it("a hole is ground outside", () => {
    expect(codes(TWO, ground("Croft", box(0, 0, 120, 60), box(10, 10, 30, 30)), ground("A1", box(2, 2, 60, 58)), ground("A2", box(62, 2, 118, 58)))).toEqual(["cell-outside"]);
  });

  it("asks for a map, or the name on it, where a boundary is a name", () => {
    const named = CROFT.replace("A1: {}", "A1: { boundary: North holm }");
    expect(codes(named, A1)).toEqual(["not-on-map"]);
    expect(read(farmOf(named).replace("map: farm.geojson\n", ""), {})).toMatchObject({ ok: false, findings: [{ code: "not-on-map", next: "write map: and the name of its file beside farm:" }] });
    expect(degrees([0, 0])).toEqual([-8.5, 50.5]);
  });
});
