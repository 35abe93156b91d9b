import type { Job, JobNews } from "./jobs.js";
import type { Trouble } from "./trouble.js";

/** How a job ended: its last news, if there were any, and what went wrong, if anything did. */
export interface Ended {
  readonly news: JobNews | null;
  readonly trouble: Trouble | null;
}

/** A job under way. */
export interface Running {
  /** Never rejects, and nothing is heard of the job after it. */
  readonly done: Promise<Ended>;
  /** Ends the job, whatever it is at, within a tenth of a second; what it has told so far is its answer. */
  stop(): void;
}

/** Where jobs are done: other threads of this machine, or this one. */
export interface Threads {
  start(job: Job, heard: (news: JobNews | Trouble) => void): Running;
  now(): number;
  sleep(milliseconds: number): Promise<void>;
}
