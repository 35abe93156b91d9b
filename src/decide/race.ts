import type { Job, JobNews } from "../programme/jobs.js";
import type { Snapshot } from "../programme/snapshot.js";
import type { Ended, Threads } from "../programme/threads.js";
import type { Trouble } from "../programme/trouble.js";
import type { Lessened } from "../programme/window/lessen.js";
import type { Mended } from "../programme/window/mend.js";
import type { Effort } from "./effort.js";
import { LANES } from "./lanes.js";
import { troubleWords } from "./trouble-words.js";

/** Milliseconds between looks at the clock and the owner. */
const LOOK = 20;

/** Searches and the bound under way side by side: the best plan, the bound, and whether it is time to end. */
export class Race {
  best: Snapshot | null = null;
  lowest = 0;
  steps = 0;
  capped = false;
  mended: Mended | null = null;
  /** True when every plan that could be better than the best was looked at. */
  proven = false;
  /** What elastic windows said of the best plan; null where they did not end with it. */
  lessened: Lessened | null = null;
  private readonly began: number;
  /** Which job the best plan is from, counted as they were given, so that of two plans that cost the same the same one stands. */
  private bestFrom = -1;
  private given = 0;
  private readonly troubles = new Set<string>();

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

  /** What went wrong, in words; the same in whatever order it did. */
  get notes(): readonly string[] {
    return [...this.troubles].sort();
  }

  /** Takes a plan if it breaks less than the best or is cheaper, or is the first at all. Which plan is taken in the end does not turn on their order. */
  offer(plan: Snapshot, from = -1): void {
    if (this.best && !before(plan, from, this.best, this.bestFrom)) return;
    this.best = plan;
    this.bestFrom = from;
    this.lessened = null;
    this.tell();
  }

  /** Does all jobs, two at a time, in order; what each finds is taken as it comes. */
  async run(jobs: readonly Job[]): Promise<void> {
    const waiting = jobs.map((job) => ({ job, at: this.given++ }));
    const lane = async (): Promise<void> => {
      for (let next = waiting.shift(); next; next = waiting.shift()) await this.do(next.job, next.at);
    };
    await Promise.all(Array.from({ length: LANES }, lane));
  }

  private async do(job: Job, at: number): Promise<void> {
    if (this.over) {
      this.capped = true;
      return;
    }
    const running = this.threads.start(job, (news) => this.hear(news, job, at));
    let ended: Ended | undefined;
    let stopped = false;
    const done = running.done.then((end) => (ended = end));
    while (ended === undefined) {
      if (this.over && !stopped) {
        this.capped = stopped = true;
        running.stop();
      }
      await (stopped ? done : Promise.race([done, this.threads.sleep(LOOK)]));
    }
    if (ended.news) this.hear(ended.news, job, at);
    if (ended.trouble) this.hear(ended.trouble, job, at);
    else if (job.kind === "search" && !stopped) this.steps += job.steps;
  }

  private hear(news: JobNews | Trouble, job: Job, at: number): void {
    if (typeof news === "string") this.troubles.add(troubleWords(job.kind, news));
    else if (news.kind === "plan") this.offer(news.plan, at);
    else if (news.kind === "lessened") {
      this.offer(news.plan, at);
      if (this.best?.over === news.plan.over && this.best.cost === news.plan.cost) this.lessened = news.lessened;
    } else if (news.kind === "mended") {
      this.mended = news.mended;
      this.offer(news.plan, at);
    } else if (news.kind === "proved") {
      this.offer(news.plan, at);
      this.proven = news.proof.proven;
      this.raise(news.proof.bound);
    } else this.raise(news.value);
  }

  private raise(bound: number): void {
    if (bound <= this.lowest) return;
    this.lowest = bound;
    this.tell();
  }

  private tell(): void {
    this.onProgress({ seconds: this.seconds, cost: this.best?.over === 0 ? this.best.cost : Infinity, bound: this.lowest });
  }
}

/** Exact, not to a hair: with a hair of slack, which of three plans stands would turn on their order. */
function before(plan: Snapshot, from: number, other: Snapshot, otherFrom: number): boolean {
  if (plan.over !== other.over) return plan.over < other.over;
  return plan.cost !== other.cost ? plan.cost < other.cost : from < otherFrom;
}
