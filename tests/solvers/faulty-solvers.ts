import type { Model, NotRelaxed, PricingSolver, Relaxed, Solved } from "../../src/programme/solver.js";
import type { Trouble } from "../../src/programme/trouble.js";
import { highsSolver } from "../../src/solvers/highs.js";

/** A solver that goes wrong in one way, and what is to be said of it. */
export interface Faulty {
  readonly name: string;
  readonly trouble: Trouble;
  readonly make: () => PricingSolver;
}

type Optimal = Extract<Solved, { kind: "optimal" }>;

/** HiGHS, its answers changed before they are handed on. */
function changed(solved: (found: Optimal, model: Model) => Solved, relaxed: (found: Relaxed) => Relaxed | NotRelaxed = (found) => found): PricingSolver {
  const honest = highsSolver();
  return {
    name: "faulty",
    async solve(model, limits) {
      const found = await honest.solve(model, limits);
      return found.kind === "optimal" ? solved(found, model) : found;
    },
    async relax(model, guardSeconds) {
      const found = await honest.relax(model, guardSeconds);
      return found.kind === "optimal" ? relaxed(found) : found;
    },
  };
}

const same = (found: Optimal): Solved => found;
function withColumns(found: Optimal, columns: Float64Array, model: Model): Solved {
  return { ...found, columns, value: columns.reduce((sum, x, i) => sum + x * model.cost[i], 0), bound: -Infinity };
}

/** Every way a solver was made to go wrong at its port; those that hang are apart. */
export const FAULTY: readonly Faulty[] = [
  { name: "throws", trouble: "solve-failed", make: () => ({ name: "faulty", solve: () => { throw new Error("out of order"); }, relax: () => { throw new Error("out of order"); } }) },
  { name: "throws when it has relaxed", trouble: "solve-failed", make: () => changed(() => { throw new Error("out of order"); }) },
  { name: "rejects with no error at all", trouble: "solve-failed", make: () => ({ name: "faulty", solve: () => Promise.reject(new Error()), relax: () => Promise.reject(new Error()) }) },
  { name: "answers nothing", trouble: "solve-failed", make: () => changed(() => null as unknown as Solved) },
  { name: "answers what nobody knows", trouble: "solve-failed", make: () => changed(() => ({ kind: "fine" }) as unknown as Solved) },
  { name: "says that it failed", trouble: "solve-failed", make: () => changed(() => ({ kind: "failed", why: "out of order" })) },
  { name: "runs out of time", trouble: "solve-slow", make: () => changed(() => ({ kind: "limit", by: "time", value: null, columns: null, bound: -Infinity, nodes: 0 })) },
  { name: "runs out of time when relaxing", trouble: "solve-slow", make: () => changed(same, () => ({ kind: "limit", by: "time" })) },
  { name: "fills columns with what is no number", trouble: "solve-wrong", make: () => changed((found, model) => withColumns(found, new Float64Array(model.columns).fill(NaN), model)) },
  { name: "hands over too few columns", trouble: "solve-wrong", make: () => changed((found, model) => withColumns(found, found.columns.slice(1), model)) },
  { name: "hands over too many columns", trouble: "solve-wrong", make: () => changed((found, model) => withColumns(found, Float64Array.from([...found.columns, 0]), model)) },
  { name: "halves columns that are whole", trouble: "solve-wrong", make: () => changed((found, model) => withColumns(found, found.columns.map((x) => x / 2), model)) },
  { name: "calls nothing at all an optimum", trouble: "solve-wrong", make: () => changed((found, model) => withColumns(found, new Float64Array(model.columns), model)) },
  { name: "takes everything at once", trouble: "solve-wrong", make: () => changed((found, model) => withColumns(found, new Float64Array(model.columns).fill(1), model)) },
  { name: "tells a cost that its columns do not have", trouble: "solve-wrong", make: () => changed((found) => ({ ...found, value: found.value - 1000, bound: found.bound - 1000 })) },
  { name: "proves more than it finds", trouble: "solve-wrong", make: () => changed((found) => ({ ...found, bound: found.value + 10 })) },
  { name: "tells an optimum without columns", trouble: "solve-wrong", make: () => changed((found) => ({ ...found, columns: null }) as unknown as Solved) },
  { name: "calls what has an answer infeasible", trouble: "solve-wrong", make: () => changed(() => ({ kind: "infeasible" })) },
  { name: "relaxes to a value its columns do not have", trouble: "solve-wrong", make: () => changed(same, (found) => ({ ...found, value: found.value + 1000 })) },
  { name: "relaxes to prices that are no numbers", trouble: "solve-wrong", make: () => changed(same, (found) => ({ ...found, rowPrices: found.rowPrices.map(() => NaN) })) },
  { name: "relaxes to prices that prove nothing", trouble: "solve-wrong", make: () => changed(same, (found) => ({ ...found, rowPrices: found.rowPrices.map((price) => price * 3 + 1) })) },
  { name: "relaxes to too few prices", trouble: "solve-wrong", make: () => changed(same, (found) => ({ ...found, rowPrices: found.rowPrices.slice(1) })) },
];

/** Never answers: as a promise that is never kept. */
export function hangingSolver(): PricingSolver {
  return { name: "faulty", solve: () => new Promise(() => undefined), relax: () => new Promise(() => undefined) };
}
