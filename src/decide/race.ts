import type { Job, JobNews } from "../programme/jobs.js";
import { betterThan, type Snapshot } from "../programme/snapshot.js";
import type { Threads } from "../programme/threads.js";
import type { Mended } from "../programme/window/mend.js";
import type { Effort } from "./effort.js";

/** Milliseconds between looks at the clock and the owner. */
const LOOK = 40;

/** Jobs under way at once: as many as the smallest machine has cores. */
const LANES = 2;

/** Searches and the bound under way side by side: the best plan, the bound, and whether it is time to end. */
export class Race {
  best: Snapshot | null = null;
  lowest = 0;
  steps = 0;
  capped = false;
  mended: Mended | null = null;
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

  /** Takes a plan if it breaks less than the best or is cheaper, or is the first at all. */
  offer(plan: Snapshot): void {
    if (this.best && !betterThan(plan, this.best)) return;
    this.best = plan;
    this.tell();
  }

  /** Does all jobs, two at a time, in order; what each finds is taken as it comes. */
  async run(jobs: readonly Job[]): Promise<void> {
    const waiting = [...jobs];
    const lane = async (): Promise<void> => {
      for (let job = waiting.shift(); job; job = waiting.shift()) await this.do(job);
    };
    await Promise.all(Array.from({ length: LANES }, lane));
  }

  private async do(job: Job): Promise<void> {
    if (this.over) {
      this.capped = true;
      return;
    }
    const running = this.threads.start(job, (news) => this.hear(news));
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
    if (job.kind === "search") this.steps += job.steps;
    if (answer) this.hear(answer);
    else if (!this.capped) this.notes.push("One part of the planning broke down; the best plan found before stands.");
  }

  private hear(news: JobNews): void {
    if (news.kind === "plan") this.offer(news.plan);
    else if (news.kind === "mended") {
      this.mended = news.mended;
      this.offer(news.plan);
    } else if (news.value > this.lowest) {
      this.lowest = news.value;
      this.tell();
    }
  }

  private tell(): void {
    this.onProgress({ seconds: this.seconds, cost: this.best?.cost ?? Infinity, bound: this.lowest });
  }
}
