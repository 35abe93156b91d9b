import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { formDifferences } from "../../src/farm/form-differences.js";
import { readChanged } from "../../src/farm/change.js";
import { readFarm, sha256 } from "../../src/files/read.js";
import { areaM2Of, turnedAreaM2 } from "../../src/science/rings.js";
import { box, cellOf, farmOf, farmOn, findingsOn, geoJson, ground, point, read, type Metres } from "./drawn-farm.js";
import { LOW_ACRE, lowAcre, scenarioOf, TABLES } from "./read-text.js";

const CROFT = "  Croft:\n    cover: 2200 kg/ha\n    cells: { A1: {}, A2: { area: 0.4 ha } }\n";
const A1 = ground("A1", box(0, 0, 60, 60));
const assumedOf = (scenario: ReturnType<typeof farmOn>["scenario"], key: string) => scenario.assumed.filter((row) => row.key.startsWith(key)).map((row) => `${row.key}: ${row.value}`);

describe("fields and cells on a map", () => {
  it("take their boundary and area from the ground of their name", () => {
    const { scenario, notes } = farmOn(CROFT, A1, ground("A2", box(70, 0, 130, 66)));
    expect(notes).toEqual([]);
    const [drawn, typed] = [cellOf(scenario, "A1"), cellOf(scenario, "A2")];
    expect(drawn.areaHa).toBeCloseTo(0.36, 4);
    expect(areaM2Of(drawn.boundary!)).toBeCloseTo(drawn.areaHa * 10_000, 6);
    // What is typed goes before; the boundary is the map's all the same.
    expect(typed.areaHa).toBe(0.4);
    expect(areaM2Of(typed.boundary!)).toBeCloseTo(3960, 0);
    // From one point of the whole farm: the middle, 65 m east and 33 m north of the first corner.
    expect(drawn.boundary!.rings[0]![0]![0]).toBeCloseTo(-65, 1);
    expect(typed.boundary!.rings[0]![0]![0]).toBeCloseTo(5, 1);
    expect(drawn.boundary!.rings[0]![0]![1]).toBeCloseTo(-33, 1);
  });

  it("take it from another name where one is written", () => {
    const { scenario } = farmOn(CROFT.replace("A1: {}", "A1: { boundary: North holm }"), ground("North holm", box(0, 0, 50, 50), box(10, 10, 20, 30)));
    expect(cellOf(scenario, "A1").areaHa).toBeCloseTo(0.23, 4);
    expect(cellOf(scenario, "A1").boundary!.rings.map((ring) => Math.sign(turnedAreaM2(ring)))).toEqual([1, -1]);
  });

  it("take it from several files of any kind", () => {
    const gpx = '<gpx xmlns="http://www.topografix.com/GPX/1/1"><rte><name>A2</name><rtept lat="50.5" lon="-8.499"/><rtept lat="50.5" lon="-8.498"/><rtept lat="50.501" lon="-8.498"/><rtept lat="50.501" lon="-8.499"/></rte></gpx>';
    const got = read(farmOf("  Croft:\n    cover: 2200 kg/ha\n    cells: { A1: {}, A2: {} }\n", "[farm.geojson, farm.gpx]"), { "farm.geojson": geoJson(A1), "farm.gpx": gpx });
    expect(got.ok && got.value.cells.map(({ areaHa }) => areaHa > 0.3)).toEqual([true, true]);
  });

  it("may be named alone, and a change still reaches one of them", () => {
    const features = [A1, ground("A2", box(70, 0, 130, 60)), ground("A3", box(140, 0, 200, 60))];
    const named = (cells: string): string => `  Croft:\n    cover: 2200 kg/ha\n    cells: ${cells}\n`;
    for (const cells of ["A1, A2, A3", "[A1, A2, A3]", "A1 to A3"]) expect(farmOn(named(cells), ...features).scenario.cells.map(({ name }) => name)).toEqual(["A1", "A2", "A3"]);
    const maps = [{ file: "farm.geojson", text: geoJson(...features) }];
    const got = readChanged({ file: "farm.yaml", text: farmOf(named("A1 to A3")) }, [{ file: "c.yaml", text: "change: x\nfields: { Croft: { cells: { A2: { shade: yes } } } }" }], TABLES, sha256, maps);
    expect(got.ok && got.value.scenario.cells.map(({ shade }) => shade)).toEqual([false, true, false]);
    expect(findingsOn(named("A1, A1"), geoJson(...features)).map(({ code, line }) => [code, line])).toEqual([["name-twice", 7]]);
    expect(findingsOn(named("A1 0.5 ha"), geoJson(...features)).map(({ code }) => code)).toContain("name-form");
  });

  it("say where a typed area is more than a twentieth off", () => {
    const { notes } = farmOn(CROFT, A1, ground("A2", box(70, 0, 130, 80)));
    expect(notes).toMatchObject([{ code: "area-differs", file: "farm.yaml", line: 7, found: "A2 is 0.4 ha as typed, 0.48 ha on the map" }]);
    expect(farmOn(CROFT, A1, ground("A2", box(70, 0, 130, 63.6))).notes).toEqual([]);
  });

  it("say where a name on the map is nearly one of the farm", () => {
    expect(farmOn(CROFT, A1, ground("croft", box(-10, -10, 200, 100))).notes).toMatchObject([{ code: "map-name-near", file: "farm.geojson", line: 3 }]);
  });

  it("say where a track ends far from its begin", () => {
    const track = (points: readonly string[]): string => `<gpx><trk><name>A1</name><trkseg>${points.map((at) => `<trkpt ${at}/>`).join("")}</trkseg></trk></gpx>`;
    const corners = ['lat="50.5" lon="-8.5"', 'lat="50.5" lon="-8.499"', 'lat="50.501" lon="-8.499"', 'lat="50.501" lon="-8.5"'];
    const notesOf = (points: readonly string[]) => {
      const got = read(farmOf(CROFT, "farm.gpx"), { "farm.gpx": track(points) });
      return got.ok ? got.notes.map(({ code }) => code) : got.findings;
    };
    expect(notesOf(corners)).toEqual(["track-open"]);
    expect(notesOf([...corners, 'lat="50.5001" lon="-8.5"'])).toEqual([]);
  });

  it("need half of the way round as movable fence unless it is written", () => {
    const { scenario } = farmOn(CROFT, ground("A1", box(0, 0, 90, 40)));
    expect(cellOf(scenario, "A1").fenceM).toBeCloseTo(130, 1);
    expect(assumedOf(scenario, "fence of")).toEqual(["fence of A1: half of the way round it", "fence of A2: two sides of a square"]);
  });
});

