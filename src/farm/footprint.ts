/** Sides of one pen, or of the square inside one net, m, and how many stand at once. */
export interface Footprint {
  readonly sidesM: readonly [number, number];
  readonly count: number;
}
