/** The same farm, seed and effort give the same plan, whichever job is faster and however busy the machine is. */
import { setEnvironmentData, Worker } from "node:worker_threads";
import { describe, expect, it } from "vitest";
import { planSeason } from "../../src/decide/plan-season.js";
import { Race } from "../../src/decide/race.js";
import { handRule } from "../../src/programme/hand-rule.js";
import type { Job } from "../../src/programme/jobs.js";
import { snapshot, type Snapshot } from "../../src/programme/snapshot.js";
import type { Ended, Threads } from "../../src/programme/threads.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { nodeThreads } from "../../src/threads/node-threads.js";
import { scenarioOf } from "../farm/read-text.js";
import { draftOf } from "../programme/drafts.js";
import { inThisThread } from "./in-this-thread.js";

const SLOW = 240_000;
const CORES = 2;

const FARM = scenarioOf(`farm: Two Becks
season: 2027-05-01 to 2027-05-21
fields:
  Long Croft:
    cover: 2300 kg/ha
    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha }
  Beck side:
    cover: 2100 kg/ha
    distance: 300 m
    cells: { B1: 0.5 ha, B2: { area: 0.4 ha, closed: { nesting: 2027-05-10 to 2027-05-20 } } }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 3, weight: 550 kg }
  Hens: { kind: layers, head: 40, weight: 1.8 kg, pen: Ark, follows: Cows }
pens:
  Ark: { size: 3 m x 4 m, moved-by: hand }
people:
  Owner: { minutes: 2 h 30 min }
`);
const EFFORT = { name: "usual", seed: 5, capSeconds: null, steps: { seeds: 2, search: 1500, polishes: 1, bound: 6, windowRounds: 0 } } as const;

/** What an owner keeps of a planning, as text. */
async function planned(threads: Threads): Promise<string> {
  const { plan, cost, bound, handRuleCost, notes, steps, capped } = await planSeason(FARM, { threads, solver: highsSolver() }, EFFORT, () => undefined, { asked: false });
  return JSON.stringify({ plan, cost, bound, handRuleCost, notes, steps, capped });
}

function ownThreads(): Threads {
  setEnvironmentData("fault", "none");
  return nodeThreads(new URL("../threads/faulty-worker.mjs", import.meta.url));
}

/** Keeps every core busy with something else meanwhile. */
async function underLoad<T>(work: () => Promise<T>): Promise<T> {
  const busy = Array.from({ length: 2 * CORES }, () => new Worker("for (;;);", { eval: true }));
  try {
    return await work();
  } finally {
    await Promise.all(busy.map((worker) => worker.terminate()));
  }
}

describe("a plan", () => {
  it("is the same to the byte in whatever order its jobs are done, in threads, and on a machine that is busy", { timeout: SLOW }, async () => {
    const first = await planned(inThisThread(highsSolver(), "in turn"));
    const { cost, handRuleCost, capped } = JSON.parse(first) as { cost: number; handRuleCost: number; capped: boolean };
    expect({ cheaper: cost < handRuleCost, capped }).toEqual({ cheaper: true, capped: false });
    expect(await planned(inThisThread(highsSolver(), "last first"))).toBe(first);
    expect(await planned(inThisThread(highsSolver(), "at once"))).toBe(first);
    expect(await planned(ownThreads())).toBe(first);
    expect(await underLoad(() => planned(ownThreads()))).toBe(first);
  });
});

describe("of plans that cost the same", () => {
  const drawn = draftOf(FARM);
  handRule(drawn);
  const byHand = snapshot(drawn);
  const jobs: Job[] = [0, 1, 2].map((seed) => ({ kind: "search", scenario: FARM, from: byHand, keep: null, steps: 1, polishes: 1, seed }));
  /** Costs so near that a tolerance would take them for equal by pairs, and not in all. */
  const cents = [10, 10, 10 - 6e-10];
  const plans = cents.map((cost, i): Snapshot => ({ ...byHand, cost, cuts: byHand.cuts.map(() => [i]) }));

  const arriving = (order: readonly number[]): Threads => ({
    ...inThisThread(highsSolver()),
    start: (job) => ({
      done: new Promise<Ended>((resolve) => setTimeout(() => resolve({ news: { kind: "plan", plan: plans[(job as { seed: number }).seed] }, trouble: null }), 15 * order.indexOf((job as { seed: number }).seed))),
      stop: () => undefined,
    }),
  });

  it.each([[[0, 1, 2]], [[0, 2, 1]], [[1, 0, 2]], [[1, 2, 0]], [[2, 0, 1]], [[2, 1, 0]]])("the same one stands when they arrive as %j", async (order) => {
    const race = new Race(arriving(order), EFFORT, { asked: false }, () => undefined);
    await race.run(jobs);
    expect(race.best).toEqual(plans[2]);
    const tied = new Race(arriving(order), EFFORT, { asked: false }, () => undefined);
    await tied.run(jobs.slice(0, 2));
    expect(tied.best).toEqual(plans[0]);
  });
});
