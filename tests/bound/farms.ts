import { studyFarm } from "../../src/bench/study-farms.js";
import type { Scenario } from "../../src/farm/scenario.js";
import { SeasonBound } from "../../src/programme/bound/bound.js";
import type { CellBound } from "../../src/programme/bound/cell-bound.js";
import type { GroundTerms } from "../../src/programme/bound/ground-terms.js";
import type { RouteGround } from "../../src/programme/bound/route.js";
import type { Draft } from "../../src/programme/draft.js";
import { draftOf } from "../programme/drafts.js";

/** Study farms small enough for tests: cattle and hens; with pigs as well; with broilers in two lots; two herds and sheep. */
export const FARMS: readonly { readonly name: string; readonly scenario: Scenario }[] = [
  { name: "8 cells, 2 groups, 60 days", scenario: studyFarm({ name: "S", cells: 8, groups: 2, days: 60 }) },
  { name: "5 cells, 3 groups, 70 days", scenario: studyFarm({ name: "S3", cells: 5, groups: 3, days: 70 }, 2) },
  { name: "5 cells, 4 groups, 60 days", scenario: studyFarm({ name: "S4", cells: 5, groups: 4, days: 60 }, 3) },
  { name: "6 cells, 6 groups, 45 days", scenario: studyFarm({ name: "S6", cells: 6, groups: 6, days: 45 }, 4) },
];

export function boundOf(draft: Draft, step = 0.05): SeasonBound {
  return new SeasonBound(draft.season, draft.simulator, draft.tables, step);
}

/** The bound's parts, which only these tests look at one by one. */
export interface Parts {
  readonly cells: readonly CellBound[];
  readonly ground: readonly GroundTerms[];
  readonly routes: readonly RouteGround[];
  judgeCell: (cell: number, prices: ReturnType<SeasonBound["zero"]>, slope: ReturnType<SeasonBound["zero"]>) => number;
}

export function partsOf(bound: SeasonBound): Parts {
  return bound as unknown as Parts;
}

export { draftOf };
