import type { BoundJob, JobNews, SearchJob } from "../programme/jobs.js";
import type { Snapshot } from "../programme/snapshot.js";
import type { Running, Threads } from "../programme/threads.js";
import type { Effort } from "./effort.js";

/** Milliseconds between looks at the clock and the owner. */
const LOOK = 40;

/** Searches and the bound under way side by side: the best plan, the bound, and whether it is time to end. */
export class Race {
  best: Snapshot | null = null;
  lowest = 0;
  steps = 0;
  capped = false;
  readonly notes: string[] = [];
  private readonly began: number;

  constructor(
    private readonly threads: Threads,
    private readonly effort: Effort,
    private readonly stop: { readonly asked: boolean },
    private readonly onProgress: (p: { seconds: number; cost: number; bound: number }) => void,
  ) {
    this.began = threads.now();
  }

  get seconds(): number {
    return this.threads.now() - this.began;
  }

  /** True once the owner or the cap ends the planning. */
  get over(): boolean {
    const { capSeconds } = this.effort;
    return this.stop.asked || (capSeconds !== null && this.seconds >= capSeconds);
  }

  /** Takes a plan if it is valid and cheaper than the best, or the first at all. */
  offer(plan: Snapshot): void {
    if (this.best && (plan.over > 0 || (this.best.over === 0 && plan.cost >= this.best.cost))) return;
    this.best = plan;
    this.tell();
  }

  bound(job: BoundJob): Running {
    return this.threads.start(job, (news) => this.hear(news));
  }

  /** Runs searches in order, each as soon as a thread is free, and takes the best of their answers. */
  async searches(jobs: readonly SearchJob[]): Promise<void> {
    for (const job of jobs) {
      if (this.over) {
        this.capped = true;
        return;
      }
      const running = this.threads.start(job, (news) => this.hear(news));
      await this.finish(running);
      this.steps += job.steps;
    }
  }

  /** Waits for a job's end, or ends it when time is up. */
  async finish(running: Running): Promise<void> {
    let answer: JobNews | null | undefined;
    const done = running.done.then((news) => (answer = news));
    while (answer === undefined) {
      if (this.over) {
        this.capped = true;
        running.stop();
        await done;
        break;
      }
      await Promise.race([done, this.threads.sleep(LOOK)]);
    }
    if (answer) this.hear(answer);
    else this.notes.push("One part of the planning broke down; the best plan found before stands.");
  }

  private hear(news: JobNews): void {
    if (news.kind === "plan") this.offer(news.plan);
    else if (news.value > this.lowest) {
      this.lowest = news.value;
      this.tell();
    }
  }

  private tell(): void {
    this.onProgress({ seconds: this.seconds, cost: this.best?.cost ?? Infinity, bound: this.lowest });
  }
}
