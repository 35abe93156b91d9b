import { isGrazer, type Group, type Scenario } from "../farm/scenario.js";
import { youngOn } from "../farm/young.js";
import { intakeKgDmPerDay, liveWeightKg } from "../science/intake.js";
import { positionOf, rangeIn, type SeasonDays } from "./season-days.js";

/** What a group weighs, eats, drops and drinks, by day; 0 on days away. */
export interface Party {
  /** Live weight with young, kg. */
  readonly weightKg: Float64Array;
  /** Herbage or its worth in hay, kg DM a day. */
  readonly intakeKg: Float64Array;
  readonly nitrogenKg: Float64Array;
  readonly waterL: Float64Array;
  readonly head: Float64Array;
}

const FIGURES = ["weightKg", "intakeKg", "nitrogenKg", "waterL", "head"] as const;

/** Birds and pigs with a strip take ground lot by lot; all others graze the open ground of a cell. */
export function grazes(group: Group): boolean {
  return group.strip === null || isGrazer(group.kind);
}

function emptyParty(days: SeasonDays): Party {
  const column = () => new Float64Array(days.count);
  return { weightKg: column(), intakeKg: column(), nitrogenKg: column(), waterL: column(), head: column() };
}

/** A group alone. Each span on the farm is a new batch at the first weight again. */
export function partyOf(group: Group, days: SeasonDays): Party {
  const party = emptyParty(days);
  for (const span of group.here) {
    const range = rangeIn(days, span);
    if (!range) continue;
    const arrival = positionOf(days, span.firstDay);
    for (let t = range.first; t <= range.last; t++) setDay(party, group, t, t - arrival, days.dates[t]!);
  }
  return party;
}

function setDay(party: Party, group: Group, t: number, age: number, date: string): void {
  const { head, intake } = group;
  const young = youngOn(group, date);
  const weight = liveWeightKg(group.weightKg, group.gainKgPerDay, age);
  const youngWeight = young ? liveWeightKg(young.weightKg, young.gainKgPerDay, age) : 0;
  const youngHead = young?.head ?? 0;
  party.head[t] = head;
  party.weightKg[t] = head * weight + youngHead * youngWeight;
  party.intakeKg[t] =
    "kgDmPerHeadDay" in intake
      ? head * intake.kgDmPerHeadDay
      : head * intakeKgDmPerDay(weight, intake.shareOfWeight) + youngHead * intakeKgDmPerDay(youngWeight, intake.youngShareOfWeight);
  party.nitrogenKg[t] = head * group.nitrogenKgPerHeadDay + youngHead * group.youngNitrogenKgPerHeadDay;
  party.waterL[t] = head * group.waterLPerHeadDay;
}

/** Groups with those that run with them that day; a companion's own day counts nothing. */
export function joinedParties(scenario: Scenario, alone: readonly Party[], hosts: readonly Int16Array[], days: SeasonDays): Party[] {
  const joined = alone.map(() => emptyParty(days));
  scenario.groups.forEach((_, g) => {
    for (let t = 0; t < days.count; t++) {
      const to = joined[hosts[g]![t]! >= 0 ? hosts[g]![t]! : g]!;
      for (const figure of FIGURES) to[figure][t]! += alone[g]![figure][t]!;
    }
  });
  return joined;
}
