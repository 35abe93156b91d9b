/** How far years differ from the usual one. */
export interface Weather {
  /** Growth of a dry and a wet year beside the usual, as factors: one year in ten is drier, one in ten wetter. */
  readonly dry: number;
  readonly wet: number;
  /** How far a month's growth differs from what its year would have it, as a share, in eight months of ten. */
  readonly month: number;
  /** Days by which spring is early or late, in eight years of ten. */
  readonly springDays: number;
  /** Chance that a move slips a day or two. */
  readonly lateMoves: number;
  /** Chance of one week in the season with nobody to move animals. */
  readonly weekAway: number;
}
