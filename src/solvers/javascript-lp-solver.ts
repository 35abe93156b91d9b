import solverModule from "javascript-lp-solver";
import { costOf, faultsOf, garbageIn, type Model, type Solved, type Solver } from "../programme/solver.js";

/** The package's types do not match its module under this resolution; the call itself is right. */
const engine = solverModule as unknown as { Solve(model: unknown): Answer };

interface Answer {
  readonly feasible: boolean;
  readonly result: number;
  readonly bounded: boolean;
  readonly isIntegral?: boolean;
  readonly [column: string]: unknown;
}

const column = (i: number): string => `c${i}`;

/**
 * javascript-lp-solver: for linear programmes of up to about a thousand columns, and as the second opinion on tiny
 * whole ones. Limits of columns are rows there; it tells no bound, so an answer is optimal or it is nothing.
 */
export function javascriptLpSolver(): Solver {
  return {
    name: "javascript-lp-solver",
    solve(model, limits) {
      const why = garbageIn(model);
      if (why) return Promise.resolve({ kind: "failed", why });
      try {
        const whole = model.whole.includes(1);
        const answer = engine.Solve(modelOf(model, limits.guardSeconds));
        return Promise.resolve(solvedOf(model, answer, whole));
      } catch (cause) {
        return Promise.resolve({ kind: "failed", why: String(cause instanceof Error ? cause.message : cause).slice(0, 200) });
      }
    },
  };
}

function modelOf(model: Model, guardSeconds: number): unknown {
  const constraints: Record<string, { min?: number; max?: number; equal?: number }> = {};
  const variables: Record<string, Record<string, number>> = {};
  const ints: Record<string, 1> = {};
  for (let i = 0; i < model.columns; i++) {
    variables[column(i)] = { cost: model.cost[i] };
    if (model.whole[i]) ints[column(i)] = 1;
    // Columns start at nothing there: a lower limit under that cannot be said.
    if (model.lower[i] < 0) throw new Error(`column ${i} may be negative`);
    const least = model.lower[i] > 0 ? model.lower[i] : undefined;
    const most = Number.isFinite(model.upper[i]) ? model.upper[i] : undefined;
    if (least === undefined && most === undefined) continue;
    constraints[`limit${i}`] = { ...(least === undefined ? {} : { min: least }), ...(most === undefined ? {} : { max: most }) };
    variables[column(i)][`limit${i}`] = 1;
  }
  model.rows.forEach((row, r) => {
    const name = `row${r}`;
    const least = Number.isFinite(row.least) ? { min: row.least } : {};
    const most = Number.isFinite(row.most) ? { max: row.most } : {};
    constraints[name] = row.least === row.most ? { equal: row.least } : { ...least, ...most };
    row.columns.forEach((c, k) => (variables[column(c)][name] = row.values[k]));
  });
  // Its own presolve calls some solvable programmes infeasible.
  return { optimize: "cost", opType: "min", constraints, variables, ints, timeout: guardSeconds * 1000, options: { presolve: false } };
}

function solvedOf(model: Model, answer: Answer, whole: boolean): Solved {
  if (!answer.feasible) return { kind: "infeasible" };
  if (answer.bounded === false) return { kind: "unbounded" };
  const columns = Float64Array.from({ length: model.columns }, (_, i) => Number(answer[column(i)] ?? 0));
  // Out of time it still says feasible, with an answer that breaks rows.
  if (whole && answer.isIntegral !== true) return { kind: "limit", by: "time", value: null, columns: null, bound: -Infinity, nodes: 0 };
  const fault = faultsOf(model, columns)[0];
  if (fault) return { kind: "failed", why: `its answer breaks the programme: ${fault}` };
  const value = costOf(model, columns);
  return { kind: "optimal", value, columns, bound: value, nodes: 0 };
}
