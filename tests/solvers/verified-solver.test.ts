/** Whatever a solver answers, what is handed on keeps the model, or says that it failed. */
import { describe, expect, it } from "vitest";
import { faultsOf, type PricingSolver } from "../../src/programme/solver.js";
import type { Trouble } from "../../src/programme/trouble.js";
import { verifiedSolver } from "../../src/programme/verified-solver.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { solverConforms } from "./conformance.js";
import { FAULTY } from "./faulty-solvers.js";
import { modelOf, TEXTBOOK } from "./models.js";

solverConforms(() => verifiedSolver(highsSolver(), () => undefined), { negativeColumns: true });

const DAYS = TEXTBOOK.find((problem) => problem.name === "three days in one cell or the yard")!;
const model = modelOf(DAYS);
/** All three days in the yard: 15. */
const start = Float64Array.from([0, 0, 0, 1, 1, 1]);

async function asked(solver: PricingSolver) {
  const told: Trouble[] = [];
  const verified = verifiedSolver(solver, (trouble) => told.push(trouble));
  const solved = await verified.solve(model, { nodes: 100, gap: 1e-9, start, guardSeconds: 20 });
  const relaxed = await verified.relax(model, 20);
  return { solved, relaxed, told };
}

describe("a solver that is right", () => {
  it("is handed on, and nothing is told", async () => {
    const { solved, relaxed, told } = await asked(highsSolver());
    expect(solved).toMatchObject({ kind: "optimal", value: expect.closeTo(DAYS.value, 6) });
    expect(relaxed).toMatchObject({ kind: "optimal", value: expect.closeTo(DAYS.value, 6) });
    expect(told).toEqual([]);
  });

  it.each(TEXTBOOK)("proves by its prices what the relaxed optimum is: $name", async (problem) => {
    const own = modelOf(problem);
    const honest = await highsSolver().relax(own, 20);
    const verified = await verifiedSolver(highsSolver(), () => undefined).relax(own, 20);
    if (honest.kind !== "optimal" || verified.kind !== "optimal") throw new Error("no relaxed optimum");
    expect(verified.value).toBeCloseTo(honest.value, 6);
    expect([...verified.reducedCosts]).toEqual([...honest.reducedCosts].map((cost) => expect.closeTo(cost, 6)));
  });
});

describe("a solver that", () => {
  it.each(FAULTY)("$name: $trouble", async ({ make, trouble }) => {
    const { solved, relaxed, told } = await asked(make());
    expect(new Set(told)).toEqual(new Set([trouble]));
    if (solved.kind === "optimal") expect({ value: solved.value, faults: faultsOf(model, solved.columns) }).toEqual({ value: expect.closeTo(DAYS.value, 6), faults: [] });
    else expect(solved.kind === "failed" || (solved.kind === "limit" && solved.columns === null)).toBe(true);
    if (relaxed.kind === "optimal") expect(relaxed.value).toBeCloseTo(DAYS.value, 6);
    expect(solved.kind === "optimal" && relaxed.kind === "optimal").toBe(false);
  });

  it("calls a dear answer an optimum is held against what was known", async () => {
    const dear = highsSolver();
    const liar: PricingSolver = { ...dear, solve: (own, limits) => dear.solve({ ...own, cost: own.cost.map((cost) => -cost) }, { ...limits, start: null }).then((found) => (
      found.kind === "optimal" ? { ...found, value: -found.value, bound: -Infinity } : found)) };
    const told: Trouble[] = [];
    const known = Float64Array.from(DAYS.columns);
    const found = await verifiedSolver(liar, (trouble) => told.push(trouble)).solve(model, { nodes: 100, gap: 1e-9, start: known, guardSeconds: 20 });
    expect({ kind: found.kind, told }).toEqual({ kind: "failed", told: ["solve-wrong"] });
  });
});

describe("columns held against a model", () => {
  it.each([
    ["too few", [1, 0, 1, 0, 1]], ["no number", [NaN, 0, 1, 0, 1, 0]], ["over its limit", [2, 0, 1, -1, 1, 0]], ["broken", [0.5, 0, 1, 0.5, 1, 0]], ["a row broken", [1, 1, 1, 0, 0, 0]],
  ])("%s", (_, columns) => {
    expect(faultsOf(model, Float64Array.from(columns)).length).toBeGreaterThan(0);
  });

  it("names a row whose sum is no number", () => {
    const odd = { ...model, rows: [{ ...model.rows[0], values: [NaN, 1] }] };
    expect(faultsOf(odd, Float64Array.from(DAYS.columns))).toEqual([expect.stringContaining("day 1")]);
  });
});
