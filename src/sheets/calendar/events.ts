import type { Scenario } from "../../farm/scenario.js";
import type { Plan } from "../../plan/plan.js";
import type { DayWork, Job, JobKind } from "../../work/job.js";
import { seasonWork } from "../../work/season-work.js";
import { isDaily } from "../job-words.js";

/** Whose jobs: null of all groups, of everybody. */
export interface CalendarOf {
  readonly groups: readonly string[] | null;
  readonly person: string | null;
}

/** A job that is an event, and the day's work that it is part of. */
export interface Event {
  readonly job: Job;
  readonly work: DayWork;
}

/** What every day asks again stands on the sheets, not in a calendar. */
const EVERY_DAY: readonly JobKind[] = ["look", "dusk"];

/**
 * The jobs of a plan that are events: all but looks, dusks, and pens that step every day. Of groups: what they or their company do; the
 * weekly walk and cuts are of no group. Of a person: the days on which that person is at home, without tows that somebody else does alone.
 */
export function eventsOf(scenario: Scenario, plan: Plan, { groups, person }: CalendarOf): readonly Event[] {
  const tows = scenario.people.find(({ name }) => name === person)?.tows ?? false;
  return seasonWork(scenario, plan).flatMap((work) => {
    if (person !== null && !work.people.some(({ name }) => name === person)) return [];
    return work.jobs.filter((job) => isEvent(job, scenario) && isOf(job, groups) && (person === null || tows || !isTowAlone(job))).map((job) => ({ job, work }));
  });
}

function isEvent(job: Job, scenario: Scenario): boolean {
  return !EVERY_DAY.includes(job.kind) && !isDaily(job, scenario);
}

function isOf(job: Job, groups: readonly string[] | null): boolean {
  return groups === null || (job.group !== null && [job.group, ...job.company].some((name) => groups.includes(name)));
}

function isTowAlone({ tow, people }: Job): boolean {
  return tow && people < 2;
}
