import type { Draft } from "../draft.js";
import type { PricingSolver } from "../solver.js";
import type { FreeDays } from "./cards.js";
import { freeDays, mendWindow, type WindowLimits } from "./windows.js";

/** Which groups are freed together, and for how many days at a time. */
export interface Pass {
  readonly groups: readonly number[];
  readonly days: number;
}

/** What the windows came to, all rounds together: how many, how many better; and what the last round says of the plan as it then stood. */
export interface Mended {
  readonly windows: number;
  readonly better: number;
  /** The last round went through every window and left the plan as it was. */
  readonly settled: boolean;
  /** Passes of the last round of which every window was proven best. */
  readonly proven: readonly Pass[];
}

export interface MendWatch {
  stop(): boolean;
  better(): void;
}

const LIMITS: WindowLimits = { cards: 3000, steps: 40_000, nodes: 50, guardSeconds: 20 };

/** Grazers alone, over a fortnight: where windows find most for their time. */
export function grazersPasses(draft: Draft): Pass[] {
  return presentGroups(draft).filter((g) => draft.season.groups[g].grazer).map((g) => ({ groups: [g], days: 14 }));
}

/** Every group alone, then leaders with their followers. */
export function allPasses(draft: Draft): Pass[] {
  const { groups } = draft.season;
  const present = presentGroups(draft);
  const alone = present.filter((g) => !groups[g].grazer).map((g) => ({ groups: [g], days: 12 }));
  const pairs = present.filter((g) => present.includes(groups[g].leader)).map((g) => ({ groups: [groups[g].leader, g], days: 6 }));
  return [...grazersPasses(draft), ...alone, ...pairs];
}

function presentGroups(draft: Draft): number[] {
  const { groups } = draft.season;
  return groups.map((_, g) => g).filter((g) => groups[g].present.includes(1) && groups[g].mayEnter.includes(1));
}

/** Mends the plan window by window, pass by pass, until a whole round finds nothing better, or rounds are up. */
export async function mend(draft: Draft, passes: readonly Pass[], solver: PricingSolver, rounds: number, watch: MendWatch): Promise<Mended> {
  let windows = 0;
  let better = 0;
  let settled = false;
  let proven: Pass[] = [];
  for (let round = 0; round < rounds; round++) {
    proven = [];
    const before = better;
    for (const pass of passes) {
      const done = await mendPass(draft, pass, solver, watch);
      windows += done.windows;
      better += done.better;
      if (done.proven) proven.push(pass);
      if (watch.stop()) return { windows, better, settled: false, proven };
    }
    settled = better === before;
    if (settled) break;
  }
  return { windows, better, settled, proven };
}

/** One pass over the season, each window half over the one before. */
async function mendPass(draft: Draft, pass: Pass, solver: PricingSolver, watch: MendWatch): Promise<{ windows: number; better: number; proven: boolean }> {
  const done = { windows: 0, better: 0, proven: true };
  for (let from = 0; from < draft.season.days; from += Math.max(1, Math.floor(pass.days / 2))) {
    if (watch.stop()) return { ...done, proven: false };
    const free = pass.groups.map((g) => freeDays(draft, g, from, pass.days)).filter((f): f is FreeDays => f !== null);
    if (free.length === 0) continue;
    done.windows++;
    const end = await mendWindow(draft, free, solver, LIMITS);
    if (end !== "proven") done.proven = false;
    if (end === "better") {
      done.better++;
      watch.better();
    }
  }
  return done;
}
