import { solve } from "yalps";
import { faultsOf, type Model } from "../../src/programme/solver.js";

export type ByYalps = { readonly kind: "optimal"; readonly value: number } | { readonly kind: "infeasible" | "unbounded" | "unfinished" };

/** A third opinion on a model, by yalps: only for tests. Its columns start at 0; limits of columns are rows. */
export function byYalps(model: Model, whole = true, seconds = 10): ByYalps {
  const variables = Array.from({ length: model.columns }, (_, i): [string, Map<string, number>] => [String(i), new Map([["cost", model.cost[i]], [`limit ${i}`, 1]])]);
  const constraints = new Map<string, { min?: number; max?: number }>();
  model.lower.forEach((least, i) => limit(constraints, `limit ${i}`, least, model.upper[i]));
  model.rows.forEach((row, r) => {
    limit(constraints, `row ${r}`, row.least, row.most);
    row.columns.forEach((c, k) => variables[c][1].set(`row ${r}`, (variables[c][1].get(`row ${r}`) ?? 0) + row.values[k]));
  });
  const integers = whole ? variables.flatMap(([name], i) => (model.whole[i] ? [name] : [])) : [];
  const { status, variables: found } = solve({ direction: "minimize", objective: "cost", constraints, variables, integers }, { timeout: seconds * 1000, maxIterations: 100_000, includeZeroVariables: true });
  if (status === "infeasible" || status === "unbounded") return { kind: status };
  if (status !== "optimal") return { kind: "unfinished" };
  const columns = new Float64Array(model.columns);
  for (const [name, value] of found) columns[Number(name)] = value;
  const fault = faultsOf({ ...model, whole: whole ? model.whole : new Uint8Array(model.columns) }, columns, 1e-5)[0];
  if (fault) throw new Error(`yalps answers outside the programme: ${fault}`);
  return { kind: "optimal", value: columns.reduce((sum, x, i) => sum + x * model.cost[i], 0) };
}

function limit(constraints: Map<string, { min?: number; max?: number }>, name: string, least: number, most: number): void {
  const own = { ...(Number.isFinite(least) ? { min: least } : {}), ...(Number.isFinite(most) ? { max: most } : {}) };
  if (Object.keys(own).length > 0) constraints.set(name, own);
}
