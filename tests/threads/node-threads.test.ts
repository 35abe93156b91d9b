/** Jobs in threads of their own: stopped at once, and whatever a thread dies of, what it told stands. */
import { setEnvironmentData } from "node:worker_threads";
import { describe, expect, it } from "vitest";
import { studyFarm } from "../../src/bench/study-farms.js";
import { handRule } from "../../src/programme/hand-rule.js";
import type { Job, JobNews } from "../../src/programme/jobs.js";
import { snapshot, type Snapshot } from "../../src/programme/snapshot.js";
import type { Ended, Running } from "../../src/programme/threads.js";
import type { Trouble } from "../../src/programme/trouble.js";
import { nodeThreads, type ThreadLimits } from "../../src/threads/node-threads.js";
import { draftOf } from "../programme/drafts.js";
import type { Fault } from "./faulty-job.js";

const SLOW = 60_000;
const SCRIPT = new URL("./faulty-worker.mjs", import.meta.url);
/** From the stop being asked to the answer; what a busy machine adds on top of it is not the threads' doing. */
const STOPPED_WITHIN = 100;
const BUSY = 100;

const farm = studyFarm({ name: "S", cells: 8, groups: 2, days: 60 });
const byHand = ((): Snapshot => {
  const draft = draftOf(farm);
  handRule(draft);
  return snapshot(draft);
})();

/** Some thousand steps, then windows: there the solver is asked. */
const search: Job = { kind: "search", scenario: farm, from: byHand, keep: null, steps: 4000, polishes: 1, seed: 3 };
const mend: Job = { kind: "mend", scenario: farm, from: byHand, keep: null, rounds: 1 };

interface Heard {
  readonly running: Running;
  readonly plans: Snapshot[];
  readonly troubles: Trouble[];
  readonly first: Promise<unknown>;
}

function start(job: Job, fault: Fault, limits: Partial<ThreadLimits> = {}): Heard {
  setEnvironmentData("fault", fault);
  const [plans, troubles]: [Snapshot[], Trouble[]] = [[], []];
  let wake: () => void = () => undefined;
  const first = new Promise<void>((resolve) => (wake = resolve));
  const heard = (news: JobNews | Trouble): void => {
    if (typeof news === "string") troubles.push(news);
    else if ("plan" in news) plans.push(news.plan);
    wake();
  };
  return { running: nodeThreads(SCRIPT, limits).start(job, heard), plans, troubles, first };
}

const planOf = ({ news }: Ended): Snapshot | null => (news && "plan" in news ? news.plan : null);

async function stopped({ running }: Heard): Promise<{ ended: Ended; milliseconds: number }> {
  const began = performance.now();
  running.stop();
  const ended = await running.done;
  return { ended, milliseconds: performance.now() - began };
}

const pause = (milliseconds: number): Promise<void> => new Promise((wake) => setTimeout(wake, milliseconds));

describe("a thread that is left alone", () => {
  it("answers with its last news, and nothing went wrong", { timeout: SLOW }, async () => {
    const { running, plans, troubles } = start(search, "none");
    const ended = await running.done;
    expect({ trouble: ended.trouble, troubles }).toEqual({ trouble: null, troubles: [] });
    expect(planOf(ended)).toEqual(plans.at(-1));
    expect(planOf(ended)!.cost).toBeLessThan(byHand.cost);
  });
});

describe("a stop", () => {
  it.each<[string, Job, Fault]>([
    ["in the middle of a search", { ...search, steps: 1e9 }, "none"],
    ["in the middle of a solve that does not end", search, "inside HiGHS"],
    ["in the middle of a circle", search, "turns in a circle"],
    ["while nobody answers", search, "keeps busy"],
  ])("%s is heeded within a tenth of a second, with the best plan told", { timeout: SLOW }, async (_, job, fault) => {
    const heard = start(job, fault);
    await heard.first;
    await pause(1500);
    const { ended, milliseconds } = await stopped(heard);
    expect(milliseconds).toBeLessThan(STOPPED_WITHIN + BUSY);
    expect(ended.trouble).toBeNull();
    expect(planOf(ended)).toEqual(heard.plans.at(-1));
  });

  it("while the bound judges a step much longer than that is heeded as fast", { timeout: SLOW }, async () => {
    const large = studyFarm({ name: "L", cells: 32, groups: 6, days: 205 });
    setEnvironmentData("fault", "none");
    const values: number[] = [];
    let wake: () => void = () => undefined;
    const first = new Promise<void>((resolve) => (wake = resolve));
    const running = nodeThreads(SCRIPT).start({ kind: "bound", scenario: large, steps: 100_000 }, (news) => {
      if (typeof news !== "string" && news.kind === "bound") values.push(news.value);
      wake();
    });
    await first;
    const began = performance.now();
    running.stop();
    const ended = await running.done;
    expect(performance.now() - began).toBeLessThan(STOPPED_WITHIN + BUSY);
    expect(ended).toEqual({ news: { kind: "bound", value: Math.max(...values) }, trouble: null });
  });

  it("before the thread is even up is heeded", { timeout: SLOW }, async () => {
    const { ended, milliseconds } = await stopped(start(search, "none"));
    expect(milliseconds).toBeLessThan(STOPPED_WITHIN + BUSY);
    expect(ended).toEqual({ news: null, trouble: null });
  });
});

describe("a thread that goes wrong", () => {
  it.each<[Fault, Trouble, Partial<ThreadLimits>]>([
    ["dies", "broke-down", {}],
    ["eats memory", "out-of-memory", { memoryMb: 60 }],
    ["never answers", "broke-down", {}],
    ["turns in a circle", "hung", { silence: 5 }],
    ["keeps busy", "hung", { silence: 5 }],
  ])("%s: %s, and the best plan it told is its answer", { timeout: SLOW }, async (fault, trouble, limits) => {
    const { running, plans } = start(search, fault, limits);
    const ended = await running.done;
    expect(ended.trouble).toBe(trouble);
    expect(plans.length).toBeGreaterThan(0);
    expect(planOf(ended)).toEqual(plans.at(-1));
  });

  it("before it has told anything leaves nothing but the trouble", { timeout: SLOW }, async () => {
    expect(await start(mend, "throws at once").running.done).toEqual({ news: null, trouble: "broke-down" });
    expect(await nodeThreads(new URL("./no-such-worker.mjs", import.meta.url)).start(mend, () => undefined).done).toEqual({ news: null, trouble: "broke-down" });
    expect(await nodeThreads(new URL("http://example.org/worker.js")).start(mend, () => undefined).done).toEqual({ news: null, trouble: "broke-down" });
  });

  it("is not heard any more once it has ended", { timeout: SLOW }, async () => {
    const heard = start({ ...search, steps: 1e9 }, "none");
    await heard.first;
    await stopped(heard);
    const { length } = heard.plans;
    await pause(300);
    expect(heard.plans).toHaveLength(length);
  });
});
