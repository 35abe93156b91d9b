import type { Position } from "../../science/distance.js";
import type { Finding } from "../finding.js";
import type { Place } from "../tree.js";

/** A map file beside the farm file, or why it could not be read. */
export type MapText =
  | { readonly file: string; readonly text: string }
  | { readonly file: string; readonly text: null; readonly findings: readonly Finding[] };

/** Something drawn on a map under a name, with its place in the file. */
export interface MapFeature extends Place {
  /** Empty where none is written. */
  readonly name: string;
  readonly drawn: Drawn;
  /** What is amiss with it; said only where the farm uses it, for a map holds more than the farm. */
  readonly faults: readonly Finding[];
  readonly notes: readonly Finding[];
}

export type Drawn =
  /** Parts, each a ring round it and one round each hole; no ring repeats its first position. */
  | { readonly kind: "ground"; readonly parts: readonly (readonly (readonly Position[])[])[] }
  | { readonly kind: "point"; readonly position: Position }
  | { readonly kind: "line" };

/** Of a point whose coordinates are refused. */
export const NOWHERE: Position = [Number.NaN, Number.NaN];

/** What a map file holds. */
export interface MapRead {
  readonly features: readonly MapFeature[];
  readonly findings: readonly Finding[];
}

/** A finding about the whole file. */
export function refused(file: string, place: Partial<Place>, code: string, found: string, allowed: string, next: string): MapRead {
  return { features: [], findings: [{ file, line: place.line ?? 1, column: place.column ?? 1, code, found, allowed, next }] };
}

/** A finding at a place. */
export function faultAt({ file, line, column }: Place, code: string, found: string, allowed: string, next: string): Finding {
  return { file, line, column, code, found, allowed, next };
}
