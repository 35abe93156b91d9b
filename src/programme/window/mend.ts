import type { Draft } from "../draft.js";
import type { PricingSolver } from "../solver.js";
import { freeDays, mendWindow, type WindowLimits } from "./windows.js";
import type { FreeDays } from "./cards.js";

/** Which groups are freed together, and for how many days at a time. */
export interface Pass {
  readonly groups: readonly number[];
  readonly days: number;
}

/** What the windows came to: how many, how many better, and for which passes every window was proven best. */
export interface Mended {
  readonly windows: number;
  readonly better: number;
  readonly proven: readonly Pass[];
}

const LIMITS: WindowLimits = { cards: 3000, nodes: 50, guardSeconds: 20 };

/** Groups alone, leaders with their followers, then all together, over ever shorter days. */
export function passesOf(draft: Draft): Pass[] {
  const { groups } = draft.season;
  const present = groups.map((_, g) => g).filter((g) => groups[g].present.includes(1) && groups[g].mayEnter.includes(1));
  const alone = present.map((g) => ({ groups: [g], days: groups[g].grazer ? 14 : 35 }));
  const pairs = present.filter((g) => present.includes(groups[g].leader)).map((g) => ({ groups: [groups[g].leader, g], days: 9 }));
  return [...alone, ...pairs, ...(present.length > 2 ? [{ groups: present, days: 5 }] : [])];
}

/** Mends the plan window by window, pass by pass, until a whole round finds nothing better, or rounds are up. */
export async function mend(draft: Draft, solver: PricingSolver, rounds: number, watch: { stop(): boolean; better(): void }): Promise<Mended> {
  const passes = passesOf(draft);
  let windows = 0;
  let better = 0;
  let proven: Pass[] = [];
  for (let round = 0; round < rounds; round++) {
    proven = [];
    let gained = false;
    for (const pass of passes) {
      let allProven = true;
      for (let from = 0; from < draft.season.days; from += Math.max(1, Math.floor(pass.days / 2))) {
        if (watch.stop()) return { windows, better, proven };
        const free = pass.groups.map((g) => freeDays(draft, g, from, pass.days)).filter((f): f is FreeDays => f !== null);
        if (free.length === 0) continue;
        windows++;
        const end = await mendWindow(draft, free, solver, LIMITS);
        if (end !== "proven") allProven = false;
        if (end === "better") {
          better++;
          gained = true;
          watch.better();
        }
      }
      if (allProven) proven.push(pass);
    }
    if (!gained) break;
  }
  return { windows, better, proven };
}
