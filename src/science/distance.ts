import type { Corner } from "./boundary.js";

/** Longitude and latitude, degrees, WGS 84. */
export type Position = readonly [longitude: number, latitude: number];

/** Ellipsoid of WGS 84: half of the long axis, m, and flattening. */
const AXIS_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const ECCENTRICITY2 = FLATTENING * (2 - FLATTENING);
const RADIANS = Math.PI / 180;

/** Nodes and weights of Gauss and Legendre's rule of three points, from -1 to 1. */
const NODES = [[-Math.sqrt(0.6), 5 / 9], [0, 8 / 9], [Math.sqrt(0.6), 5 / 9]] as const;

/** The point half way between the outermost, east and west, north and south. */
export function middleOf(points: readonly Position[]): Position {
  const half = (i: 0 | 1): number => (Math.min(...points.map((point) => point[i])) + Math.max(...points.map((point) => point[i]))) / 2;
  return [half(0), half(1)];
}

/**
 * Longitudes and latitudes as metres on flat ground: north along the meridian, east along the point's own parallel. So every area is that
 * on the ellipsoid, wherever on the farm it lies; lengths are true along parallels and the middle meridian, and within one in two thousand over a few
 * kilometres up to 60 degrees of latitude.
 *
 * @param middle of the whole farm, from which is measured
 * @returns east and north of the middle, m
 * Source: sinusoidal projection of the ellipsoid (Snyder, Map Projections, USGS Professional Paper 1395, 1987, section 30).
 */
export function metresOnGround(points: readonly Position[], middle: Position = middleOf(points)): readonly Corner[] {
  return points.map(([longitude, latitude]) => {
    const bend = 1 - ECCENTRICITY2 * Math.sin(latitude * RADIANS) ** 2;
    const parallelM = (AXIS_M / Math.sqrt(bend)) * Math.cos(latitude * RADIANS);
    return [(longitude - middle[0]) * RADIANS * parallelM, alongMeridianM(middle[1], latitude)];
  });
}

/** From one latitude to another along a meridian, m; for a few degrees. */
function alongMeridianM(from: number, to: number): number {
  const half = ((to - from) / 2) * RADIANS;
  const middle = ((to + from) / 2) * RADIANS;
  const radius = (latitude: number): number => (AXIS_M * (1 - ECCENTRICITY2)) / (1 - ECCENTRICITY2 * Math.sin(latitude) ** 2) ** 1.5;
  return half * NODES.reduce((sum, [node, weight]) => sum + weight * radius(middle + node * half), 0);
}
