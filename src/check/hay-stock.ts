import { figureOf, type Scenario } from "../farm/scenario.js";
import type { Plan } from "../plan/plan.js";
import type { CellSeason, CutDone } from "./cell-record.js";
import { farmDay, findingsOf, type Findings, type Judged } from "./findings.js";
import { hayFedKg } from "./hay-fed.js";
import type { Replay } from "./replay.js";
import { TOLERANCE } from "./tolerance.js";
import { coverSet, coverShort, over, plain } from "./words.js";

/** Hay left for the winter, what mowing costs, and whether each cut the plan chose was there to be made. */
export function checkHayStock(scenario: Scenario, _plan: Plan, replay: Replay): Judged {
  const findings = findingsOf(scenario, "hay-stock", replay.days);
  for (const cell of replay.cells) for (const cut of cell.cuts) if (!cut.owners) judgeCut(scenario, cell, cut, findings);
  mowing(scenario, replay, findings);
  winterHay(scenario, replay, findings);
  return findings.judged();
}

/** Hay made from all cuts in the plan, kg as stored. */
export function hayMadeKgOf({ cells }: Replay): number {
  return cells.reduce((sum, { cuts }) => cuts.reduce((s, cut) => s + (cut.listed ? cut.hayKg : 0), sum), 0);
}

function judgeCut(scenario: Scenario, { cell, stays, shut }: CellSeason, cut: CutDone, findings: Findings): void {
  const where = { group: null, cell, first: cut.day, last: cut.day };
  const from = figureOf(scenario, "hay-stock", "cut-from", cell.field, null) ?? 0;
  const inCell = stays.find((stay) => stay.first <= cut.day && cut.day <= stay.last);
  if (cut.coverKgPerHa < from - TOLERANCE) findings.breach(where, { found: `${coverShort(cut.coverKgPerHa)} at a cut`, allowed: `at least ${coverSet(from)}` });
  if (!cell.mow) findings.breach(where, { found: "a cut where the mower cannot go", allowed: "cells that may be mown" });
  if (inCell) findings.breach(where, { found: `a cut with ${scenario.groups[inCell.group]!.name} in the cell`, allowed: "no group in the cell" });
  if (shut[cut.day]) findings.breach(where, { found: "a cut with ground shut", allowed: "all of the cell open" });
}

function mowing(scenario: Scenario, { cells, days }: Replay, findings: Findings): void {
  const area = new Float64Array(days.count);
  const cuts = new Uint8Array(days.count);
  for (const cell of cells) {
    for (const { day, areaHa, listed } of cell.cuts) {
      if (!listed) continue; // nobody mows what is not in the plan
      area[day]! += areaHa;
      cuts[day] = 1;
    }
  }
  const together = figureOf(scenario, "hay-stock", "together", null, null) ?? 0;
  cuts.forEach((any, t) => {
    if (!any) return;
    const found = `${plain(area[t]!, 2)} ha mown${area[t]! < together ? `, paid as ${plain(together, 2)} ha` : ""}`;
    findings.charge(farmDay(t), { money: Math.max(together, area[t]!) * scenario.prices.mowingPerHa, found, allowed: "no mowing" });
  });
}

function winterHay(scenario: Scenario, replay: Replay, findings: Findings): void {
  const { inStoreKg, winterNeedKg } = scenario.hay;
  const left = inStoreKg + hayMadeKgOf(replay) - hayFedKg(scenario, replay.groups);
  const short = Math.max(0, winterNeedKg - left);
  const share = (figureOf(scenario, "hay-stock", "short-share", null, null) ?? 0) / 100;
  findings.charge({ group: null, cell: null, first: 0, last: replay.days.count - 1 }, {
    money: short * scenario.prices.hayPerKg * share,
    found: `${plain(over(short))} kg of hay short of the winter's ${plain(winterNeedKg)}`, allowed: `${plain(winterNeedKg)} kg left for the winter`,
  });
}
