import { describe, expect, it } from "vitest";
import { javascriptLpSolver } from "../../src/solvers/javascript-lp-solver.js";
import { hardModel, solverConforms } from "./conformance.js";

solverConforms(javascriptLpSolver, { negativeColumns: false });

describe("javascript-lp-solver out of time", () => {
  it("hands on no answer: it would call a broken one feasible", { timeout: 60_000 }, async () => {
    const found = await javascriptLpSolver().solve(hardModel(90, 40), { nodes: 0, gap: 1e-6, start: null, guardSeconds: 0.2 });
    expect(found).toMatchObject({ kind: "limit", value: null, columns: null });
  });
});
