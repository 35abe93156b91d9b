/** A solver that goes wrong costs what it would have mended: the plan from before stands, and the answer says what happened. */
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import { planSeason, type Planned } from "../../src/decide/plan-season.js";
import { Race } from "../../src/decide/race.js";
import { troubleWords } from "../../src/decide/trouble-words.js";
import { studyFarm } from "../../src/bench/study-farms.js";
import { handRule } from "../../src/programme/hand-rule.js";
import type { PricingSolver } from "../../src/programme/solver.js";
import { planOf } from "../../src/programme/plan-of.js";
import { snapshot } from "../../src/programme/snapshot.js";
import type { Threads } from "../../src/programme/threads.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { draftOf } from "../programme/drafts.js";
import { FAULTY, hangingSolver } from "../solvers/faulty-solvers.js";
import { inThisThread } from "./in-this-thread.js";

const farm = studyFarm({ name: "S", cells: 5, groups: 2, days: 28 });
const drawn = draftOf(farm);
handRule(drawn);
const byHand = snapshot(drawn);
const TINY_EFFORT = { name: "quick", seed: 1, capSeconds: null, steps: { seeds: 1, search: 3000, polishes: 1, bound: 4, windowRounds: 1 } } as const;

const raceOn = (threads: Threads): Race => new Race(threads, TINY_EFFORT, { asked: false }, () => undefined);

async function mendedBy(solver: PricingSolver): Promise<Race> {
  const race = raceOn(inThisThread(solver));
  race.offer(byHand);
  await race.run([{ kind: "mend", scenario: farm, from: byHand, keep: null, rounds: 1 }]);
  return race;
}

function expectKept({ kind, plan, report }: Planned): void {
  expect(kind).toBe("plan");
  expect(report.breaches).toEqual([]);
  expect(checkPlan(farm, plan).breaches).toEqual([]);
}

describe("windows by a solver that", () => {
  it("is right find a better plan, and there is nothing to say", async () => {
    const race = await mendedBy(highsSolver());
    expect(race.best!.cost).toBeLessThan(byHand.cost);
    expect(race.notes).toEqual([]);
  });

  it.each(FAULTY)("$name leave the plan as it was, and say so", async ({ make, trouble }) => {
    const race = await mendedBy(make());
    expect(race.best).toEqual(byHand);
    expect(race.mended).toMatchObject({ better: 0 });
    expect(race.notes).toEqual([troubleWords("mend", trouble)]);
    expect(checkPlan(farm, planOf(drawn.season, race.best!)).breaches).toEqual([]);
  });
});

describe("a season planned with a solver that", () => {
  it.each(FAULTY.filter(({ name }) => ["throws", "takes everything at once", "runs out of time"].includes(name)))("$name has a plan that the check accepts, and the note", async ({ make, trouble }) => {
    const planned = await planSeason(farm, { threads: inThisThread(make()), solver: make() }, TINY_EFFORT, () => undefined, { asked: false });
    expectKept(planned);
    expect(planned.cost).toBeLessThan(byHand.cost);
    expect(planned.notes).toContain(troubleWords("search", trouble));
    expect(planned.capped).toBe(false);
  });

  it("hangs has one when its seconds are up, or its owner stops it", async () => {
    const services = { threads: inThisThread(hangingSolver()), solver: hangingSolver() };
    const capped = await planSeason(farm, services, { ...TINY_EFFORT, capSeconds: 2 }, () => undefined, { asked: false });
    expectKept(capped);
    expect(capped.capped).toBe(true);
    const stop = { asked: false };
    let asked = Infinity;
    setTimeout(() => {
      stop.asked = true;
      asked = performance.now();
    }, 2000);
    const stopped = await planSeason(farm, services, TINY_EFFORT, () => undefined, stop);
    expect(performance.now() - asked).toBeLessThan(2000);
    expectKept(stopped);
    expect({ capped: stopped.capped, cheaper: stopped.cost < byHand.cost }).toEqual({ capped: true, cheaper: true });
  });
});

describe("threads that", () => {
  const threadsThat = (ended: Awaited<ReturnType<Threads["start"]>["done"]>): Threads => ({ ...inThisThread(highsSolver()), start: () => ({ done: Promise.resolve(ended), stop: () => undefined }) });

  it.each(["out-of-memory", "broke-down", "hung"] as const)("all end %s leave the hand rule's plan, and say what happened to whom", async (trouble) => {
    const planned = await planSeason(farm, { threads: threadsThat({ news: null, trouble }), solver: highsSolver() }, TINY_EFFORT, () => undefined, { asked: false });
    expectKept(planned);
    expect(planned.cost).toBeCloseTo(byHand.cost, 6);
    expect(planned.bound).toBe(0);
    expect(planned.notes).toEqual(expect.arrayContaining([troubleWords("bound", trouble), troubleWords("mend", trouble), troubleWords("search", trouble)]));
    expect({ capped: planned.capped, steps: planned.steps }).toEqual({ capped: false, steps: 0 });
  });

  it("die after they told a better plan leave that plan", async () => {
    const better = (await mendedBy(highsSolver())).best!;
    const planned = await planSeason(farm, { threads: threadsThat({ news: { kind: "plan", plan: better }, trouble: "out-of-memory" }), solver: highsSolver() }, TINY_EFFORT, () => undefined, { asked: false });
    expectKept(planned);
    expect(planned.cost).toBeCloseTo(better.cost, 6);
  });
});

describe("what is said of trouble", () => {
  it("is one plain sentence each, of what happened and what it means for the plan", () => {
    expect(troubleWords("search", "out-of-memory")).toBe("One of the searches ran out of memory and was ended early; the best plan found before stands.");
    expect(troubleWords("bound", "hung")).toBe("The sum that no plan can cost less than gave no sign of life any more and was ended: it could be higher than printed, the plan is not touched.");
    expect(troubleWords("mend", "solve-wrong")).toBe("Steps of the planning came to wrong answers; none was used, and the plan from before stands.");
    for (const trouble of ["out-of-memory", "broke-down", "hung", "solve-failed", "solve-wrong", "solve-slow"] as const) {
      for (const job of ["search", "bound", "mend"] as const) expect(troubleWords(job, trouble)).toMatch(/^[A-Z][^.]+\.$/);
    }
  });
});
