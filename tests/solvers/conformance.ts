import { describe, expect, it } from "vitest";
import { faultsOf, type Model, type Solved, type Solver, type SolveLimits } from "../../src/programme/solver.js";
import { chanceOf } from "../oracle/chance.js";
import { modelOf, TEXTBOOK, type Printed } from "./models.js";
import { byYalps } from "./yalps.js";

const LIMITS: SolveLimits = { nodes: 10_000, gap: 1e-9, start: null, guardSeconds: 20 };

/** What an adapter can do beside what every adapter must. */
export interface Powers {
  readonly negativeColumns: boolean;
}

/** Holds an adapter to what the programme asks of any solver: it answers, says what its answer is, and never throws. */
export function solverConforms(make: () => Solver, powers: Powers): void {
  const solver = make();
  const solve = (model: Model, more: Partial<SolveLimits> = {}): Promise<Solved> => solver.solve(model, { ...LIMITS, ...more });
  describe(`${solver.name} as a solver`, () => {
    describe.each(TEXTBOOK)("$name", (problem) => holdTextbook(problem, solve));
    describe("what has no optimum", () => holdNoOptimum(solve));
    describe("random programmes", () => holdRandom(solve));
    describe("starts", () => holdStarts(solve));
    describe("garbage", () => holdGarbage(solve, powers));
    describe("out of time", () => holdOutOfTime(solve));
  });
}

type Solve = (model: Model, more?: Partial<SolveLimits>) => Promise<Solved>;

function holdTextbook(problem: (typeof TEXTBOOK)[number], solve: Solve): void {
  const model = modelOf(problem);
  it("finds the printed optimum", async () => {
    const found = await solve(model);
    expect(found).toMatchObject({ kind: "optimal", value: expect.closeTo(problem.value, 6), bound: expect.closeTo(problem.value, 6) });
    if (found.kind === "optimal") expect([...found.columns]).toEqual(problem.columns.map((x) => expect.closeTo(x, 6)));
  });
  it("answers the same again", async () => {
    expect(await solve(model)).toEqual(await solve(model));
  });
}

const HALF_AND_HALF: Printed = { cost: [1, 1], whole: true, upper: [1, 1], rows: [["halves", 1, [2, 2], 1]] };

function holdNoOptimum(solve: Solve): void {
  it("says when rows contradict each other", async () => {
    expect(await solve(modelOf({ cost: [1], rows: [["least", 3, [1], Infinity], ["most", -Infinity, [1], 2]] }))).toEqual({ kind: "infeasible" });
  });
  it("says when a column's limits leave nothing", async () => {
    expect(await solve(modelOf({ cost: [1, 1], upper: [1, 1], rows: [["sum", 3, [1, 1], Infinity]] }))).toEqual({ kind: "infeasible" });
  });
  it("says when only fractions would do", async () => {
    expect(await solve(modelOf(HALF_AND_HALF))).toEqual({ kind: "infeasible" });
    expect(await solve(modelOf({ ...HALF_AND_HALF, whole: false }))).toMatchObject({ kind: "optimal", value: expect.closeTo(0.5, 9) });
  });
  it("says when there is no end to it", async () => {
    expect(await solve(modelOf({ cost: [-1, 0], rows: [["difference", -Infinity, [1, -1], 1]] }))).toEqual({ kind: "unbounded" });
  });
  it("takes one of many equal optima", async () => {
    const tied = modelOf({ cost: [1, 1, 1], upper: [1, 1, 1], whole: true, rows: [["two of three", 2, [1, 1, 1], 2]] });
    const found = await solve(tied);
    expect(found).toMatchObject({ kind: "optimal", value: 2 });
    if (found.kind === "optimal") expect(faultsOf(tied, found.columns)).toEqual([]);
  });
  it("solves an empty programme, and one with an empty row", async () => {
    expect(await solve(modelOf({ cost: [], rows: [] }))).toMatchObject({ kind: "optimal", value: 0, columns: new Float64Array() });
    expect(await solve(modelOf({ cost: [2], rows: [["nothing", -1, [0], 1]] }))).toMatchObject({ kind: "optimal", value: 0 });
    expect(await solve(modelOf({ cost: [2], rows: [["nothing", 1, [0], 2]] }))).toEqual({ kind: "infeasible" });
  });
  it("says when limits are crossed", async () => {
    expect(await solve(modelOf({ cost: [1], rows: [["row", 3, [1], 2]] }))).toEqual({ kind: "infeasible" });
    expect(await solve(modelOf({ cost: [1], lower: [3], upper: [2], rows: [["row", 0, [1], 9]] }))).toEqual({ kind: "infeasible" });
  });
  it("solves a programme without rows", async () => {
    expect(await solve(modelOf({ cost: [2, -3], upper: [4, 5], rows: [] }))).toMatchObject({ kind: "optimal", value: -15 });
  });
}

