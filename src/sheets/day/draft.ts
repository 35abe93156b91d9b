import type { Job, Place } from "../../work/job.js";
import type { Words } from "../../words/words.js";
import type { Bits, Deed, Line, LineName, Step, Task } from "./model.js";

/** A task before its place in the day is known. */
export interface Draft extends Omit<Task, "number" | "minutes" | "timedWith"> {
  /** Of all people together, as the plan counts them. */
  readonly minutes: number;
  /** Task that has this one's minutes with its own. */
  readonly timedWith: string | null;
  /** Tasks to be done before it; it comes directly after `rightAfter`. */
  readonly after: readonly string[];
  readonly rightAfter: string | null;
  /** Where one is when it is done, if not at `to`: fence kit is carried off. */
  readonly endsAt?: Place;
}

export function step(deed: Deed | null, bits: Bits): Step {
  return { deed, bits };
}

/** A line of a task, or none where it would say nothing. */
export function line(words: Words, name: LineName, steps: readonly (Step | null | undefined)[]): readonly Line[] {
  const said = steps.flatMap((one) => (one ? [one] : []));
  return said.length === 0 ? [] : [{ name, label: words.say(`day.line.${name}`), steps: said }];
}

export function minutesOf(jobs: readonly (Job | undefined)[]): number {
  return jobs.reduce((sum, job) => sum + (job?.minutes ?? 0), 0);
}
