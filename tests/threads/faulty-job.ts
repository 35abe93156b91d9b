/** A thread's life with a solver that goes wrong, or with none of the good manners of one. Which, its parent says. */
import { getEnvironmentData } from "node:worker_threads";
import { serveJob } from "../../src/threads/serve-job.js";
import { highsSolver } from "../../src/solvers/highs.js";
import type { PricingSolver, Solver } from "../../src/programme/solver.js";
import { hardModel } from "../solvers/conformance.js";
import { hangingSolver } from "../solvers/faulty-solvers.js";

export type Fault = "none" | "dies" | "throws at once" | "eats memory" | "never answers" | "turns in a circle" | "keeps busy" | "inside HiGHS";

/** Solves by whatever is done in place of a solve. */
function doing(work: () => unknown): PricingSolver {
  const solve: Solver["solve"] = async () => {
    await work();
    throw new Error("still here");
  };
  return { name: "faulty", solve, relax: (model) => solve(model, { nodes: 0, gap: 0, start: null, guardSeconds: 0 }) as never };
}

function eatMemory(): void {
  const eaten: unknown[] = [];
  for (;;) eaten.push(Array.from({ length: 1000 }, (_, i) => ({ i })));
}

const SOLVERS: Record<Fault, () => PricingSolver> = {
  none: highsSolver,
  dies: () => doing(() => process.exit(3)),
  "throws at once": () => {
    throw new Error("out of order");
  },
  "eats memory": () => doing(eatMemory),
  "never answers": hangingSolver,
  "turns in a circle": () => doing(() => {
    for (;;);
  }),
  "keeps busy": () => doing(() => new Promise(() => void setInterval(() => undefined, 1000))),
  "inside HiGHS": () => doing(() => highsSolver().solve(hardModel(200, 100), { nodes: 1e9, gap: 0, start: null, guardSeconds: 600 })),
};

await serveJob(SOLVERS[getEnvironmentData("fault") as Fault]());
