import { highsSolver } from "../solvers/highs.js";
import { nodeThreads } from "../threads/node-threads.js";

/** What planning needs from outside: other threads of this machine, and the solver of whole-number programmes. */
export function planningServices() {
  return { threads: nodeThreads(), solver: highsSolver() };
}
