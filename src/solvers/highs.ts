import highsModule from "highs";
import { faultsOf, type Model, type PricingSolver, type Relaxed, type Solved, type SolveLimits } from "../programme/solver.js";

/** The package's types do not match its module under this resolution; the call itself is right. */
const load = highsModule as unknown as typeof highsModule.default;

type Instance = Awaited<ReturnType<typeof load>>;

const OPTIMAL = 7;
const INFEASIBLE = 8;
const UNBOUNDED_OR_INFEASIBLE = 9;
const UNBOUNDED = 10;
const FEASIBLE = 2;

/** HiGHS, one instance for all solves of a thread. */
export function highsSolver(): PricingSolver {
  let instance: Promise<Instance> | null = null;
  const ready = (): Promise<Instance> => (instance ??= load());
  return {
    name: "HiGHS",
    async solve(model, limits) {
      const highs = await ready();
      try {
        return run(highs, model, limits);
      } catch (cause) {
        // A solver that broke down is not used again.
        instance = null;
        return { kind: "failed", why: firstLine(cause) };
      }
    },
    async relax(model, guardSeconds) {
      const highs = await ready();
      try {
        return relaxed(highs, model, guardSeconds);
      } catch {
        instance = null;
        return null;
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
    m.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: Math.max(limits.gap, 1e-9), mip_max_nodes: limits.nodes, time_limit: limits.guardSeconds, random_seed: 1 });
    if (limits.start) m.setSolution({ colValue: limits.start });
    m.run();
    const status = m.getModelStatus();
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
    return { kind: "limit", value, columns: found, bound, nodes };
  });
}

function relaxed(highs: Instance, model: Model, guardSeconds: number): Relaxed | null {
  return highs.withModel(arraysOf(model), (m) => {
    m.options.set({ output_flag: false, time_limit: guardSeconds, random_seed: 1 });
    m.run();
    if (m.getModelStatus() !== OPTIMAL) return null;
    const { colValue, colDual } = m.getSolution();
    return { value: costOf(model, colValue), columns: colValue, reducedCosts: colDual };
  });
}

function costOf(model: Model, columns: Float64Array): number {
  let cost = 0;
  columns.forEach((value, i) => (cost += value * model.cost[i]));
  return cost;
}
