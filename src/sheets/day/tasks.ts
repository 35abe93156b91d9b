import type { Job } from "../../work/job.js";
import { jobOf, type Day } from "./context.js";
import type { Draft } from "./draft.js";
import { duskTask, secondLookTasks } from "./evening-tasks.js";
import { collectTask, cutTask, setTask, walkTask } from "./ground-tasks.js";
import { kitRun } from "./kit.js";
import type { Task } from "./model.js";
import { leaveTask, moveTask } from "./move-tasks.js";
import { sharedOut } from "./minutes.js";
import { stayTask } from "./stay-tasks.js";
import { towTasks } from "./tow-tasks.js";
import { walksOf } from "./walking-order.js";

const CHANGES = ["arrive", "join", "part", "move"] as const;

/** Everything that a day asks for, each job in one task, in no order yet. */
export function draftsOf(day: Day): readonly Draft[] {
  const { work } = day;
  const kit = kitRun(day);
  const told: Readonly<Partial<Record<Job["kind"], (job: Job) => readonly Draft[]>>> = {
    look: (job) => (changeOf(day, job.group!) || jobOf(day, "step", job.group!)?.tow ? [] : [stayTask(day, job, jobOf(day, "step", job.group!) ?? jobOf(day, "strip", job.group!))]),
    step: (job) => (job.tow && !changeOf(day, job.group!) ? towTasks(day, job, jobOf(day, "look", job.group!)) : []),
    set: (job) => [setTask(day, job, kit)],
    collect: (job) => [collectTask(day, job, kit)],
    cut: (job) => [cutTask(day, job)],
    walk: (job) => [walkTask(day, job)],
    leave: (job) => [leaveTask(day, job)],
    dusk: (job) => [duskTask(day, job)],
  };
  const changes = (job: Job): readonly Draft[] => {
    const look = jobOf(day, "look", job.group!);
    return job.tow && job.from !== null && job.kind === "move" ? towTasks(day, job, look) : [moveTask(day, job, look)];
  };
  const own = work.jobs.flatMap((job) => (isChange(job) ? changes(job) : (told[job.kind]?.(job) ?? [])));
  return [...own, ...secondLookTasks(day)];
}

function isChange({ kind }: Job): boolean {
  return CHANGES.some((one) => one === kind);
}

function changeOf(day: Day, group: string): Job | undefined {
  return day.work.jobs.find((job) => job.group === group && isChange(job));
}

export interface Numbered {
  readonly tasks: readonly Task[];
  /** Minutes of the walk round in the morning, as printed. */
  readonly round: number;
  /** On foot through the day, m. */
  readonly metres: number;
}

/** Tasks in the order in which they are walked, numbered through the day, with minutes that add up. */
export function tasksOf(day: Day): Numbered {
  const walks = walksOf(day, draftsOf(day));
  const drafts = walks.flatMap((walk) => walk.drafts);
  const counted = drafts.filter((one) => one.minutes > 0 && one.timedWith === null);
  const shown = sharedOut([...counted.map((one) => one.minutes), day.work.roundMinutes]);
  const numberOf = (key: string): number => drafts.findIndex((one) => one.key === key) + 1;
  const tasks = drafts.map((draft, i) => {
    const { timedWith, after: _after, rightAfter: _rightAfter, endsAt: _endsAt, ...rest } = draft;
    const at = counted.indexOf(draft);
    return { ...rest, number: i + 1, minutes: at < 0 ? null : shown[at]!, timedWith: timedWith === null || numberOf(timedWith) === 0 ? null : numberOf(timedWith) };
  });
  return { tasks, round: shown.at(-1) ?? 0, metres: walks.reduce((sum, { metres }) => sum + metres, 0) };
}

