import { figureOf, isGrazer, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { farmDay, findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { counted } from "./words.js";

export interface KitUsed {
  nets: number;
  reels: number;
  energisers: number;
}

const PIECES = [["nets", "net"], ["reels", "reel"], ["energisers", "energiser"]] as const;

/** Nets, reels and energisers in use each day, with what is set ahead on the day of a move. */
export function checkFenceKit(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "fence-kit", replay.days);
  kitByDay(scenario, replay).forEach((used, t) => {
    for (const [pieces, piece] of PIECES) {
      const owned = scenario.kit[pieces];
      if (owned === null || used[pieces] <= owned) continue;
      findings.breach(farmDay(t), {
        found: counted(used[pieces], piece, pieces), allowed: `at most ${counted(owned, piece, pieces)}`, by: used[pieces],
      });
    }
  });
  return findings.judged();
}

/** Pieces in use by season day, those set ahead for a move that day among them. */
export function kitByDay(scenario: Scenario, { days, stays, labour }: Replay): KitUsed[] {
  const used = Array.from({ length: days.count }, () => ({ nets: 0, reels: 0, energisers: 0 }));
  for (const stay of stays) {
    const group = scenario.groups[stay.group]!;
    const cell = scenario.cells[stay.cell]!;
    const nets = group.strip?.nets ?? 0;
    const fenced = isGrazer(group.kind) || group.kind === "pigs" || nets > 0;
    const energisers = fenced ? (figureOf(scenario, "fence-kit", "energisers-each", cell.field, group.name) ?? 0) : 0;
    for (let t = stay.first; t <= stay.last; t++) {
      used[t]!.nets += nets;
      used[t]!.energisers += energisers;
      if (isGrazer(group.kind)) used[t]!.reels += reelsFor(scenario, cell.fenceM);
    }
  }
  for (const { group, day, to } of labour.moves) {
    if (to >= 0 && isGrazer(scenario.groups[group]!.kind)) used[day]!.reels += reelsFor(scenario, scenario.cells[to]!.fenceM);
  }
  return used;
}

function reelsFor({ kit }: Scenario, fenceM: number): number {
  return Math.ceil(fenceM / kit.reelM);
}
