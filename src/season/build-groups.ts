import { isBird, isGrazer, type Group, type Scenario } from "../farm/scenario.js";
import { youngOn } from "../farm/young.js";
import { daysBetween, spanHolds } from "../quantity/calendar.js";
import { hayKg } from "../science/hay.js";
import { intakeKgDmPerDay, liveWeightKg, takenKgDm } from "../science/intake.js";
import type { PeopleByDay } from "./people-by-day.js";
import { FREE, YARD, type SeasonGroup } from "./season.js";

/** What one group eats, drops, weighs and drinks on a day it is on the farm. */
interface Needs {
  intake: number;
  nitrogen: number;
  liveWeight: number;
  litres: number;
}

function needsOn(group: Group, date: string): Needs | null {
  const span = group.here.find((s) => spanHolds(s, date));
  if (!span) return null;
  const days = daysBetween(span.firstDay, date);
  const weight = liveWeightKg(group.weightKg, group.gainKgPerDay, days);
  const young = youngOn(group, date);
  const youngWeight = young ? liveWeightKg(young.weightKg, young.gainKgPerDay, days) : 0;
  const youngHead = young?.head ?? 0;
  const intake = "kgDmPerHeadDay" in group.intake
    ? group.head * group.intake.kgDmPerHeadDay
    : group.head * intakeKgDmPerDay(weight, group.intake.shareOfWeight) + youngHead * intakeKgDmPerDay(youngWeight, group.intake.youngShareOfWeight);
  return {
    intake,
    nitrogen: group.head * group.nitrogenKgPerHeadDay + youngHead * group.youngNitrogenKgPerHeadDay,
    liveWeight: group.head * weight + youngHead * youngWeight,
    litres: group.head * group.waterLPerHeadDay,
  };
}

/** What one group without its companions takes on a day, kg DM; nothing while it is away. */
export function takenOn(scenario: Scenario, group: Group, date: string): number {
  return takenKgDm(needsOn(group, date)?.intake ?? 0, scenario.troddenShare);
}

const runsAlong = (group: Group, date: string): boolean => group.runsWith?.days.some((span) => spanHolds(span, date)) ?? false;

/** All groups by day, companions counted with their hosts. */
export function buildGroups(scenario: Scenario, dates: readonly string[], people: PeopleByDay): SeasonGroup[] {
  return scenario.groups.map((group) => {
    const own = dates.map((date) => (runsAlong(group, date) ? null : needsOn(group, date)));
    const companions = scenario.groups.filter((g) => g.runsWith?.with === group.name);
    const all = own.map((needs, t) => {
      if (!needs) return null;
      const along = companions.filter((g) => runsAlong(g, dates[t])).map((g) => needsOn(g, dates[t]));
      return along.reduce<Needs>((sum, more) => (more ? addNeeds(sum, more) : sum), needs);
    });
    const of = (pick: (needs: Needs) => number): Float64Array => Float64Array.from(all, (needs) => (needs ? pick(needs) : 0));
    const hay = scenario.hay;
    return {
      name: group.name,
      grazer: isGrazer(group.kind),
      bird: isBird(group.kind),
      pig: group.kind === "pigs",
      present: Uint8Array.from(own, (needs) => (needs ? 1 : 0)),
      out: Uint8Array.from(dates, (date, t) => (own[t] && spanHolds(group.out, date) && !housed(scenario, group, date) ? 1 : 0)),
      arrives: Uint8Array.from(dates, (date, t) => (own[t] && (t === 0 || !own[t - 1] || group.here.some((s) => s.firstDay === date)) ? 1 : 0)),
      intake: of((n) => n.intake),
      taken: of((n) => takenKgDm(n.intake, scenario.troddenShare)),
      nitrogen: of((n) => n.nitrogen),
      liveWeight: of((n) => n.liveWeight),
      litres: of((n) => n.litres),
      hayKg: of((n) => hayKg(n.intake, hay.dryMatter, hay.feedOutLoss, hay.storeLoss)),
      mayEnter: Uint8Array.from(scenario.cells, (cell) => (group.mayEnter.includes(cell.name) && !cell.notFor.includes(group.name) ? 1 : 0)),
      moveOk: Uint8Array.from(dates, (_, t) => (people.atHome[t] >= group.peopleToMove && (!group.needsTow || people.tower[t]) ? 1 : 0)),
      stepOk: Uint8Array.from(dates, (_, t) => (group.strip?.movedBy !== "tow" || people.tower[t] ? 1 : 0)),
      held: heldPlaces(scenario, group, dates),
      yard: scenario.yards.findIndex((y) => y.name === group.yard),
      leader: scenario.groups.findIndex((g) => g.name === group.follows),
    };
  });
}

function addNeeds(a: Needs, b: Needs): Needs {
  return { intake: a.intake + b.intake, nitrogen: a.nitrogen + b.nitrogen, liveWeight: a.liveWeight + b.liveWeight, litres: a.litres + b.litres };
}

function housed(scenario: Scenario, group: Group, date: string): boolean {
  return scenario.housingOrders.some((order) => order.kinds.includes(group.kind) && spanHolds(order, date));
}

function heldPlaces(scenario: Scenario, group: Group, dates: readonly string[]): Int16Array {
  const holds = scenario.holds.filter((hold) => hold.group === group.name);
  return Int16Array.from(dates, (date) => {
    const hold = holds.find((h) => spanHolds(h.days, date));
    if (!hold) return FREE;
    return hold.cell === null ? YARD : scenario.cells.findIndex((cell) => cell.name === hold.cell);
  });
}
