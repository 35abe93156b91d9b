import { figureOf, isGrazer, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import { takenKgDm } from "../science/intake.js";
import { farmDay, findingsOf, type Judged } from "./findings.js";
import type { Replay } from "./replay.js";
import { daysIn } from "./season-days.js";
import { isWalkDay } from "./walks.js";
import { counted, plain, shortOf } from "./words.js";

/** On each weekly walk, days of grass ahead of all grazers that are out. */
export function checkGrassInHand(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "grass-in-hand", replay.days);
  const figure = (key: string) => figureOf(scenario, "grass-in-hand", key, null, null) ?? 0;
  const demand = dailyDemand(scenario, replay);
  const grass = grassByWalk(scenario, replay);
  for (let t = 0; t < replay.days.count; t++) {
    if (!isWalkDay(t) || demand[t]! <= 0) continue;
    const spring = replay.days.daysOfYear[t]! <= figure("spring-until");
    const wish = Math.min(figure(spring ? "spring" : "wish"), replay.days.count - t);
    const ahead = grass(t) / demand[t]!;
    findings.charge(farmDay(t), {
      money: Math.max(0, wish - ahead) * figure("price"),
      found: `${counted(shortOf(ahead, 0.1), "day", "days")} of grass ahead, ${plain(wish)} wished`,
      allowed: `at least ${counted(wish, "day", "days")} of grass ahead`,
    });
  }
  return findings.judged();
}

/** What the grazers that are out take in a day, kg DM. */
function dailyDemand(scenario: Scenario, { days, groups }: Replay): Float64Array {
  const demand = new Float64Array(days.count);
  for (const { group, alone } of groups) {
    if (!isGrazer(group.kind)) continue;
    const out = daysIn(days, [group.out]);
    for (let t = 0; t < days.count; t++) if (out[t]) demand[t]! += takenKgDm(alone.intakeKg[t]!, scenario.troddenShare);
  }
  return demand;
}

/** Grass above the residual in cells that are open to at least one group of grazers, kg DM. */
function grassByWalk(scenario: Scenario, { cells }: Replay): (t: number) => number {
  const grazed = new Set(scenario.groups.filter((group) => isGrazer(group.kind)).flatMap((group) => group.mayEnter));
  const asked = cells.filter(({ cell }) => grazed.has(cell.name));
  const residual = asked.map(({ cell }) => figureOf(scenario, "residual-cover", "grazers", cell.field, null) ?? 0);
  return (t) =>
    asked.reduce((sum, { cover, open, inHand, closed }, i) =>
      inHand[t] && !closed[t] ? sum + Math.max(0, cover[t]! - residual[i]!) * open[t]! : sum, 0);
}