describe("the way from the yard", () => {
  const yard = point("yard", [0, -80]);

  it("is straight to the gate, else to the nearest of the boundary, and said to be assumed", () => {
    const gate = farmOn(CROFT, A1, yard, point("Croft", [60, 0]));
    expect(gate.scenario.fields[0]!.distanceM).toBe(100);
    expect(assumedOf(gate.scenario, "distance")).toEqual(["distance of Croft: 100 m"]);
    expect(farmOn(CROFT, A1, yard, point("A1", [39, 0])).scenario.fields[0]!.distanceM).toBe(89);
    const nearest = farmOn(CROFT, A1, yard);
    expect(nearest.scenario.fields[0]!.distanceM).toBe(80);
    expect(nearest.scenario.assumed.find(({ key }) => key === "distance of Croft")!.source).toBe("a straight line on the map, from the yard to the nearest of its boundary");
    expect(farmOn(CROFT, A1, point("yard", [20, 20])).scenario.fields[0]!.distanceM).toBe(0);
  });

  it("is what is typed, or as usual without a yard", () => {
    expect(farmOn(`${CROFT}    distance: 40 m\n`, A1, yard).scenario.fields[0]!.distanceM).toBe(40);
    expect(farmOn(CROFT, A1, point("Croft", [60, 0])).scenario.fields[0]!.distanceM).toBe(100);
    expect(findingsOn(CROFT, geoJson(A1, point("yard", [9000, 0])))).toMatchObject([{ code: "out-of-reach", line: 5 }]);
  });
});

