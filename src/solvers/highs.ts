import highsModule from "highs";
import { costOf, faultsOf, garbageIn, type Model, type NotRelaxed, type PricingSolver, type Relaxed, type Solved, type SolveLimits } from "../programme/solver.js";

/** The package's types do not match its module under this resolution; the call itself is right. */
const load = highsModule as unknown as typeof highsModule.default;

type Instance = Awaited<ReturnType<typeof load>>;

const EMPTY = 6;
const OPTIMAL = 7;
const INFEASIBLE = 8;
const UNBOUNDED_OR_INFEASIBLE = 9;
const UNBOUNDED = 10;
const TIME = 13;
const FEASIBLE = 2;

/** Simplex steps of one linear programme: some hundred times what a window takes. Ends a programme that turns in a circle, on every machine alike. */
const MOST_STEPS = 500_000;

/** HiGHS, one instance for all solves of a thread. */
export function highsSolver(): PricingSolver {
  let instance: Promise<Instance> | null = null;
  const ready = (): Promise<Instance> => (instance ??= load());
  return {
    name: "HiGHS",
    async solve(model, limits) {
      const why = garbageIn(model);
      if (why) return { kind: "failed", why };
      try {
        return run(await ready(), model, limits);
      } catch (cause) {
        // A solver that broke down is not used again.
        instance = null;
        return { kind: "failed", why: firstLine(cause) };
      }
    },
    async relax(model, guardSeconds) {
      const why = garbageIn(model);
      if (why) return { kind: "failed", why };
      try {
        return relaxed(await ready(), model, guardSeconds);
      } catch (cause) {
        instance = null;
        return { kind: "failed", why: firstLine(cause) };
      }
    },
  };
}

/** The package's errors can carry the whole program text: the first line says enough. */
function firstLine(cause: unknown): string {
  return String(cause instanceof Error ? cause.message : cause).split("\n")[0].slice(0, 200);
}

type ModelArrays = Parameters<Instance["withModel"]>[0];

function arraysOf(model: Model): ModelArrays {
  const starts = new Int32Array(model.rows.length + 1);
  model.rows.forEach((row, r) => (starts[r + 1] = starts[r] + row.columns.length));
  return {
    numCols: model.columns,
    numRows: model.rows.length,
    colCost: model.cost,
    colLower: model.lower,
    colUpper: model.upper,
    rowLower: Float64Array.from(model.rows, (row) => row.least),
    rowUpper: Float64Array.from(model.rows, (row) => row.most),
    matrix: {
      format: "csr", numRows: model.rows.length, numCols: model.columns, starts,
      indices: Int32Array.from(model.rows.flatMap((row) => [...row.columns])),
      values: Float64Array.from(model.rows.flatMap((row) => [...row.values])),
    },
  };
}

function run(highs: Instance, model: Model, limits: SolveLimits): Solved {
  return highs.withModel({ ...arraysOf(model), integrality: Int32Array.from(model.whole) }, (m): Solved => {
    m.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: Math.max(limits.gap, 1e-9), mip_max_nodes: limits.nodes, ...ends(limits.guardSeconds) });
    if (limits.start) m.setSolution({ colValue: limits.start });
    m.run();
    const status = m.getModelStatus();
    if (status === EMPTY) return { kind: "optimal", value: 0, columns: new Float64Array(), bound: 0, nodes: 0 };
    if (status === INFEASIBLE) return { kind: "infeasible" };
    if (status === UNBOUNDED || status === UNBOUNDED_OR_INFEASIBLE) return { kind: "unbounded" };
    const found = Number(m.info.get("primal_solution_status")) === FEASIBLE ? m.getSolution().colValue : null;
    const fault = found ? faultsOf(model, found)[0] : undefined;
    if (fault) return { kind: "failed", why: `its answer breaks the programme: ${fault}` };
    const value = found ? costOf(model, found) : null;
    const whole = model.whole.includes(1);
    const bound = whole ? Number(m.info.get("mip_dual_bound")) : (value ?? -Infinity);
    const nodes = whole ? Number(m.info.get("mip_node_count")) : 0;
    if (status === OPTIMAL && found && value !== null) return { kind: "optimal", value, columns: found, bound, nodes };
    return { kind: "limit", by: status === TIME ? "time" : "steps", value, columns: found, bound, nodes };
  });
}

function relaxed(highs: Instance, model: Model, guardSeconds: number): Relaxed | NotRelaxed {
  return highs.withModel(arraysOf(model), (m): Relaxed | NotRelaxed => {
    m.options.set({ output_flag: false, ...ends(guardSeconds) });
    m.run();
    const status = m.getModelStatus();
    if (status === INFEASIBLE || status === UNBOUNDED || status === UNBOUNDED_OR_INFEASIBLE) return { kind: "none" };
    if (status !== OPTIMAL) return { kind: "limit", by: status === TIME ? "time" : "steps" };
    const { colValue, colDual, rowDual } = m.getSolution();
    return { kind: "optimal", value: costOf(model, colValue), columns: colValue, rowPrices: rowDual, reducedCosts: colDual };
  });
}

/** Where every run ends, and the same chance in each. */
function ends(guardSeconds: number): { simplex_iteration_limit: number; time_limit: number; random_seed: number } {
  return { simplex_iteration_limit: MOST_STEPS, time_limit: guardSeconds, random_seed: 1 };
}
