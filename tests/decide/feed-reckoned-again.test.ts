/** A small budget is solved by a second solver as well, and a difference is never passed over. */
import { describe, expect, it } from "vitest";
import { feedBudget } from "../../src/decide/feed-budget.js";
import { reckonedAgain } from "../../src/decide/feed/reckoned-again.js";
import type { Solver } from "../../src/programme/solver.js";
import { buildSeason } from "../../src/season/build-season.js";
import { highsSolver } from "../../src/solvers/highs.js";
import { javascriptLpSolver } from "../../src/solvers/javascript-lp-solver.js";
import { cell, group, tinyFarm } from "../fixtures/tiny-farm.js";

const budget = feedBudget(buildSeason(tinyFarm({ cells: [cell("A1"), cell("A2")], groups: [group("Cows")] })), highsSolver());
const never: Solver = { name: "never", solve: () => Promise.reject(new Error("asked")) };

describe("reckonedAgain", () => {
  it("agrees", async () => {
    expect(await reckonedAgain(await budget, javascriptLpSolver())).toBe(true);
  });

  it("throws when the second comes to other money", async () => {
    const { programme, money } = await budget;
    await expect(reckonedAgain({ programme, money: money + 0.01 }, javascriptLpSolver())).rejects.toThrow("two solvers differ");
  });

  it("leaves a large one alone", async () => {
    const { programme, money } = await budget;
    const large = { ...programme, model: { ...programme.model, columns: 2001 } };
    expect(await reckonedAgain({ programme: large, money }, never)).toBe(false);
    await expect(reckonedAgain({ programme, money }, never)).rejects.toThrow("asked");
  });

  it("says nothing when the second does not end", async () => {
    const tired: Solver = { name: "tired", solve: () => Promise.resolve({ kind: "failed", why: "tired" }) };
    expect(await reckonedAgain(await budget, tired)).toBe(false);
  });
});
