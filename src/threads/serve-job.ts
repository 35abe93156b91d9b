import { parentPort, workerData } from "node:worker_threads";
import { runJob, type Job, type JobNews } from "../programme/jobs.js";
import type { PricingSolver } from "../programme/solver.js";
import type { Trouble } from "../programme/trouble.js";

/** What a thread is given: its job, and shared memory with the flag that asks it to stop and its pulse. */
export interface Given {
  readonly job: Job;
  readonly shared: Int32Array;
}

export interface Message {
  readonly news?: JobNews;
  readonly trouble?: Trouble;
  readonly answer?: JobNews;
}

export const STOP = 0;
export const PULSE = 1;

/** The whole life of a thread: does the job it was given, telling what it finds as it finds it. */
export async function serveJob(solver: PricingSolver): Promise<void> {
  const { job, shared } = workerData as Given;
  const tell = (message: Message): void => parentPort?.postMessage(message);
  const stop = (): boolean => {
    Atomics.add(shared, PULSE, 1);
    return Atomics.load(shared, STOP) === 1;
  };
  tell({ answer: await runJob(job, { stop, news: (news) => tell({ news }), trouble: (trouble) => tell({ trouble }) }, solver) });
}
