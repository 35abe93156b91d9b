import type { Job, JobNews } from "./jobs.js";

/** A job under way. */
export interface Running {
  /** The last news, or null when the thread broke down before it had any. */
  readonly done: Promise<JobNews | null>;
  /** Ends the job at its next step; what it has found so far is its answer. */
  stop(): void;
}

/** Where jobs are done: other threads of this machine, or this one. */
export interface Threads {
  start(job: Job, news: (news: JobNews) => void): Running;
  now(): number;
  sleep(milliseconds: number): Promise<void>;
}
