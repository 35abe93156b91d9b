import type { GroupSeason } from "../check/group-season.js";
import type { Move } from "../check/labour.js";
import { isYard, NOWHERE, yardOf } from "../check/placing.js";
import type { Replay } from "../check/replay.js";
import type { Scenario } from "../farm/scenario.js";
import { positionSpan } from "../plan/plan-file.js";
import type { Plan } from "../plan/plan.js";
import type { Job, JobKind, Place } from "./job.js";
import { companyOf } from "./standing.js";

/** Everything by which a group comes to stand elsewhere: moves, coming and leaving, joining another group and parting from it. */
export function changesOfPlace(scenario: Scenario, plan: Plan, replay: Replay): readonly Job[] {
  return replay.groups.flatMap((season, g) => {
    const moves = new Map(replay.labour.moves.filter((move) => move.group === g).map((move) => [move.day, move]));
    return Array.from({ length: replay.days.count }, (_, t) => changeOn(scenario, plan, replay, season, t, moves.get(t))).flat();
  });
}

function changeOn(scenario: Scenario, plan: Plan, replay: Replay, season: GroupSeason, t: number, move: Move | undefined): Job[] {
  const kind = kindOn(season, t, move);
  const leaves = season.here[t] && !season.here[t + 1] && t + 1 < replay.days.count;
  const at = placeOf(scenario, replay, season.places[t]!);
  return [
    ...(kind === null || at === null ? [] : [jobOf(scenario, plan, replay, season, t, kind, at, move)]),
    ...(leaves ? [{ ...blank(season, replay, t, "leave"), part: "evening" as const, from: at, to: null }] : []),
  ];
}

function kindOn({ here, hosts, places }: GroupSeason, t: number, move: Move | undefined): JobKind | null {
  if (!here[t] || places[t] === NOWHERE) return null;
  const was = t > 0 && here[t - 1] === 1;
  const alone = hosts[t]! < 0;
  if (!was) return t === 0 && !move ? null : "arrive";
  if (hosts[t - 1]! >= 0 && alone) return "part";
  if (hosts[t - 1]! < 0 && !alone) return "join";
  return move ? "move" : null;
}

function jobOf(scenario: Scenario, plan: Plan, replay: Replay, season: GroupSeason, t: number, kind: JobKind, to: Place, move: Move | undefined): Job {
  const { group } = season;
  const day = replay.days.dates[t]!;
  const from = t > 0 && season.here[t - 1] ? placeOf(scenario, replay, season.places[t - 1]!) : null;
  const ahead = move && !to.yard && isSetAhead(scenario, group.name) ? group.setMinutes : 0;
  const stay = plan.stays.find((one) => one.group === group.name && one.cell === to.name && one.firstDay <= day && day <= one.lastDay);
  return {
    ...blank(season, replay, t, kind), from, to,
    company: companyOf(scenario, replay, season, t),
    positions: stay === undefined ? null : positionSpan(scenario, plan, stay),
    minutes: move ? move.minutes + move.haulMinutes - ahead : 0,
    people: group.peopleToMove, tow: group.needsTow,
  };
}

function blank({ group }: GroupSeason, { days }: Replay, t: number, kind: JobKind): Job {
  const day = days.dates[t]!;
  return {
    id: `${kind}:${group.name}:${day}`, kind, day, part: "morning", group: group.name, company: [], from: null, to: null,
    positions: null, cut: null, minutes: 0, people: 1, tow: false, for: null,
  };
}

function placeOf({ cells }: Scenario, { yards }: Replay, place: number): Place | null {
  if (place === NOWHERE) return null;
  return isYard(place) ? { name: yards[yardOf(place)]!, yard: true } : { name: cells[place]!.name, yard: false };
}

/** Fence is set the evening before for all but pens and nets, which bring theirs along. */
export function isSetAhead({ groups }: Scenario, name: string): boolean {
  const group = groups.find((one) => one.name === name)!;
  return (group.strip?.pen ?? null) === null && group.setMinutes > 0;
}
