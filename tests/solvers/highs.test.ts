import { describe, expect, it } from "vitest";
import { faultsOf, type Solved } from "../../src/programme/solver.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { hardModel, solverConforms } from "./conformance.js";
import { modelOf, TEXTBOOK } from "./models.js";

solverConforms(highsSolver, { negativeColumns: true });

const hard = hardModel();
const solve = (nodes: number, start: Float64Array | null = null, guardSeconds = 30): Promise<Solved> => highsSolver().solve(hard, { nodes, gap: 1e-6, start, guardSeconds });

describe("HiGHS that is stopped early", () => {
  it("says that a limit ended it, with an answer that keeps the rows and a bound below it", { timeout: 60_000 }, async () => {
    const found = await solve(1);
    expect(found).toMatchObject({ kind: "limit", by: "steps" });
    if (found.kind !== "limit" || !found.columns || found.value === null) throw new Error("no answer at all");
    expect(faultsOf(hard, found.columns)).toEqual([]);
    expect(found.bound).toBeLessThanOrEqual(found.value);
  });

  it("gives the same answer for the same number of nodes", { timeout: 60_000 }, async () => {
    const [a, b] = [await solve(2), await solve(2)];
    expect(a).toEqual(b);
  });

  it("is no worse than the start it was given", { timeout: 60_000 }, async () => {
    const first = await solve(3);
    if (first.kind !== "limit" || !first.columns || first.value === null) throw new Error("no answer to start from");
    const again = await solve(1, first.columns);
    expect("value" in again && again.value !== null && again.value <= first.value + 1e-6).toBe(true);
  });

  it("says that a limit ended it when time is up at once", { timeout: 60_000 }, async () => {
    expect(await solve(100_000, null, 0)).toMatchObject({ kind: "limit", by: "time" });
  });

  it("fails, and does not throw, on a start of another length", async () => {
    expect((await solve(1, new Float64Array(3))).kind).toBe("failed");
  });
});

describe("HiGHS on the relaxed programme", () => {
  it("is the printed optimum, with what each column off it would cost", async () => {
    // Dantzig's transport: the third market from the first plant would cost 0.162 - 0.126 more than from the second, as the first has room
    const found = await highsSolver().relax(modelOf(TEXTBOOK[1]), 20);
    if (found.kind !== "optimal") throw new Error(found.kind);
    expect(found.value).toBeCloseTo(153.675, 6);
    expect(found.reducedCosts[2]).toBeCloseTo(0.162 - 0.126, 9);
  });

  it("prices rows so that each column costs what is left of its cost beyond them", async () => {
    const model = modelOf(TEXTBOOK[1]);
    const found = await highsSolver().relax(model, 20);
    if (found.kind !== "optimal") throw new Error(found.kind);
    const left = model.cost.slice();
    model.rows.forEach((row, r) => row.columns.forEach((c, k) => (left[c] -= row.values[k] * found.rowPrices[r])));
    expect([...found.reducedCosts]).toEqual([...left].map((cost) => expect.closeTo(cost, 9)));
  });

  it("lets whole columns be broken", async () => {
    // (2.25, 3.75): 41.25
    expect(await highsSolver().relax(modelOf(TEXTBOOK[2]), 20)).toMatchObject({ kind: "optimal", value: expect.closeTo(-41.25, 9) });
  });

  it("says that there is none, that it is garbage, that time was up, and goes on to the next", async () => {
    const solver = highsSolver();
    expect(await solver.relax(modelOf({ cost: [1], rows: [["least", 3, [1], 2]] }), 20)).toEqual({ kind: "none" });
    expect(await solver.relax(modelOf({ cost: [-1], rows: [] }), 20)).toEqual({ kind: "none" });
    expect(await solver.relax(modelOf({ cost: [NaN], rows: [] }), 20)).toMatchObject({ kind: "failed", why: expect.stringMatching(/\S/) });
    expect(await solver.relax(hard, 0)).toEqual({ kind: "limit", by: "time" });
    expect(await solver.relax(modelOf(TEXTBOOK[0]), 20)).toMatchObject({ kind: "optimal", value: expect.closeTo(-36, 9) });
  });
});
