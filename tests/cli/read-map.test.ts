import { cpSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { ReadAnswer } from "../../src/cli/answers.js";
import { answer, freshFolder, inbye, ROOT } from "./inbye.js";

const folder = freshFolder();
afterAll(() => folder.done());
for (const end of ["yaml", "geojson", "kml"]) cpSync(join(ROOT, `scenarios/rushy-leys.${end}`), join(folder.path, `rushy-leys.${end}`));

describe("a farm on a map, from the command line", () => {
  it("is read with the ground of every cell", () => {
    const farm = join(ROOT, "scenarios/rushy-leys.yaml");
    const { ground, areaHa } = answer<ReadAnswer>(inbye(["read", farm, "--json"], folder.path), "read-answer");
    expect(ground.map(({ cell }) => cell)).toEqual(["L1", "L2", "L3", "L4", "M1", "M2"]);
    expect(ground.reduce((sum, cell) => sum + cell.areaHa, 0)).toBeCloseTo(areaHa, 12);
    const { out } = inbye(["read", farm], folder.path);
    expect(out).toMatch(/^ {2}L1 {2}0\.53 ha +436 m +190 m$/m);
    expect(out.split("\n").filter((line) => line.length > 80 && !line.includes(farm))).toEqual([]);
  });

  it("is refused without one of its files, with the place that names it", () => {
    const ran = inbye(["read", "rushy-leys.yaml"], folder.path);
    expect(ran.exit).toBe(2);
    expect(ran.out).toMatch(/rushy-leys\.yaml:4:43 {2}map: there is no rushy-leys\.gpx beside the farm file\./);
  });
});