/** Random programmes of set-packing kind, as windows are, with whole and broken columns. */
function randomModel(seed: number, whole: boolean): Model {
  const c = chanceOf(seed);
  const columns = c.whole(4, 10);
  const entries = (share: number): number[] => Array.from({ length: columns }, () => (c.luck(share) ? c.whole(1, 4) : 0));
  return modelOf({
    cost: Array.from({ length: columns }, () => c.whole(-9, 12)), upper: Array.from({ length: columns }, () => c.whole(1, 3)), whole,
    rows: Array.from({ length: c.whole(2, 6) }, (_, r) => (c.luck(0.5) ? [`row ${r}`, -Infinity, entries(0.6), c.whole(2, 9)] : [`row ${r}`, c.whole(0, 4), entries(0.8), c.whole(5, 14)]) as Printed["rows"][number]),
  });
}

/** The optimum of a small whole programme by trying every point of its box; null when none fits. */
function byTrying(model: Model): number | null {
  const x = new Float64Array(model.columns);
  let best: number | null = null;
  const walk = (i: number, cost: number): void => {
    if (i === model.columns) {
      if ((best === null || cost < best) && faultsOf(model, x).length === 0) best = cost;
      return;
    }
    for (let value = 0; value <= model.upper[i]; value++) {
      x[i] = value;
      walk(i + 1, cost + value * model.cost[i]);
    }
  };
  walk(0, 0);
  return best;
}

const size = (model: Model): number => model.upper.reduce((product, most) => product * (most + 1), 1);

function holdRandom(solve: Solve): void {
  it("agrees with a third solver on sixty broken ones", { timeout: 60_000 }, async () => {
    for (let seed = 1; seed <= 60; seed++) {
      const model = randomModel(seed, false);
      const third = byYalps(model, false);
      const found = await solve(model);
      expect({ seed, kind: found.kind, value: found.kind === "optimal" ? found.value : null }).toEqual({ seed, kind: third.kind, value: third.kind === "optimal" ? expect.closeTo(third.value, 6) : null });
    }
  });
  it("agrees with trying every point on forty whole ones", { timeout: 60_000 }, async () => {
    const models = Array.from({ length: 200 }, (_, seed) => randomModel(1000 + seed, true)).filter((model) => size(model) < 3000).slice(0, 40);
    expect(models).toHaveLength(40);
    for (const [i, model] of models.entries()) {
      const best = byTrying(model);
      const found = await solve(model);
      expect({ i, kind: found.kind, value: found.kind === "optimal" ? found.value : null }).toEqual({ i, kind: best === null ? "infeasible" : "optimal", value: best === null ? null : expect.closeTo(best, 6) });
    }
  });
}

function holdStarts(solve: Solve): void {
  const days = TEXTBOOK.find((problem) => problem.name === "three days in one cell or the yard")!;
  const model = modelOf(days);
  const started = (start: readonly number[]): Promise<Solved> => solve(model, { start: Float64Array.from(start) });
  it("finds the same optimum from a start that is dearer", async () => {
    expect(await started([0, 0, 0, 1, 1, 1])).toMatchObject({ kind: "optimal", value: expect.closeTo(days.value, 6) });
  });
  it("finds the same optimum from the optimum", async () => {
    expect(await started(days.columns)).toMatchObject({ kind: "optimal", value: expect.closeTo(days.value, 6) });
  });
  it("is not misled by a start that breaks rows", async () => {
    expect(await started([1, 1, 1, 1, 1, 1])).toMatchObject({ kind: "optimal", value: expect.closeTo(days.value, 6) });
  });
  it("does not call a broken start an answer to a programme that has none", async () => {
    const found = await solve(modelOf(HALF_AND_HALF), { start: Float64Array.from([1, 0]) });
    expect(found).toEqual({ kind: "infeasible" });
  });
}

