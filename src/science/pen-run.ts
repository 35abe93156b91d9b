/** What a pen, a net or the pigs' ground takes of a cell, and what a cell has room for. */
export interface PenRun {
  /** Whole positions that the ground has room for. */
  readonly positions: number;
  /** Positions used in the season. */
  readonly used: number;
  /** Share of the ground that the season covers, 0 to 1. */
  readonly shareCovered: number;
  /** Seasons like this one that cover it all. */
  readonly seasonsToCover: number;
  /** Nitrogen that one pass lays on a position, kg/ha. */
  readonly nitrogenKgPerHa: number;
  /** Passes that stay under the nitrogen ceiling in twelve months. */
  readonly passesUnderCeiling: number;
  /** Days on a position that reach the ceiling: the longest a pen may stand. */
  readonly longestStandDays: number;
}

/**
 * The run of a pen through ground: by area, where what the shape costs at the edges is not counted, or with the positions that its
 * shape has room for.
 *
 * @param groundHa ground open to it, ha
 * @param positionHa ground of one position, ha
 * @param daysOut days in the season that it is out
 * @param daysEach days on one position
 * @param nitrogenKgPerDay kg N a day of all the animals in it
 * @param ceilingKgPerHa N that may still fall on the ground in twelve months, kg/ha
 * @param positions whole positions that there is room for
 */
export function penRun(
  groundHa: number, positionHa: number, daysOut: number, daysEach: number, nitrogenKgPerDay: number, ceilingKgPerHa: number,
  positions = positionsThatFit(groundHa, positionHa),
): PenRun {
  const used = Math.min(positions, Math.ceil(daysOut / daysEach - 1e-9));
  const covered = shareCovered(used, positionHa, groundHa);
  const perDay = nitrogenKgPerDay / positionHa;
  return {
    positions, used, shareCovered: covered,
    seasonsToCover: used === 0 ? Infinity : positions / used,
    nitrogenKgPerHa: perDay * daysEach,
    passesUnderCeiling: Math.floor(ceilingKgPerHa / (perDay * daysEach) + 1e-9),
    longestStandDays: Math.floor(ceilingKgPerHa / perDay + 1e-9),
  };
}

/** Whole positions that ground has room for, by area. */
export function positionsThatFit(groundHa: number, positionHa: number): number {
  return Math.floor(groundHa / positionHa + 1e-9);
}

/** Share of the ground that some positions cover, at most all of it. */
export function shareCovered(positions: number, positionHa: number, groundHa: number): number {
  return Math.min(1, (positions * positionHa) / groundHa);
}

/**
 * Ground inside netting: a square, or a rectangle of the side given.
 *
 * @param edgeM length of all the net joined, m
 * @param sideM one side, m
 * @returns m2
 */
export function nettedM2(edgeM: number, sideM: number = edgeM / 4): number {
  return sideM * (edgeM / 2 - sideM);
}
