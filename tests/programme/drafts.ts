import type { Scenario } from "../../src/farm/scenario.js";
import { cellSimulator } from "../../src/programme/cell-simulator.js";
import { Draft } from "../../src/programme/draft.js";
import type { Half } from "../../src/programme/half.js";
import { HALVES } from "../../src/programme/rules/index.js";
import type { RuleId } from "../../src/rules/rule.js";
import { buildSeason } from "../../src/season/build-season.js";
import type { Season } from "../../src/season/season.js";

/** A draft of a farm, everybody in the yard, that knows only these halves of rules. */
export function draftOf(farm: Scenario | Season, halves: readonly Half[] = HALVES): Draft {
  const season = "scenario" in farm ? farm : buildSeason(farm);
  return new Draft(season, cellSimulator(season, halves), halves);
}

export function onlyHalf(rule: RuleId): readonly Half[] {
  return HALVES.filter((half) => half.id === rule);
}

export function withoutHalf(rule: RuleId): readonly Half[] {
  return HALVES.filter((half) => half.id !== rule);
}
