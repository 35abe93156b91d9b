import { describe, expect, it } from "vitest";
import geodesic from "geographiclib-geodesic";
import { metresOnGround, type Position } from "../../src/science/distance.js";
import { turnedAreaM2 } from "../../src/science/rings.js";
import { off } from "./published.js";

const earth = geodesic.Geodesic.WGS84;

/** A side in this many parts: RFC 7946, 3.1.1, has sides straight in longitude and latitude, the library has them shortest on the ground. */
const PARTS = 60;

/** Area on the ellipsoid of a polygon: Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), by his own library. */
function areaByLibrary(points: readonly Position[], parts = PARTS): number {
  const polygon = earth.Polygon(false);
  points.forEach(([longitude, latitude], i) => {
    const [nextLongitude, nextLatitude] = points[(i + 1) % points.length]!;
    for (let part = 0; part < parts; part++) polygon.AddPoint(latitude + (part / parts) * (nextLatitude - latitude), longitude + (part / parts) * (nextLongitude - longitude));
  });
  return Math.abs(polygon.Compute(false, true).area!);
}

const PLACES: readonly Position[] = [[-2.5, 52.1], [170.3, -43.6], [-76.2, 42.4], [25.5, 65], [36.8, -1.3]];

/** An L of some 200 m, so many metres from a place, about. */
function field([longitude, latitude]: Position, eastM: number, northM: number): readonly Position[] {
  const [x, y] = [1 / (111_320 * Math.cos((latitude * Math.PI) / 180)), 1 / 111_000];
  const corners = [[0, 0], [200, 10], [190, 90], [80, 80], [75, 210], [5, 200]] as const;
  return corners.map(([east, north]) => [longitude + (eastM + east) * x, latitude + (northM + north) * y]);
}

describe("outside truth: areas and lengths on the ellipsoid", () => {
  it("the library's own: an eighth of the ellipsoid's surface of 510,065,621.724 km2", () => {
    // Surface as its author prints it in the documentation of Planimeter.
    expect(areaByLibrary([[0, 0], [90, 0], [0, 90]], 1) / (510_065_621_724_000 / 8)).toBeCloseTo(1, 11);
  });

  it.each(PLACES)("a field near %d, %d has its area, in the middle of the farm and three kilometres off", (longitude, latitude) => {
    // What is left is slanting sides, which bend by less than a millimetre from one map to the other.
    for (const [east, north] of [[0, 0], [3000, 0], [0, -3000], [2000, 2500]] as const) {
      const corners = field([longitude, latitude], east, north);
      expect(off(Math.abs(turnedAreaM2(metresOnGround(corners, [longitude, latitude]))), areaByLibrary(corners))).toBeLessThan(1e-6);
    }
  });

  it.each(PLACES)("ways from the yard near %d, %d are as long", (longitude, latitude) => {
    for (const degrees of [0, 37, 90, 135, 222, 301]) {
      const there = earth.Direct(latitude, longitude, degrees, 2500);
      const [from, to] = metresOnGround([[longitude, latitude], [there.lon2!, there.lat2!]], [longitude, latitude]);
      expect(off(Math.hypot(to![0] - from![0], to![1] - from![1]), 2500)).toBeLessThan(5e-4);
    }
  });

  it("keeps every part of a field to its share, so that strips equal here are equal on the ground", () => {
    const [longitude, latitude]: Position = [-2.5, 52.1];
    const parts = [0, 1, 2, 3].map((i): readonly Position[] => {
      const [south, north] = [latitude + i * 0.001, latitude + (i + 1) * 0.001];
      return [[longitude, south], [longitude + 0.004, south], [longitude + 0.004, north], [longitude, north]];
    });
    for (const part of parts) expect(off(turnedAreaM2(metresOnGround(part, [longitude, latitude - 0.02])), areaByLibrary(part))).toBeLessThan(1e-8);
  });
});
