import { replayPlan, type Replay } from "../check/replay.js";
import { isWalkDay } from "../check/walks.js";
import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { addDays, spanHolds, weekdayOf, type IsoDate } from "../quantity/calendar.js";
import { changesOfPlace } from "./changes-of-place.js";
import { dailyJobs } from "./daily-jobs.js";
import { groundNews } from "./ground-news.js";
import { JOB_KINDS, type AtHome, type DayWork, type Job, type PartOfDay } from "./job.js";
import { setAhead } from "./set-ahead.js";
import { standingOn } from "./standing.js";

const PARTS: readonly PartOfDay[] = ["morning", "evening", "dusk"];

/**
 * The work that a plan asks for, a day each from the evening before the season to its last day. Minutes are those that the check counts,
 * but with setting ahead on the evening on which it is done; over the season their sums agree.
 */
export function seasonWork(scenario: Scenario, plan: Plan): readonly DayWork[] {
  const replay = replayPlan(scenario, plan);
  const moves = changesOfPlace(scenario, plan, replay);
  const jobs = [...moves, ...setAhead(scenario, moves), ...dailyJobs(scenario, plan, replay), ...walks(replay), ...cuts(plan)];
  const order = inOrder(scenario);
  const before = addDays(scenario.season.firstDay, -1);
  return [before, ...replay.days.dates].map((day, i) => ({
    day,
    people: atHome(scenario, day),
    jobs: jobs.filter((job) => job.day === day).sort(order),
    standing: i === 0 ? [] : standingOn(scenario, plan, replay, i - 1),
    ground: groundNews(scenario, day),
    roundMinutes: i > 0 && replay.groups.some(({ here }) => here[i - 1]) ? (figureOf(scenario, "people", "morning", null, null) ?? 0) : 0,
  }));
}

function inOrder(scenario: Scenario): (a: Job, b: Job) => number {
  const groups = scenario.groups.map((group) => group.name);
  return (a, b) =>
    PARTS.indexOf(a.part) - PARTS.indexOf(b.part) || JOB_KINDS.indexOf(a.kind) - JOB_KINDS.indexOf(b.kind) ||
    groups.indexOf(a.group ?? "") - groups.indexOf(b.group ?? "") || (a.id < b.id ? -1 : 1);
}

function atHome({ people }: Scenario, day: IsoDate): readonly AtHome[] {
  return people.flatMap(({ name, tows, minutesByDay, minutesByWeekday, away }) => {
    const minutes = away.some((span) => spanHolds(span, day)) ? 0 : (minutesByDay[day] ?? minutesByWeekday[weekdayOf(day)] ?? 0);
    return minutes > 0 ? [{ name, tows, minutes }] : [];
  });
}

const ON_GROUND = { group: null, company: [], positions: null, minutes: 0, people: 1, tow: false, for: null } as const;

function walks({ days }: Replay): Job[] {
  return days.dates.filter((_, t) => isWalkDay(t)).map((day) => ({ ...ON_GROUND, id: `walk:${day}`, kind: "walk", day, part: "morning", from: null, to: null, cut: null }));
}

/** A cut that a plan names twice on a day is one job. */
function cuts({ cuts: planned }: Plan): Job[] {
  const once = planned.filter((one, i) => planned.findIndex(({ cell, day }) => cell === one.cell && day === one.day) === i);
  return once.map(({ cell, cut, day }) => {
    const place = { name: cell, yard: false };
    return { ...ON_GROUND, id: `cut:${cell}:${day}`, kind: "cut", day, part: "evening", from: place, to: place, cut };
  });
}