describe("typed corners", () => {
  it("are the boundary of a cell, against the clock and without the first again", () => {
    const scenario = scenarioOf(lowAcre("L1: 0.5 ha", "L1: { boundary: [0 m x 0 m, 0 m x 45 m, 60 m x 45 m, 60 m x 0 m, 0 m x 0 m] }"));
    const ring = cellOf(scenario, "L1").boundary!.rings[0]!;
    expect(ring).toHaveLength(4);
    expect(turnedAreaM2(ring)).toBe(2700);
    expect(cellOf(scenario, "L1").fenceM).toBe(105);
    expect(cellOf(scenario, "L2").boundary).toBeNull();
  });
});

describe("fields cut into strips", () => {
  const KNOLL = (strips: string, more = ""): string => `  Knoll:\n    cover: 2200 kg/ha\n    strips: ${strips}\n${more}`;
  const oblong = ground("Knoll", box(0, 0, 180, 60));
  const codes = (fields: string, ...rings: readonly (readonly Metres[])[]): string[] => findingsOn(fields, geoJson(ground("Knoll", ...rings))).map(({ code }) => code);

  it("have cells of equal area, in order from the side", () => {
    const { scenario, notes } = farmOn(KNOLL("{ cells: K1 to K6, along: west }"), oblong);
    expect(notes).toEqual([]);
    expect(scenario.cells.map(({ name }) => name)).toEqual(["K1", "K2", "K3", "K4", "K5", "K6"]);
    for (const cell of scenario.cells) expect(Math.abs(cell.areaHa / scenario.cells[0]!.areaHa - 1)).toBeLessThan(1e-6);
    expect(scenario.cells.reduce((sum, { areaHa }) => sum + areaHa, 0)).toBeCloseTo(1.08, 3);
    const wests = scenario.cells.map(({ boundary }) => Math.min(...boundary!.rings[0]!.map(([x]) => x)));
    wests.forEach((west, i) => expect(west - wests[0]!).toBeCloseTo(30 * i, 1));
    expect(scenario.cells.map(({ fenceM }) => Math.round(fenceM))).toEqual([60, 120, 120, 120, 120, 60]);
  });

  it("are cut along the longest side unless another is named, and may be named one by one or backward", () => {
    const norths = (strips: string): number[] => farmOn(KNOLL(strips), oblong).scenario.cells.map(({ boundary }) => Math.round(Math.max(...boundary!.rings[0]!.map(([, y]) => y))));
    const souths = norths("K1 to K3");
    expect([...souths].sort((a, b) => a - b)).toEqual([-10, 10, 30]);
    expect(norths("{ cells: K1 to K3, along: north }")).toEqual([30, 10, -10]);
    expect(norths("{ cells: [K1, K2, K7], along: south }")).toEqual([-10, 10, 30]);
    expect(farmOn(KNOLL("K09 to K11"), oblong).scenario.cells.map(({ name }) => name)).toEqual(["K09", "K10", "K11"]);
    expect(farmOn(KNOLL("K2 to K1"), oblong).scenario.cells.map(({ name }) => name)).toEqual(["K2", "K1"]);
    expect(farmOn(KNOLL("K1"), oblong).scenario.cells[0]!.areaHa).toBeCloseTo(1.08, 3);
  });

  it("keep what is written of one of them, and may have typed corners", () => {
    const { scenario } = farmOn(KNOLL("K1 to K3", "    shade: no\n    cells: { K2: { shade: yes } }\n"), oblong);
    expect(scenario.cells.map(({ shade }) => shade)).toEqual([false, true, false]);
    const typed = scenarioOf(LOW_ACRE.replace("fields:\n", "fields:\n  Knoll:\n    cover: 2200 kg/ha\n    boundary: 0 m x 0 m, 90 m x 0 m, 90 m x 60 m, 0 m x 60 m\n    strips: K1 to K2\n"));
    expect(cellOf(typed, "K1").areaHa).toBeCloseTo(0.27, 9);
  });

  it("are refused where they come out in pieces, with the strip and its pieces", () => {
    const horseshoe: readonly Metres[] = [[0, 0], [180, 0], [180, 120], [120, 120], [120, 40], [60, 40], [60, 120], [0, 120]];
    const found = findingsOn(KNOLL("{ cells: K1 to K4, along: south }"), geoJson(ground("Knoll", horseshoe)));
    expect(found.map(({ code, found: words }) => [code, words])).toEqual([
      ["strip-in-parts", "K3 would be in 2 pieces of 0.21 ha and 0.21 ha"],
      ["strip-in-parts", "K4 would be in 2 pieces of 0.21 ha and 0.21 ha"],
    ]);
    // South as north: the level cut leaves two arms. West and east cut it upright.
    expect(found[0]!.next).toBe("write along: east or west, so that each is whole");
    expect(farmOn(KNOLL("{ cells: K1 to K4, along: west }"), ground("Knoll", horseshoe)).scenario.cells).toHaveLength(4);
  });

  it("are refused where names, side or ground do not fit", () => {
    const square = box(0, 0, 100, 100);
    expect(codes(KNOLL("K1 to L6"), square)).toEqual(["strips-form"]);
    expect(codes(KNOLL("K1, K1"), square)).toEqual(["strips-form"]);
    expect(codes(KNOLL("K1 to K999"), square)).toEqual(["strips-form"]);
    expect(codes(KNOLL("{ cells: K1 to K2, along: up }"), square)).toEqual(["word-unknown"]);
    expect(codes(KNOLL("{ cells: K1 to K2, along: north }"), [[0, 0], [100, 0], [60, 100]])).toEqual(["side-unknown"]);
    expect(codes(KNOLL("K1 to K2", "    cells: { K3: { area: 0.2 ha } }\n"), square)).toContain("name-unknown");
    expect(codes(KNOLL("K1 to K2", "    cells: { K2: { area: 0.2 ha } }\n"), square)).toEqual(["two-ways"]);
    expect(codes(KNOLL("K1 to K59"), box(0, 0, 50, 50))[0]).toBe("out-of-reach");
    expect(findingsOn(KNOLL("K1 to K2"), geoJson(A1)).map(({ code }) => code)).toEqual(["strips-no-boundary"]);
  });
});

