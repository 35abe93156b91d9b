import { Worker } from "node:worker_threads";
import type { Job, JobNews } from "../programme/jobs.js";
import type { Ended, Running, Threads } from "../programme/threads.js";
import type { Trouble } from "../programme/trouble.js";
import { PULSE, STOP, type Given, type Message } from "./serve-job.js";

export interface ThreadLimits {
  /** Milliseconds a stopped thread has to hand over its answer before it is ended. */
  readonly grace: number;
  /** Megabytes a thread may grow to; past that it ends, and the best found before stands. */
  readonly memoryMb: number;
  /** Seconds without a sign of life after which a thread is taken for hung: many times what one solve, or laying out the largest farm, may take. */
  readonly silence: number;
}

const LIMITS: ThreadLimits = { grace: 50, memoryMb: 900, silence: 900 };

/** Looks at a thread's pulse within the silence. Counted in looks, so that a machine put to sleep is not taken for a hang. */
const LOOKS = 20;

/** Jobs in worker threads of this process. A thread that breaks down costs only what it had not yet told. */
export function nodeThreads(script: URL = new URL("./worker.js", import.meta.url), limits: Partial<ThreadLimits> = {}): Threads {
  return {
    now: () => performance.now() / 1000,
    sleep: (milliseconds) => new Promise((wake) => setTimeout(wake, milliseconds)),
    start: (job, heard) => started(script, { ...LIMITS, ...limits }, job, heard),
  };
}

function started(script: URL, limits: ThreadLimits, job: Job, heard: (news: JobNews | Trouble) => void): Running {
  const shared = new Int32Array(new SharedArrayBuffer(8));
  const workerData: Given = { job, shared };
  let worker: Worker;
  try {
    worker = new Worker(script, { workerData, resourceLimits: { maxOldGenerationSizeMb: limits.memoryMb } });
  } catch {
    return { done: Promise.resolve({ news: null, trouble: "broke-down" }), stop: () => undefined };
  }
  const { done, end } = endOnce(() => {
    clearInterval(looking);
    void worker.terminate();
  });
  let last: JobNews | null = null;
  let over = false;
  void done.then(() => (over = true));
  worker.on("message", ({ news, trouble, answer }: Message) => {
    if (over) return;
    if (news) heard((last = news));
    if (trouble) heard(trouble);
    if (answer) end({ news: answer, trouble: null });
  });
  worker.on("messageerror", () => end({ news: last, trouble: "broke-down" }));
  worker.on("error", (fault: NodeJS.ErrnoException) => end({ news: last, trouble: fault.code === "ERR_WORKER_OUT_OF_MEMORY" ? "out-of-memory" : "broke-down" }));
  worker.on("exit", () => end({ news: last, trouble: "broke-down" }));
  const looking = watchPulse(shared, limits.silence, () => end({ news: last, trouble: "hung" }));
  return {
    done,
    stop() {
      Atomics.store(shared, STOP, 1);
      setTimeout(() => end({ news: last, trouble: null }), limits.grace);
    },
  };
}

/** A promise that is kept once, by whoever is first; what is to be cleared away then is cleared away. */
function endOnce(clear: () => void): { done: Promise<Ended>; end: (ended: Ended) => void } {
  let end: (ended: Ended) => void = () => undefined;
  const done = new Promise<Ended>((resolve) => {
    end = (ended) => {
      resolve(ended);
      clear();
    };
  });
  return { done, end };
}

/** Calls `silent` when a thread's pulse stands still for so many seconds. */
function watchPulse(shared: Int32Array, silence: number, silent: () => void): NodeJS.Timeout {
  let seen = -1;
  let still = 0;
  return setInterval(() => {
    const pulse = Atomics.load(shared, PULSE);
    still = pulse === seen ? still + 1 : 0;
    seen = pulse;
    if (still >= LOOKS) silent();
  }, (silence * 1000) / LOOKS);
}
