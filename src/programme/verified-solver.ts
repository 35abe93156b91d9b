import { costOf, faultsOf, type Model, type NotRelaxed, type PricingSolver, type Relaxed, type Solved, type SolveLimits } from "./solver.js";
import type { Trouble } from "./trouble.js";

/** Share by which sums of the same amounts may differ. */
const SLACK = 1e-6;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= SLACK * Math.max(1, Math.abs(a), Math.abs(b));

/**
 * A solver whose answers are held against the model before anybody sees them: what it says wrongly, throws or cannot do is
 * told as a trouble and answered as `failed`. What cannot be held against the model is only that nothing is better.
 */
export function verifiedSolver(solver: PricingSolver, told: (trouble: Trouble) => void): PricingSolver {
  return {
    name: solver.name,
    async solve(model, limits) {
      const found = await attempt(() => solver.solve(model, limits));
      if (found.kind === "failed") told("solve-failed");
      if (found.kind === "limit" && found.by === "time") told("solve-slow");
      const why = wrongIn(model, limits, found);
      if (why === null) return found;
      told("solve-wrong");
      return { kind: "failed", why };
    },
    async relax(model, guardSeconds) {
      const found = await attempt(() => solver.relax(model, guardSeconds));
      if (found.kind === "failed") told("solve-failed");
      if (found.kind === "limit" && found.by === "time") told("solve-slow");
      if (found.kind !== "optimal") return found;
      const proven = provenOf(model, found);
      if (proven.kind === "failed") told("solve-wrong");
      return proven;
    },
  };
}

const KINDS: readonly (Solved | Relaxed | NotRelaxed)["kind"][] = ["optimal", "limit", "infeasible", "unbounded", "none", "failed"];

async function attempt<T extends { readonly kind: string }>(solve: () => Promise<T>): Promise<T | { readonly kind: "failed"; readonly why: string }> {
  try {
    const found = await solve();
    return (KINDS as readonly unknown[]).includes((found as T | null)?.kind) ? found : { kind: "failed", why: "its answer is none" };
  } catch (cause) {
    return { kind: "failed", why: String(cause instanceof Error ? cause.message : cause).slice(0, 200) };
  }
}

/** What is wrong in an answer; null when nothing is. */
function wrongIn(model: Model, { start, gap }: SolveLimits, found: Solved): string | null {
  const known = start && faultsOf(model, start).length === 0 ? costOf(model, start) : null;
  if (found.kind === "failed") return null;
  if (found.kind === "unbounded") return null;
  if (found.kind === "infeasible") return known === null ? null : "it calls a programme infeasible whose answer is known";
  const { columns, value, bound } = found;
  if (columns === null || value === null) return found.kind === "optimal" ? "it tells an optimum without its columns" : null;
  const fault = faultsOf(model, columns)[0];
  if (fault !== undefined) return fault;
  if (!near(value, costOf(model, columns))) return `its columns cost ${costOf(model, columns)}, not ${value}`;
  if (!(bound <= value + SLACK * Math.max(1, Math.abs(value)))) return `it proves ${bound} and finds ${value}`;
  if (found.kind === "optimal" && known !== null && value > known + gap + SLACK * Math.max(1, Math.abs(known))) return `its optimum ${value} is dearer than what was known, ${known}`;
  return null;
}

/**
 * The relaxed answer with its value as its own prices prove it: at any prices by row no column can bring the sum lower.
 * (Weak duality: sum of price x row limit + sum of the least of reduced cost x column limit.)
 */
function provenOf(model: Model, found: Relaxed): Relaxed | NotRelaxed {
  const failed = (why: string): NotRelaxed => ({ kind: "failed", why });
  const fault = faultsOf({ ...model, whole: new Uint8Array(model.columns) }, found.columns)[0];
  if (fault !== undefined) return failed(fault);
  if (!near(found.value, costOf(model, found.columns))) return failed(`its columns cost ${costOf(model, found.columns)}, not ${found.value}`);
  if (found.rowPrices.length !== model.rows.length) return failed(`${found.rowPrices.length} prices of ${model.rows.length} rows`);
  const reducedCosts = model.cost.slice();
  let value = 0;
  model.rows.forEach((row, r) => {
    const price = found.rowPrices[r];
    value += atLeast(price, row.least, row.most);
    row.columns.forEach((c, k) => (reducedCosts[c] -= row.values[k] * price));
  });
  reducedCosts.forEach((cost, i) => (value += atLeast(cost, model.lower[i], model.upper[i])));
  // Prices that prove much less than the answer are not its prices.
  if (!(Math.abs(value - found.value) <= 1e-4 * Math.max(1, Math.abs(found.value)))) return failed(`its prices prove ${value}, not ${found.value}`);
  return { ...found, value, reducedCosts };
}

/** The least of price x amount over an amount's limits; a price that is nothing but rounding asks nothing of a limit that is none. */
function atLeast(price: number, least: number, most: number): number {
  const limit = price > 0 ? least : most;
  if (price === 0 || (Math.abs(price) < SLACK && !Number.isFinite(limit))) return 0;
  return price * limit;
}