describe("a farm's print", () => {
  const print = (...features: Parameters<typeof farmOn>[1][]) => farmOn(CROFT, ...features).scenario;

  it("changes when a corner of its ground or a gate does, and by nothing else on the map", () => {
    const base = print(A1);
    expect(print(A1, ground("Church", box(300, 0, 360, 60))).print).toBe(base.print);
    expect(print(ground("A1", box(0, 0, 60, 60.1))).print).not.toBe(base.print);
    // As large as before, a metre to the east.
    expect(print(ground("A1", box(1, 0, 61, 60))).print).not.toBe(base.print);
    expect(print(A1, point("yard", [0, -80])).print).not.toBe(base.print);
  });

  it("tells what changed", () => {
    const [then, now] = [print(A1), print(ground("A1", box(0, 0, 60, 70)))];
    const [one] = formDifferences(then.form!, now.form!);
    expect(one!.where).toBe("on the map A1");
    expect(one!.then).toMatch(/^0\.36 ha, 4 corners [0-9a-f]{12}$/);
    expect(one!.now).toMatch(/^0\.42 ha, 4 corners [0-9a-f]{12}$/);
  });
});

describe("map files", () => {
  it("are read from beside the farm file, and a change may name another", () => {
    const folder = mkdtempSync(join(tmpdir(), "inbye-map-"));
    try {
      writeFileSync(join(folder, "farm.yaml"), farmOf(CROFT));
      writeFileSync(join(folder, "farm.geojson"), geoJson(A1));
      writeFileSync(join(folder, "new.geojson"), geoJson(ground("A1", box(0, 0, 60, 80))));
      writeFileSync(join(folder, "change.yaml"), "change: The hedge moved\nmap: new.geojson\n");
      writeFileSync(join(folder, "lost.yaml"), "change: The hedge lost\nmap: lost.geojson\n");
      const area = (changes: readonly string[]): unknown => {
        const got = readFarm(join(folder, "farm.yaml"), changes.map((name) => join(folder, name)), TABLES);
        return got.ok ? got.value.scenario.cells[0]!.areaHa.toFixed(2) : got.findings.map(({ file, line, code }) => [file, line, code]);
      };
      expect([area([]), area(["change.yaml"]), area(["lost.yaml"])]).toEqual(["0.36", "0.48", [["lost.yaml", 2, "no-file"]]]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
