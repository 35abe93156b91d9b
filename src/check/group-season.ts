import type { Group } from "../farm/scenario.js";
import type { Party } from "./parties.js";
import type { CellStay } from "./stays.js";

/** One group's season as replayed. */
export interface GroupSeason {
  readonly group: Group;
  readonly here: Uint8Array;
  /** Where it stands: see `placing.ts` for the numbers. */
  readonly places: Int16Array;
  /** The group it runs with that day, or -1. */
  readonly hosts: Int16Array;
  readonly stays: readonly CellStay[];
  /** Its own animals, and with those that run with it. */
  readonly alone: Party;
  readonly party: Party;
}
