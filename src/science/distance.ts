import type { Corner } from "./boundary.js";

/** Ellipsoid of WGS 84: half of the long axis, m, and flattening. */
const AXIS_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const ECCENTRICITY2 = FLATTENING * (2 - FLATTENING);
const RADIANS = Math.PI / 180;

/**
 * Longitudes and latitudes as metres on flat ground about their middle. For ground of a few kilometres: at 2 km across, areas
 * are out by less than one in a hundred thousand.
 *
 * @param points longitude and latitude, degrees, WGS 84
 * @returns east and north of the middle, m
 * Source: radii of curvature of the ellipsoid, standard geodesy.
 */
export function metresOnGround(points: readonly (readonly [longitude: number, latitude: number])[]): readonly Corner[] {
  const middle = (i: 0 | 1) => points.reduce((sum, point) => sum + point[i], 0) / points.length;
  const [longitude, latitude] = [middle(0), middle(1)];
  const bend = 1 - ECCENTRICITY2 * Math.sin(latitude * RADIANS) ** 2;
  const eastRadius = (AXIS_M / Math.sqrt(bend)) * Math.cos(latitude * RADIANS);
  const northRadius = (AXIS_M * (1 - ECCENTRICITY2)) / bend ** 1.5;
  return points.map((point) => [(point[0] - longitude) * RADIANS * eastRadius, (point[1] - latitude) * RADIANS * northRadius]);
}
