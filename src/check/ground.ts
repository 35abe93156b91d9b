import { figureOf, type Cell } from "../farm/scenario.js";
import { growthRate, grownCover } from "../science/growth.js";
import { hayMadeKg } from "../science/hay.js";
import { takenKgDm } from "../science/intake.js";
import type { CellInput, Ground, Log, ShutLot } from "./cell-record.js";
import { positionOf } from "./season-days.js";

export function massOf(lots: readonly ShutLot[]): number {
  return lots.reduce((sum, lot) => sum + lot.cover * lot.areaHa, 0);
}

export function joinLots(ground: Ground, { areaHa }: Cell): void {
  ground.cover = (ground.cover * ground.open + massOf(ground.lots)) / areaHa;
  ground.open = areaHa;
  ground.lots = [];
  ground.shut = 0;
}

export function graze({ scenario, cell, parties }: CellInput, ground: Ground, g: number, t: number, log: Log): void {
  const least = figureOf(scenario, "demand-met", "least-standing", cell.field, scenario.groups[g]!.name) ?? 0;
  const wantedKg = takenKgDm(parties[g]!.intakeKg[t]!, scenario.troddenShare);
  const standingKg = Math.max(0, ground.cover - least) * ground.open;
  const gone = Math.min(wantedKg, standingKg);
  const eaten = gone / (1 + scenario.troddenShare);
  log.balance.eaten += eaten;
  log.balance.trodden += gone - eaten;
  if (ground.open > 0) ground.cover -= gone / ground.open;
  log.grazed.push({ group: g, day: t, wantedKg, standingKg, leftKgPerHa: ground.cover });
}

/** Growth of an evening on open ground and lots; returns kg DM grown on the whole cell. */
export function growing({ scenario, days, cell }: CellInput): (ground: Ground, t: number) => number {
  const ceiling = scenario.ceilingCover;
  const rates = cell.growthByMonth.map((kg) => growthRate(kg, ceiling));
  const still = positionOf(days, cell.coverDate);
  return (ground, t) => {
    if (t < still) return 0;
    const rate = rates[days.months[t]!]!;
    const before = ground.cover;
    ground.cover = grownCover(before, rate, ceiling);
    let grown = (ground.cover - before) * ground.open;
    for (const lot of ground.lots) {
      if (t < lot.growsFrom) continue;
      const stood = lot.cover;
      lot.cover = grownCover(stood, rate, ceiling);
      grown += (lot.cover - stood) * lot.areaHa;
    }
    return grown;
  };
}

export function mow({ scenario, cell, cuts }: CellInput, ground: Ground, t: number, log: Log): void {
  const planned = cuts.get(t);
  if (!planned) return;
  const figure = (key: string) => figureOf(scenario, "hay-stock", key, cell.field, null) ?? 0;
  const { cover, open } = ground;
  const stubble = figure("stubble");
  const hayKg = planned.cut === "hay" ? hayMadeKg(cover, stubble, open, figure("making-loss") / 100, scenario.hay.dryMatter) : 0;
  log.cuts.push({ ...planned, day: t, coverKgPerHa: cover, areaHa: open, hayKg });
  ground.cover = Math.min(cover, stubble);
  log.balance.cut += (cover - ground.cover) * open;
}
