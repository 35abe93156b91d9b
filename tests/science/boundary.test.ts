import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { outlineOfCorners, outlineOfFourSides, outlineOfTriangle, type Corner, type Outline } from "../../src/science/boundary.js";
import { metresOnGround } from "../../src/science/distance.js";
import { off } from "./published.js";

function whole(outline: Outline): { areaM2: number; perimeterM: number } {
  if (!outline.ok) throw new Error(outline.why);
  return outline;
}

const side = fc.double({ min: 5, max: 500, noNaN: true });

describe("outlines", () => {
  it("does not mind which way round, where it starts, or a first corner said twice", () => {
    const corners: Corner[] = [[0, 0], [60, 0], [60, 30], [30, 30], [30, 50], [0, 50]];
    expect(whole(outlineOfCorners(corners))).toMatchObject({ areaM2: 2400, perimeterM: 220 });
    expect(whole(outlineOfCorners([...corners].reverse())).areaM2).toBe(2400);
    expect(whole(outlineOfCorners([...corners.slice(2), ...corners.slice(0, 2)])).areaM2).toBe(2400);
    expect(whole(outlineOfCorners([...corners, corners[0]!])).areaM2).toBe(2400);
  });

  it("is the same far from the origin, as grid references are", () => {
    const corners: Corner[] = [[0, 0], [60, 0], [60, 30], [0, 30]];
    const away = corners.map(([x, y]): Corner => [x + 3_500_000, y + 5_200_000]);
    expect(whole(outlineOfCorners(away)).areaM2).toBe(1800);
  });

  it.each([
    ["two corners", [[0, 0], [10, 0]], "too few corners"],
    ["a bow", [[0, 0], [10, 10], [10, 0], [0, 10]], "crosses itself"],
    ["a line", [[0, 0], [10, 0], [20, 0]], "no area"],
  ] as const)("refuses %s", (_, corners, why) => {
    expect(outlineOfCorners(corners)).toEqual({ ok: false, why });
  });

  it.each([[[10, 20, 31]], [[10, 20, 30]], [[0, 5, 5]], [[-3, 4, 5]]] as const)("refuses a triangle of sides %j", (sides) => {
    expect(outlineOfTriangle(sides)).toEqual({ ok: false, why: "sides do not meet" });
  });

  it("refuses four sides that a diagonal cannot join", () => {
    expect(outlineOfFourSides([50, 40, 50, 40], 95)).toEqual({ ok: false, why: "sides do not meet" });
  });

  it("measures a rectangle alike by corners and by sides with a diagonal", () => {
    fc.assert(fc.property(side, side, (a, b) => {
      const bySides = whole(outlineOfFourSides([a, b, a, b], Math.hypot(a, b)));
      const byCorners = whole(outlineOfCorners([[0, 0], [a, 0], [a, b], [0, b]]));
      expect(off(bySides.areaM2, byCorners.areaM2)).toBeLessThan(1e-9);
      expect(bySides.perimeterM).toBeCloseTo(byCorners.perimeterM, 9);
    }));
  });
});

describe("outside truth: outlines", () => {
  it("Pythagoras and Heron: sides of 3, 4 and 5 hold 6; of 13, 14 and 15 hold 84", () => {
    expect(whole(outlineOfTriangle([3, 4, 5])).areaM2).toBeCloseTo(6, 12);
    expect(whole(outlineOfTriangle([15, 13, 14])).areaM2).toBeCloseTo(84, 12);
  });

  it("Univ. of Regina: an acre in a square is 836 ft round (exact 834.8), in a circle 740 ft", () => {
    const squareFeet = 43_560;
    const edge = Math.sqrt(squareFeet);
    const square = whole(outlineOfCorners([[0, 0], [edge, 0], [edge, edge], [0, edge]]));
    expect(square.perimeterM).toBeCloseTo(834.8, 1);
    expect(off(square.perimeterM, 836)).toBeLessThan(0.002);
    const radius = Math.sqrt(squareFeet / Math.PI);
    const round = Array.from({ length: 2000 }, (_, i): Corner => [radius * Math.cos((i * Math.PI) / 1000), radius * Math.sin((i * Math.PI) / 1000)]);
    expect(whole(outlineOfCorners(round)).perimeterM).toBeCloseTo(739.9, 1);
    expect(whole(outlineOfCorners(round)).areaM2).toBeCloseTo(squareFeet, 0);
  });
});

/** Area between two parallels and two meridians on the ellipsoid of WGS 84, m2: the closed form of geodesy. */
function cellOnEllipsoid(west: number, east: number, south: number, north: number): number {
  const [a, f] = [6_378_137, 1 / 298.257223563];
  const e = Math.sqrt(f * (2 - f));
  const part = (degrees: number) => {
    const s = Math.sin((degrees * Math.PI) / 180);
    return s / (1 - e * e * s * s) + Math.log((1 + e * s) / (1 - e * s)) / (2 * e);
  };
  return ((a * (1 - f)) ** 2 / 2) * (((east - west) * Math.PI) / 180) * (part(north) - part(south));
}

describe("outside truth: longitudes and latitudes", () => {
  it.each([[-2.5, 52.1], [170.3, -43.6], [-76.2, 42.4], [25.5, 65]])("a field near %d, %d has the ellipsoid's area", (longitude, latitude) => {
    const [west, east, south, north] = [longitude, longitude + 0.01, latitude, latitude + 0.005];
    const corners = metresOnGround([[west, south], [east, south], [east, north], [west, north]]);
    expect(off(whole(outlineOfCorners(corners)).areaM2, cellOnEllipsoid(west, east, south, north))).toBeLessThan(5e-9);
  });
});
