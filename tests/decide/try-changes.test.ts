/** Changes are tried fairly: the same steps for each farm, more never dearer, less never cheaper, every plan accepted by the check. */
import { beforeAll, describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import { tryChanges, type Trial, type TrialFarm, type TryEffort, type TrySteps } from "../../src/decide/try-changes.js";
import { readChanged } from "../../src/farm/change.js";
import type { Job } from "../../src/programme/jobs.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import type { Threads } from "../../src/programme/threads.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { TABLES } from "../farm/read-text.js";
import { inThisThread, type Order } from "./in-this-thread.js";

const SLOW = { timeout: 120_000 };
const ON = { asked: false };

const FARM = `farm: Two Becks
season: 2027-05-01 to 2027-06-11
fields:
  Long Croft:
    cover: 2300 kg/ha
    cells: { L1: 0.5 ha, L2: 0.5 ha, L3: 0.4 ha }
  Beck side:
    cover: 2100 kg/ha
    distance: 300 m
    cells: { B1: 0.5 ha, B2: 0.4 ha }
groups:
  Cows: { kind: cattle, class: cow with calf, head: 6, weight: 550 kg }
  Hens: { kind: layers, head: 40, weight: 1.8 kg, pen: Ark, follows: Cows }
pens:
  Ark: { size: 3 m x 4 m, moved-by: hand }
people:
  Owner: { minutes: 2 h 30 min }
kit: { reels: { 200 m: 4 }, energisers: 2 }
`;

/** Changes that only give more, or only take away: what the season may cost is known without planning. */
const GIVES_MORE = {
  ground: "change: A cell more\nfields: { Long Croft: { cells: { L4: 0.5 ha } } }",
  time: "change: More time\npeople: { Owner: { minutes: 4 h } }",
  kit: "change: More reels\nkit: { reels: { 200 m: 9 } }",
  hay: "change: Hay in store\nhay: { in-store: 2 t }",
} as const;
const TAKES_AWAY = {
  ground: "change: A cell shut\nfields: { Beck side: { cells: { B1: { closed: { seeding: 2027-05-01 to 2027-06-11 } } } } }",
  time: "change: Less time\npeople: { Owner: { minutes: 1 h 50 min } }",
} as const;
const NO_YARD = "change: Nobody in the yard, a herd too many, a fortnight\nseason: 2027-05-01 to 2027-05-14\nyards: { Byre: { room: 0 } }\ngroups: { Cows: { head: 60, yard: Byre }, Hens: null }";

let solver: PricingSolver;
beforeAll(() => {
  solver = highsSolver();
});

function trialFarm(...changes: readonly string[]): TrialFarm {
  const read = readChanged({ file: "farm.yaml", text: FARM }, changes.map((text, i) => ({ file: `change-${i}.yaml`, text })), TABLES, (text) => text);
  if (!read.ok) throw new Error(JSON.stringify(read.findings, null, 1));
  return { title: read.value.titles.at(-1) ?? "As it is", scenario: read.value.scenario };
}

function effort(seed = 1): TryEffort {
  return { name: "quick", seed, capSeconds: null, steps: { seeds: 2, search: 1500, polish: 500, windows: true, bound: 5 } };
}

/** So little that searches end far apart: only plans tried on the other farms keep the order. */
const POOR: TrySteps = { seeds: 1, search: 150, polish: 150, windows: false, bound: 0 };

interface How {
  readonly seed?: number;
  readonly steps?: TrySteps;
  readonly threads?: Threads;
  readonly stop?: { readonly asked: boolean };
}

function tried(farms: readonly TrialFarm[], { seed = 1, threads = inThisThread(solver), stop = ON, steps = undefined }: How = {}): Promise<readonly Trial[]> {
  return tryChanges(farms, null, { threads }, { ...effort(seed), ...steps && { steps } }, { progress: () => undefined, stop });
}

/** Threads that write down what they are asked to do. */
function noted(jobs: Job[]): Threads {
  const threads = inThisThread(solver);
  return { ...threads, start: (job, heard) => (jobs.push(job), threads.start(job, heard)) };
}

/** Threads on which every search of one farm comes to nothing: the worst luck there is. */
function lucklessFor({ scenario }: TrialFarm): Threads {
  const threads = inThisThread(solver);
  const nothing = { done: Promise.resolve({ news: null, trouble: null }), stop: () => undefined };
  return { ...threads, start: (job, heard) => (job.scenario.print === scenario.print ? nothing : threads.start(job, heard)) };
}

const costOf = ({ planned }: Trial): number => planned.cost;

describe("a change tried", () => {
  it.each([1, 2, 3, 4])("is never dearer where it only gives more (seed %i)", SLOW, async (seed) => {
    const [base, ...more] = await tried([trialFarm(), ...Object.values(GIVES_MORE).map((change) => trialFarm(change))], { seed, steps: POOR });
    for (const trial of more) expect([trial.title, costOf(trial) <= costOf(base!) + 1e-9]).toEqual([trial.title, true]);
  });

  it.each([1, 2, 3, 4])("is never cheaper where it only takes away (seed %i)", SLOW, async (seed) => {
    const [base, ...less] = await tried([trialFarm(), ...Object.values(TAKES_AWAY).map((change) => trialFarm(change))], { seed, steps: POOR });
    for (const trial of less) expect([trial.title, costOf(trial) >= costOf(base!) - 1e-9]).toEqual([trial.title, true]);
  });

  it.each(Object.entries(GIVES_MORE))("is not dearer for having had no luck at all (%s)", SLOW, async (_what, change) => {
    const farms = [trialFarm(), trialFarm(change)] as const;
    const [base, luckless] = await tried(farms, { threads: lucklessFor(farms[1]) });
    expect(costOf(base!)).toBeLessThan(base!.planned.handRuleCost - 1);
    expect(costOf(luckless!)).toBeLessThanOrEqual(costOf(base!) + 1e-9);
  });

  it.each(Object.entries(TAKES_AWAY))("is not cheaper where the farm as it is had no luck (%s)", SLOW, async (_what, change) => {
    const farms = [trialFarm(), trialFarm(change)] as const;
    const [luckless, less] = await tried(farms, { threads: lucklessFor(farms[0]) });
    expect(costOf(luckless!)).toBeLessThanOrEqual(costOf(less!) + 1e-9);
  });

  it("has plans that the check accepts, with the check's own figures", SLOW, async () => {
    const trials = await tried([trialFarm(), trialFarm(GIVES_MORE.ground), trialFarm(TAKES_AWAY.time)]);
    for (const { scenario, planned } of trials) {
      const report = checkPlan(scenario, planned.plan);
      expect(report.breaches).toEqual([]);
      expect(planned.report).toEqual(report);
      expect(planned.cost).toBe(report.cost);
      expect(Object.values(report.chargesByRule).reduce((sum, money) => sum + money, 0)).toBeCloseTo(report.cost, 6);
      expect(planned.cost).toBeLessThanOrEqual(planned.handRuleCost + 1e-9);
    }
    expect(trials[0]!.planned.bound).toBeGreaterThan(0);
  });

  it("is looked at with the same steps as the farm as it is", SLOW, async () => {
    const jobs: Job[] = [];
    const farms = [trialFarm(), trialFarm(GIVES_MORE.ground), trialFarm(TAKES_AWAY.ground)];
    await tried(farms, { threads: noted(jobs) });
    const spent = farms.map(({ scenario }) => jobs.flatMap((job) => (job.kind === "search" && job.scenario.print === scenario.print ? [[job.steps, job.seed, job.polishes]] : [])));
    // two searches, its own plan and another farm's polished, the better of the two with windows
    expect(spent[0]!.length).toBe(5);
    expect(spent[1]).toEqual(spent[0]);
    expect(spent[2]).toEqual(spent[0]);
  });

  it.each<Order>(["in turn", "last first"])("comes to the same whichever job is faster (%s)", SLOW, async (order) => {
    const farms = [trialFarm(), trialFarm(GIVES_MORE.ground)];
    const kept = (trials: readonly Trial[]) => JSON.stringify(trials.map(({ title, planned: { plan, cost, notes }, searched }) => ({ title, plan, cost, notes, searched })));
    expect(kept(await tried(farms, { threads: inThisThread(solver, order) }))).toBe(kept(await tried(farms)));
  });

  it("without a plan is told what gives, and leaves the others their comparison", SLOW, async () => {
    const [base, none, more] = await tried([trialFarm(), trialFarm(NO_YARD), trialFarm(GIVES_MORE.time)]);
    expect([base, none, more].map((trial) => trial!.planned.kind)).toEqual(["plan", "no-plan", "plan"]);
    const refusal = none!.planned.refusal!;
    expect(refusal.gives.flatMap(({ breaches }) => breaches).length).toBe(none!.planned.report.breaches.length);
    expect(none!.planned.report.breaches.length).toBeGreaterThan(0);
  });

  it("keeps what there is when the owner ends it at once", SLOW, async () => {
    const trials = await tried([trialFarm(), trialFarm(GIVES_MORE.ground)], { stop: { asked: true } });
    expect(trials.map(({ planned: { kind, capped } }) => [kind, capped])).toEqual([["plan", true], ["plan", true]]);
    for (const { scenario, planned } of trials) expect(checkPlan(scenario, planned.plan).breaches).toEqual([]);
  });

  it("starts from a plan given, and is never dearer than that", SLOW, async () => {
    const farms = [trialFarm(), trialFarm(GIVES_MORE.time)];
    const [known] = await tried(farms, { seed: 7 });
    const poor: TryEffort = { ...effort(2), steps: POOR };
    const trials = await tryChanges(farms, known!.planned.plan, { threads: inThisThread(solver) }, poor, { progress: () => undefined, stop: ON });
    for (const trial of trials) expect(costOf(trial)).toBeLessThanOrEqual(costOf(known!) + 1e-9);
  });
});
