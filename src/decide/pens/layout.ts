import type { Cell, Strip } from "../../farm/scenario.js";
import { groundOf, layLanes, placesOf } from "../../science/lanes.js";

/** One lane of a layout, as it is walked. */
export interface LaneWalked {
  /** Rectangles in it. */
  readonly rectangles: number;
  /** How the pen comes to it: moved to the lane beside it, or brought round what is in the way. */
  readonly by: "start" | "shift" | "brought";
}

type Point = readonly [eastM: number, northM: number];

/** A pen's positions on a cell's ground, to scale. */
export interface Layout {
  /** The cell's shape is not known: these are its area as a square. */
  readonly asIf: boolean;
  readonly northKnown: boolean;
  readonly rings: readonly (readonly Point[])[];
  /** Direction of the lanes, radians from east towards north. */
  readonly angle: number;
  /** Sides of a rectangle along the lane and across it, m. */
  readonly alongM: number;
  readonly acrossM: number;
  /** Middle of each rectangle on the ground, m, in walking order. */
  readonly middles: readonly Point[];
  readonly lanes: readonly LaneWalked[];
  /** Rectangles, one behind the other, that make one position: as many as pens of the group. */
  readonly each: number;
  readonly positions: number;
  readonly shifts: number;
  readonly brought: number;
}

/** Sides of one pen, m, and how many stand at once: ground of which only the area is known is taken as a square. */
export function sidesOf(strip: Strip): { readonly sidesM: readonly [number, number]; readonly count: number } {
  const side = Math.sqrt(strip.areaHa * 10_000);
  return strip.each ?? { sidesM: [side, side], count: 1 };
}

/** Lays a group's pens, nets or strips into a cell: in its shape, or as if it were a square. */
export function layoutOf(cell: Cell, strip: Strip): Layout {
  const { sidesM, count } = sidesOf(strip);
  const boundary = cell.boundary ?? { rings: [square(Math.sqrt(cell.areaHa * 10_000))] };
  const plan = layLanes(boundary, sidesM);
  const { angle, alongM, acrossM, lanes } = plan;
  const by = (way: LaneWalked["by"]): number => lanes.filter((lane) => lane.by === way).length;
  return {
    asIf: cell.boundary === null, northKnown: cell.boundary?.north === true, rings: boundary.rings, angle, alongM, acrossM,
    middles: placesOf(plan).map(([x, y]) => groundOf(plan, x + alongM / 2, y + acrossM / 2)),
    lanes: lanes.map((lane) => ({ rectangles: lane.count, by: lane.by })),
    each: count, positions: Math.floor(plan.positions / count), shifts: by("shift"), brought: by("brought"),
  };
}

function square(side: number): readonly Point[] {
  return [[0, 0], [side, 0], [side, side], [0, side]];
}
