import { figureOf, isBird, useOf, type Cell, type Group, type Kind, type Scenario, type Strip } from "../../farm/scenario.js";
import { positionSpan } from "../../plan/plan-file.js";
import type { Plan } from "../../plan/plan.js";
import { addDays, daysBetween, type IsoDate } from "../../quantity/calendar.js";

/** A stay in a plan, and the numbers of the positions it takes. */
export interface StayTaken {
  readonly firstDay: IsoDate;
  readonly lastDay: IsoDate;
  readonly firstPosition: number;
  readonly lastPosition: number;
}

/** What a plan takes of a cell's positions. */
export interface Taken {
  readonly stays: readonly StayTaken[];
  /** Different positions used. */
  readonly used: number;
  /** Positions never used that are fresh on the season's last day. */
  readonly left: number;
  /** First day on which a position is wanted and none is fresh; null when there always is one. */
  readonly runsOut: IsoDate | null;
}

/** Ground that rests from these animals, ha: from before the season, and from other pens in the plan. */
type Resting = (day: IsoDate) => number;

/** Days that a position rests after a kind, before it or its like uses it again. */
export function restDays(scenario: Scenario, group: Group, cell: Cell | null, after: Kind): number {
  const [rule, key] = isBird(group.kind) ? ["poultry-rest", after] as const : ["pig-rest", "rest"] as const;
  if (useOf(scenario, rule, cell?.field ?? null, group.name) === "off") return 0;
  return figureOf(scenario, rule, key, cell?.field ?? null, group.name) ?? 0;
}

/** Same family of animals: birds rest ground from birds, pigs from pigs. */
function alike(a: Kind, b: Kind): boolean {
  return isBird(a) ? isBird(b) : a === b;
}

/** The part of a cell that still rests from uses before the season, and the last day of the longest rest; null when none does. */
export function restingBefore(scenario: Scenario, group: Group, cell: Cell): { readonly share: number; readonly until: IsoDate } | null {
  const uses = pastRests(scenario, group, cell).filter(({ until }) => until >= scenario.season.firstDay);
  if (uses.length === 0) return null;
  return { share: Math.min(1, uses.reduce((sum, { share }) => sum + share, 0)), until: uses.map(({ until }) => until).sort().at(-1)! };
}

function pastRests(scenario: Scenario, group: Group, cell: Cell): readonly { readonly share: number; readonly until: IsoDate }[] {
  return cell.past.flatMap(({ by, lastDay, share }) =>
    (by !== "hay" && by !== "litter" && alike(group.kind, by) ? [{ share, until: addDays(lastDay, restDays(scenario, group, cell, by)) }] : []));
}

/** Ground resting on a day, ha: past uses, and stays of other pens of the family that began before it. */
function restingOn(scenario: Scenario, plan: Plan, group: Group, cell: Cell): Resting {
  const past = pastRests(scenario, group, cell).map(({ share, until }) => ({ from: "", until, areaHa: share * cell.areaHa }));
  const others = plan.stays.flatMap((stay) => {
    const other = scenario.groups.find(({ name }) => name === stay.group)!;
    if (stay.cell !== cell.name || other.name === group.name || !other.strip || !alike(group.kind, other.kind)) return [];
    const positions = Math.ceil((daysBetween(stay.firstDay, stay.lastDay) + 1) / other.strip.days);
    return [{ from: stay.firstDay, until: addDays(stay.lastDay, restDays(scenario, group, cell, other.kind)), areaHa: positions * other.strip.areaHa }];
  });
  return (day) => [...past, ...others].filter(({ from, until }) => from < day && day <= until).reduce((sum, { areaHa }) => sum + areaHa, 0);
}

/**
 * The positions that a group's stays take in a cell, one after the other, and when fresh ones run out. Where resting ground lies
 * nobody wrote down: it is taken to be the last positions.
 *
 * @param positions whole positions that the cell has room for
 */
export function takenOf(scenario: Scenario, plan: Plan, group: Group, strip: Strip, cell: Cell, positions: number): Taken {
  const resting = restingOn(scenario, plan, group, cell);
  const rest = restDays(scenario, group, cell, group.kind);
  const fresh = (day: IsoDate): number => Math.max(0, positions - Math.ceil(resting(day) / strip.areaHa - 1e-9));
  const lastUsed = new Map<number, IsoDate>();
  let runsOut: IsoDate | null = null;
  const stays = plan.stays.filter((stay) => stay.group === group.name && stay.cell === cell.name).map((stay): StayTaken => {
    const { first, last } = positionSpan(scenario, plan, stay)!;
    for (let number = first; number <= last; number++) {
      const day = addDays(stay.firstDay, (number - first) * strip.days);
      const place = positions === 0 ? 0 : (number - 1) % positions;
      const before = lastUsed.get(place);
      const rested = before === undefined || daysBetween(before, day) - 1 >= rest;
      if ((place >= fresh(day) || !rested) && (runsOut === null || day < runsOut)) runsOut = day;
      const until = addDays(day, strip.days - 1);
      lastUsed.set(place, until < stay.lastDay ? until : stay.lastDay);
    }
    return { firstDay: stay.firstDay, lastDay: stay.lastDay, firstPosition: first, lastPosition: last };
  });
  const used = positions === 0 ? 0 : lastUsed.size;
  return { stays, used, left: Math.max(0, fresh(scenario.season.lastDay) - used), runsOut };
}
