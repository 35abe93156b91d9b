import type { CellTerms } from "./cell-terms.js";
import type { Levels } from "./levels.js";
import type { LongGrass } from "./long-grass.js";
import type { Cuts } from "./mowing.js";

/** What is known of a cell before any prices. */
export interface CellGround {
  readonly levels: Levels;
  readonly terms: CellTerms;
  readonly cuts: Cuts;
  readonly grass: LongGrass;
  /** Charge of the season's end at a cover of ground that nobody worked. */
  closing(cover: number): number;
}
