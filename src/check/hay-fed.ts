import type { Scenario } from "../farm/scenario.js";
import { hayKg } from "../science/hay.js";
import type { GroupSeason } from "./group-season.js";
import { isYard } from "./placing.js";

/** Hay as stored that feeds a group, with those that run with it, for a day in the yard, kg. */
export function yardHayKg({ hay }: Scenario, { party }: GroupSeason, day: number): number {
  return hayKg(party.intakeKg[day]!, hay.dryMatter, hay.feedOutLoss, hay.storeLoss);
}

/** Hay fed in yards over the season, kg. */
export function hayFedKg(scenario: Scenario, groups: readonly GroupSeason[]): number {
  let sum = 0;
  for (const group of groups) {
    group.places.forEach((place, t) => {
      if (isYard(place) && group.hosts[t]! < 0) sum += yardHayKg(scenario, group, t);
    });
  }
  return sum;
}
