import type { Draft } from "../draft.js";
import type { PricingSolver } from "../solver.js";
import { lessenWindow, type ElasticLimits } from "./elastic.js";
import { freeDays } from "./windows.js";
import type { MendWatch } from "./mend.js";

/** What elastic windows came to: how many, how many that broke less, and the days of those that all were proven. */
export interface Lessened {
  readonly windows: number;
  readonly less: number;
  /** Days of a window, when the last round proved of each that nothing less is to be had in it; else 0. */
  readonly provenDays: number;
}

const LIMITS: ElasticLimits = { cards: 3000, steps: 40_000, nodes: 50, guardSeconds: 20, give: 4 };
const DAYS = { grazers: 14, others: 10 } as const;

/** A step of listing stays of birds and pigs takes longer: they stay for weeks. */
const OTHERS_STEPS = 10_000;

/** Re-does the days of these groups window by window, each half over the one before, until a round breaks no less. */
export async function lessen(draft: Draft, groups: readonly number[], solver: PricingSolver, rounds: number, watch: MendWatch): Promise<Lessened> {
  const sum = { windows: 0, less: 0, provenDays: 0 };
  for (let round = 0; round < rounds && draft.over > 0; round++) {
    const before = draft.over;
    let proven = true;
    for (const group of groups) {
      const { grazer } = draft.season.groups[group];
      const days = grazer ? DAYS.grazers : DAYS.others;
      const limits = grazer ? LIMITS : { ...LIMITS, steps: OTHERS_STEPS };
      for (let from = 0; from < draft.season.days && draft.over > 0; from += days / 2) {
        if (watch.stop()) return { ...sum, provenDays: 0 };
        const free = freeDays(draft, group, from, days);
        if (!free) continue;
        const end = await lessenWindow(draft, [free], solver, limits);
        sum.windows++;
        if (end !== "proven") proven = false;
        if (end !== "better") continue;
        sum.less++;
        watch.better();
      }
    }
    const pairs = await lessenPairs(draft, solver, watch);
    sum.windows += pairs.windows;
    sum.less += pairs.less;
    sum.provenDays = proven ? Math.min(...groups.map((g) => (draft.season.groups[g].grazer ? DAYS.grazers : DAYS.others))) : 0;
    if (draft.over > before - LEAST_GAIN) break;
  }
  return sum;
}

/** A round that lessens the breaking by less than this, in the rules' own steps, is the last. */
const LEAST_GAIN = 0.02;

const PAIR_DAYS = 7;

/** Where a held or housed group is not where it should be, two groups are freed together: another may stand in its place. */
async function lessenPairs(draft: Draft, solver: PricingSolver, watch: MendWatch): Promise<{ windows: number; less: number }> {
  const { season } = draft;
  const sum = { windows: 0, less: 0 };
  for (const { group, day } of misplaced(draft)) {
    for (let other = 0; other < season.groups.length && draft.over > 0 && !watch.stop(); other++) {
      const free = [group, other].map((g) => freeDays(draft, g, day - 3, PAIR_DAYS)).filter((f) => f !== null);
      if (other === group || free.length < 2) continue;
      sum.windows++;
      if ((await lessenWindow(draft, free, solver, LIMITS)) !== "better") continue;
      sum.less++;
      watch.better();
    }
  }
  return sum;
}

/** First days of each group in places that rules of its own days forbid. */
function misplaced({ season, place, tables }: Draft): { group: number; day: number }[] {
  return season.groups.flatMap((own, group) => {
    const wrong = (t: number): boolean => t >= 0 && own.present[t] === 1 && tables.standOver[group][t * tables.width + place[group][t] + 1] > 0;
    return Array.from({ length: season.days }, (_, day) => ({ group, day })).filter(({ day }) => wrong(day) && !wrong(day - 1));
  });
}
