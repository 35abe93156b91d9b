import type { Group } from "../../farm/scenario.js";
import { addDays, weekdayOf, type IsoDate } from "../../quantity/calendar.js";
import type { Words } from "../../words/words.js";
import type { DayWork, Job } from "../../work/job.js";
import { seasonWork } from "../../work/season-work.js";
import { headCount } from "../head-count.js";
import { groundWords, isDaily, jobWords } from "../job-words.js";
import type { Sheet } from "../made.js";

/** A line with a box to tick; some are written over ("hens ____ of 60"), some stand out. */
export interface WeekLine {
  readonly words: string;
  readonly strong: boolean;
  /** Nothing to do, only to know. */
  readonly bare: boolean;
}

/** A move, told large. */
export interface WeekMove {
  readonly group: Group;
  readonly from: string;
  readonly to: string;
}

export interface WeekStand {
  readonly group: Group;
  readonly place: string;
  readonly note: string;
  readonly moved: boolean;
  /** Heads to count; empty for one that runs with another and is counted there. */
  readonly count: string;
}

export interface WeekRow {
  readonly day: IsoDate;
  readonly weekend: boolean;
  readonly people: readonly string[];
  /** Work that needs one who tows, or two. */
  readonly tow: boolean;
  readonly two: boolean;
  readonly moves: readonly WeekMove[];
  readonly morning: readonly WeekLine[];
  readonly evening: readonly WeekLine[];
  readonly stands: readonly WeekStand[];
}

/** Monday of the week that a day lies in. */
export function mondayOf(day: IsoDate): IsoDate {
  return addDays(day, -weekdayOf(day));
}

/** The days of the week of a day, as far as the season has them, the evening before it too. */
export function weekRows({ scenario, plan }: Sheet, words: Words, day: IsoDate): readonly WeekRow[] {
  const monday = mondayOf(day);
  const groupOf = (name: string): Group => scenario.groups.find((group) => group.name === name)!;
  return seasonWork(scenario, plan).filter((work) => work.day >= monday && work.day <= addDays(monday, 6)).map((work) => {
    const moves = work.jobs.filter(({ kind, to }) => ["move", "arrive", "part"].includes(kind) && to !== null);
    return {
      day: work.day, weekend: weekdayOf(work.day) > 4, people: work.people.map(({ name }) => name),
      tow: work.jobs.some((job) => job.tow), two: work.jobs.some((job) => job.people > 1 && !job.tow),
      moves: moves.map((job) => ({ group: groupOf(job.group!), from: job.from?.name ?? words.say("month.in"), to: job.to!.name })),
      morning: morningOf(work, words),
      evening: eveningOf(work, words, groupOf),
      stands: work.standing.map(({ group, place, host, position, moved }) => ({
        group: groupOf(group), place: host === null ? place.name : words.say("month.with", { host }), moved: moved && host === null,
        note: position !== null && groupOf(group).strip?.pen === null ? words.say("week.strip", { number: position }) : "",
        count: headCount(groupOf(group), work.day),
      })),
    };
  });

  function morningOf(work: DayWork, said: Words): readonly WeekLine[] {
    const todo = work.jobs.filter(({ kind, part }) => part === "morning" && ["step", "strip", "walk", "join"].includes(kind));
    return [
      ...todo.map((job) => line(stepWords(job, said))),
      ...work.ground.map((news) => ({ words: groundWords(news, said), strong: false, bare: true })),
    ];
  }

  function stepWords(job: Job, said: Words): string {
    if (job.kind !== "step") return jobWords(job, said);
    return job.tow && job.people > 1 ? said.say("week.step-two", { group: job.group!, people: job.people }) : isDaily(job, scenario) ? said.say("week.step-daily", { group: job.group! }) : jobWords(job, said);
  }
}

function eveningOf(work: DayWork, words: Words, groupOf: (name: string) => Group): readonly WeekLine[] {
  const set = work.jobs.filter(({ kind }) => kind === "set").map((job) => line(words.say("week.set", { to: job.to!.name, group: groupOf(job.group!).letter })));
  const others = work.jobs.filter(({ kind, part }) => part === "evening" && (kind === "cut" || kind === "leave")).map((job) => line(jobWords(job, words)));
  const dusk = work.jobs.filter(({ kind }) => kind === "dusk").map(({ group }) => line(words.say("week.dusk", { group: group!, head: headCount(groupOf(group!), work.day) })));
  const shut = work.jobs.filter(({ kind }) => kind === "shut-in").map(({ group }) => ({ words: words.say("week.shut-in", { group: group! }), strong: true, bare: false }));
  return [...set, ...others, ...dusk, ...shut];
}

function line(words: string): WeekLine {
  return { words, strong: false, bare: false };
}
