import type { GroupSeason } from "../check/group-season.js";
import type { Replay } from "../check/replay.js";
import { figureOf, isBird, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { addDays } from "../quantity/calendar.js";
import type { Job, JobKind, PartOfDay } from "./job.js";
import { companyOf, standingOn } from "./standing.js";

/** What every day asks of every group: a look, pens and strips onward, birds shut in at dusk. */
export function dailyJobs(scenario: Scenario, plan: Plan, replay: Replay): readonly Job[] {
  return Array.from({ length: replay.days.count }, (_, t) => {
    const standing = standingOn(scenario, plan, replay, t);
    const birds = replay.groups.filter(({ group, here }) => here[t] && isBird(group.kind)).length;
    const dusk = (figureOf(scenario, "people", "dusk", null, null) ?? 0) / Math.max(1, birds);
    return replay.groups.flatMap((season, g) => {
      const at = standing.find((one) => one.group === season.group.name);
      if (!at || at.host !== null) return [];
      const job = (kind: JobKind, part: PartOfDay, minutes: number): Job => ({
        id: `${kind}:${at.group}:${replay.days.dates[t]!}`, kind, day: replay.days.dates[t]!, part, group: at.group, company: companyOf(scenario, replay, season, t),
        from: at.place, to: at.place, positions: at.position === null ? null : { first: at.position, last: at.position },
        cut: null, minutes, people: 1, tow: false, for: null,
      });
      const look = job("look", "morning", figureOf(scenario, "people", "each-group", null, at.group) ?? 0);
      return [look, ...onward(replay, season, g, t, job), ...(isBird(season.group.kind) ? [job("dusk", "dusk", dusk)] : [])];
    });
  }).flat();
}

/** A step of a pen, with the birds shut in the evening before where it is towed; or pigs onto their next strip. */
function onward({ labour, days }: Replay, { group, stays }: GroupSeason, g: number, t: number, job: (kind: JobKind, part: PartOfDay, minutes: number) => Job): Job[] {
  const step = labour.steps.find((one) => one.group === g && one.day === t);
  const next = labour.steps.find((one) => one.group === g && one.day === t + 1);
  const { strip } = group;
  const fresh = strip !== null && strip.pen === null && stays.some(({ first, last }) => t > first && t <= last && (t - first) % strip.days === 0);
  return [
    ...(step ? [{ ...job("step", "morning", step.minutes), tow: step.towed, people: step.towed ? group.peopleToMove : 1 }] : []),
    ...(fresh ? [job("strip", "morning", 0)] : []),
    ...(next?.towed ? [{ ...job("shut-in", "dusk", 0), for: addDays(days.dates[t]!, 1) }] : []),
  ];
}