function holdGarbage(solve: Solve, { negativeColumns }: Powers): void {
  const fine = modelOf(TEXTBOOK[0]);
  const garbage: readonly (readonly [string, Model])[] = [
    ["a cost that is no number", { ...fine, cost: Float64Array.from([NaN, -5]) }],
    ["an entry that is no number", { ...fine, rows: [{ ...fine.rows[0], values: [NaN] }, ...fine.rows.slice(1)] }],
    ["a row limit that is no number", { ...fine, rows: [{ ...fine.rows[0], most: NaN }, ...fine.rows.slice(1)] }],
    ["too few costs", { ...fine, cost: Float64Array.from([-3]) }],
    ["too few limits", { ...fine, upper: Float64Array.from([Infinity]) }],
    ["too many kinds of columns", { ...fine, whole: new Uint8Array(3) }],
    ["a cost without end", { ...fine, cost: Float64Array.from([Infinity, -5]) }],
    ["an entry without end", { ...fine, rows: [{ ...fine.rows[0], values: [-Infinity] }, ...fine.rows.slice(1)] }],
    ["a row that must reach what nothing reaches", { ...fine, rows: [{ ...fine.rows[0], least: Infinity, most: Infinity }, ...fine.rows.slice(1)] }],
    ["a column that must reach what nothing reaches", { ...fine, lower: Float64Array.from([Infinity, 0]) }],
    ["a column limit that is no number", { ...fine, upper: Float64Array.from([NaN, 4]) }],
    ["an entry of a column that is not there", { ...fine, rows: [{ ...fine.rows[0], columns: [7] }, ...fine.rows.slice(1)] }],
    ["an entry between two columns", { ...fine, rows: [{ ...fine.rows[0], columns: [0.5] }, ...fine.rows.slice(1)] }],
    ["a column twice in a row", { ...fine, rows: [{ ...fine.rows[0], columns: [0, 0], values: [1, 1] }, ...fine.rows.slice(1)] }],
    ["more entries than columns named", { ...fine, rows: [{ ...fine.rows[0], values: [1, 2] }, ...fine.rows.slice(1)] }],
  ];
  it.each(garbage)("says that it failed: %s", async (_, model) => {
    expect(await solve(model)).toMatchObject({ kind: "failed", why: expect.stringMatching(/\S/) });
  });
  it("says why in one short line", async () => {
    const found = await solve(garbage[0][1]);
    if (found.kind === "failed") expect({ lines: found.why.split("\n").length, short: found.why.length <= 200 }).toEqual({ lines: 1, short: true });
  });
  it("solves the next programme after garbage", async () => {
    await solve(garbage[0][1]);
    expect(await solve(fine)).toMatchObject({ kind: "optimal", value: expect.closeTo(-36, 6) });
  });
  it(negativeColumns ? "goes below nothing" : "says that it cannot go below nothing", async () => {
    const found = await solve(modelOf({ cost: [1], lower: [-4], rows: [["row", -3, [1], Infinity]] }));
    expect(found.kind).toBe(negativeColumns ? "optimal" : "failed");
    if (found.kind === "optimal") expect(found.value).toBeCloseTo(-3, 6);
  });
}

function holdOutOfTime(solve: Solve): void {
  it("says that time ended it, and hands on no answer that breaks a row", { timeout: 60_000 }, async () => {
    const hard = hardModel(90, 40);
    const found = await solve(hard, { nodes: 1_000_000, guardSeconds: 0.05 });
    expect(found).toMatchObject({ kind: "limit", by: "time" });
    if (found.kind === "limit" && found.columns) expect(faultsOf(hard, found.columns)).toEqual([]);
  });
  it("solves the next programme in its own time", async () => {
    expect(await solve(modelOf(TEXTBOOK[0]))).toMatchObject({ kind: "optimal", value: expect.closeTo(-36, 6) });
  });
}

/** A programme that no tree of a few nodes closes: many knapsack rows over whole columns. */
export function hardModel(columns = 40, rows = 20): Model {
  const c = chanceOf(5);
  return modelOf({
    cost: Array.from({ length: columns }, () => -c.whole(20, 99)), upper: Array<number>(columns).fill(1), whole: true,
    rows: Array.from({ length: rows }, (_, r) => [`row ${r}`, -Infinity, Array.from({ length: columns }, () => c.whole(5, 60)), 12 * columns]),
  });
}
