import { Worker } from "node:worker_threads";
import type { JobNews } from "../programme/jobs.js";
import type { Running, Threads } from "../programme/threads.js";

interface Message {
  readonly news?: JobNews;
  readonly answer?: JobNews;
}

/** Milliseconds a stopped thread has to hand over its answer before it is ended. */
const GRACE = 80;

/** Megabytes a thread may grow to; past that it ends, and the best found before stands. */
const MEMORY_MB = 900;

/** Jobs in worker threads of this process. A thread that breaks down costs only what it had not yet told. */
export function nodeThreads(script: URL = new URL("./worker.js", import.meta.url)): Threads {
  return {
    now: () => performance.now() / 1000,
    sleep: (milliseconds) => new Promise((wake) => setTimeout(wake, milliseconds)),
    start(job, heard): Running {
      const flag = new Int32Array(new SharedArrayBuffer(4));
      const worker = new Worker(script, { workerData: { job, flag }, resourceLimits: { maxOldGenerationSizeMb: MEMORY_MB } });
      let last: JobNews | null = null;
      let settle: (answer: JobNews | null) => void = () => undefined;
      const done = new Promise<JobNews | null>((resolve) => (settle = resolve));
      worker.on("message", ({ news, answer }: Message) => {
        if (news) heard((last = news));
        if (answer) settle(answer);
      });
      worker.on("error", () => settle(last));
      worker.on("exit", () => settle(last));
      return {
        done,
        stop() {
          Atomics.store(flag, 0, 1);
          setTimeout(() => {
            settle(last);
            void worker.terminate();
          }, GRACE).unref();
        },
      };
    },
  };
}
