import { runJob, type Job, type JobNews } from "../../src/programme/jobs.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import type { Ended, Running, Threads } from "../../src/programme/threads.js";
import type { Trouble } from "../../src/programme/trouble.js";

/** In which order jobs that are under way at the same time are done. */
export type Order = "at once" | "in turn" | "last first";

/** Jobs done in this thread, their news told in an order of the test's choosing. */
export function inThisThread(solver: PricingSolver, order: Order = "at once"): Threads {
  const waiting: (() => Promise<void>)[] = [];
  let working = false;
  const work = async (): Promise<void> => {
    if (working) return;
    working = true;
    // Whoever is started in the same breath is waiting by then.
    await Promise.resolve();
    for (let next = order === "last first" ? waiting.pop() : waiting.shift(); next; next = order === "last first" ? waiting.pop() : waiting.shift()) await next();
    working = false;
  };
  return {
    now: () => performance.now() / 1000,
    sleep: (milliseconds) => new Promise((wake) => setTimeout(wake, milliseconds)),
    start(job, heard): Running {
      const own = underWay(job, heard, solver);
      if (order === "at once") void own.run();
      else {
        waiting.push(own.run);
        void work();
      }
      return own.running;
    },
  };
}

function underWay(job: Job, heard: (news: JobNews | Trouble) => void, solver: PricingSolver): { run: () => Promise<void>; running: Running } {
  let last: JobNews | null = null;
  let stop = false;
  let end: (ended: Ended) => void = () => undefined;
  const done = new Promise<Ended>((resolve) => (end = resolve));
  const run = (): Promise<void> => runJob(job, { stop: () => stop, news: (news) => heard((last = news)), trouble: heard }, solver).then(
    (news) => end({ news, trouble: null }),
    () => end({ news: last, trouble: "broke-down" }),
  );
  return {
    run,
    running: {
      done,
      stop() {
        stop = true;
        setTimeout(() => end({ news: last, trouble: null }), 20);
      },
    },
  };
}
