import type { Solver } from "../../programme/solver.js";
import type { FeedBudget } from "../feed-budget.js";
import { GUARD_SECONDS } from "./model.js";

/** Columns up to which a slow solver takes about a second. */
const FEW_COLUMNS = 2000;

/** Money by which two solvers of one budget may differ, a million times smaller than the budget. */
const SAME = 1e-6;

/** Solves a small budget once more with another solver: true where both came to the same money, false where it was too large. Throws where they differ. */
export async function reckonedAgain({ programme, money }: Pick<FeedBudget, "programme" | "money">, second: Solver): Promise<boolean> {
  if (programme.model.columns > FEW_COLUMNS) return false;
  const solved = await second.solve(programme.model, { nodes: 0, gap: 0, start: null, guardSeconds: GUARD_SECONDS });
  if (solved.kind !== "optimal") return false;
  if (Math.abs(solved.value - money) > SAME * Math.max(1, Math.abs(money))) throw new Error(`two solvers differ on the feed budget: ${money} and ${solved.value}`);
  return true;
}
