import type { CellTerms } from "./cell-terms.js";
import type { Levels } from "./levels.js";
import type { LongGrass } from "./long-grass.js";
import type { Cuts } from "./mowing.js";
import type { Season } from "../../season/season.js";

/** What a cheapest season does next, kept with its value; movers are 0 and up. */
export const WAIT = -1;
export const GRAZE = -2;
export const CUT = -3;

/** Values and choices by morning and level, of ground that birds or pigs have worked this season, or have not. */
export interface Layer {
  /** Rested long enough. */
  readonly ready: Float64Array;
  readonly readyBy: Int16Array;
  /** Grazing has just ended. Choice: day x 64 + kind. */
  readonly grazed: Float64Array;
  readonly grazedBy: Int32Array;
  /** A grazing stay begins. Choice: group x 1024 + days. */
  readonly entered: Float64Array;
  readonly enteredBy: Int32Array;
  /** Where birds or pigs come next onto ready ground, or stay on after the rest: the morning after their stay. */
  readonly readyEnd: Int16Array;
  readonly grazedEnd: Int16Array;
}

/**
 * Kinds of what comes after a grazing: grazing again, ready ground or a cut, worked in between or not; or a mover inside,
 * who came onto ground that nobody else had worked, or after another one.
 */
export const AGAIN = 0;
export const AGAIN_WORKED = 1;
export const READY = 2;
export const READY_WORKED = 3;
export const MOWN = 4;
export const MOWN_WORKED = 5;
export const INSIDE = 6;

export const UNWORKED = 0;
export const WORKED = 1;

/** What the value of untouched ground is worked out from and written to. */
export interface Untouched {
  readonly season: Season;
  readonly cell: number;
  readonly levels: Levels;
  readonly terms: CellTerms;
  readonly cuts: Cuts;
  readonly grass: LongGrass;
  readonly closing: (cover: number) => number;
  readonly layers: readonly [Layer, Layer];
  readonly first: readonly [Float64Array, Float64Array];
  readonly firstBy: readonly [Int16Array, Int16Array];
  /** Day x 2 + layer: group x 1024 + days. */
  readonly firstStay: Int32Array;
  /** By mover, and by the layer that it came onto: the value of being inside, and whether it leaves after the day. */
  readonly firstInside: readonly (readonly [Float64Array, Float64Array])[];
  readonly firstLeaves: readonly (readonly [Uint8Array, Uint8Array])[];
}
