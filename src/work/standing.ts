import type { GroupSeason } from "../check/group-season.js";
import { isYard, NOWHERE, yardOf } from "../check/placing.js";
import type { Replay } from "../check/replay.js";
import type { Scenario } from "../farm/scenario.js";
import { positionSpan } from "../plan/plan-file.js";
import type { Plan } from "../plan/plan.js";
import { daysBetween } from "../quantity/calendar.js";
import type { Standing } from "./job.js";

/** Where every group on the farm stands in the night after a day of the season, by position of the day. */
export function standingOn(scenario: Scenario, plan: Plan, replay: Replay, t: number): readonly Standing[] {
  return replay.groups.flatMap((season) => {
    const at = season.places[t]!;
    if (!season.here[t] || at === NOWHERE) return [];
    const place = isYard(at) ? { name: replay.yards[yardOf(at)]!, yard: true } : { name: scenario.cells[at]!.name, yard: false };
    const host = season.hosts[t]! < 0 ? null : scenario.groups[season.hosts[t]!]!.name;
    const moved = t > 0 && (!season.here[t - 1] || season.places[t - 1] !== at);
    return [{ group: season.group.name, place, host, position: positionOn(scenario, plan, replay, season, t), moved }];
  });
}

function positionOn(scenario: Scenario, plan: Plan, { days }: Replay, { group }: GroupSeason, t: number): number | null {
  const day = days.dates[t]!;
  const stay = plan.stays.find((one) => one.group === group.name && one.cell !== null && one.firstDay <= day && day <= one.lastDay);
  const span = stay === undefined ? null : positionSpan(scenario, plan, stay);
  return span === null ? null : span.first + Math.floor(daysBetween(stay!.firstDay, day) / group.strip!.days);
}

/** Groups that run with a group on a day of the season, by position of the day. */
export function companyOf({ groups }: Scenario, replay: Replay, season: GroupSeason, t: number): readonly string[] {
  const g = groups.findIndex((one) => one.name === season.group.name);
  return replay.groups.filter(({ hosts, here }) => here[t] && hosts[t] === g).map(({ group }) => group.name);
}
