import type { Planned } from "../decide/plan-season.js";
import type { WayOut } from "../decide/refusal.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import type { Made } from "../sheets/made.js";
import type { PlanAnswer } from "./answers.js";
import { paidOnly } from "./check-text.js";
import type { Effort } from "./options.js";

/** Everything that the words and the object about a plan are made from. */
export interface PlanSeen {
  readonly scenario: Scenario;
  readonly planned: Planned;
  readonly made: Made;
  readonly asked: { readonly effort: Effort; readonly seed: number };
  readonly files: readonly string[];
  readonly notes: readonly Finding[];
}

/** A plan as one object; money to hundredths, the bound rounded down. */
export function planAnswer({ scenario, planned, made, asked, files, notes }: PlanSeen): PlanAnswer {
  const { report } = planned;
  const charges = Object.entries(paidOnly(report)).map(([id, money]) => [id, hundredths(money)]);
  return {
    farm: scenario.farm,
    season: scenario.season,
    currency: scenario.prices.currency,
    ...asked,
    cost: hundredths(planned.cost),
    // Where it is proven that there is no plan at all, the least cost of one has no end.
    bound: Number.isFinite(planned.bound) ? Math.floor(Math.max(0, planned.bound) * 100) / 100 : 0,
    boundKind: planned.boundKind,
    handRuleCost: hundredths(planned.handRuleCost),
    savedOfPossible: savedOfPossible(planned),
    charges: Object.fromEntries(charges) as PlanAnswer["charges"],
    yardDays: report.measures.yardDays,
    yardDaysByWeather: planned.weatherYardDays,
    moves: report.measures.moves,
    hauls: report.measures.hauls,
    hayFedKg: hundredths(report.measures.hayFedKg),
    hayMadeKg: hundredths(report.measures.hayMadeKg),
    firmUntil: made.firmTo,
    likelyUntil: made.likelyTo,
    breaches: [...report.breaches],
    gives: (planned.refusal?.gives ?? []).map((place) => ({ ...place, breaches: [...place.breaches] })),
    provenDays: planned.refusal?.provenDays ?? 0,
    clashingHolds: [...(planned.refusal?.clash?.holds ?? [])],
    waysOut: (planned.refusal?.waysOut ?? []).map(wayAnswer),
    otherWays: (planned.refusal?.otherWays ?? []).map(wayAnswer),
    seconds: hundredths(planned.seconds),
    steps: planned.steps,
    capped: planned.capped,
    files: [...files],
    notes: [...planned.notes],
    fileNotes: [...notes],
  };
}

/** (hand rule - cost) / (hand rule - bound): share of what could be saved at all; null when there is nothing to save. */
export function savedOfPossible(planned: Pick<Planned, "cost" | "bound" | "handRuleCost">): number | null {
  const possible = planned.handRuleCost - Math.max(0, planned.bound);
  return possible > 1e-6 ? Math.round((1e4 * (planned.handRuleCost - planned.cost)) / possible) / 1e4 : null;
}

function wayAnswer({ words, cost, change }: WayOut): PlanAnswer["waysOut"][number] {
  return { words, cost: hundredths(cost), change };
}

function hundredths(figure: number): number {
  return Math.round(figure * 100) / 100;
}
