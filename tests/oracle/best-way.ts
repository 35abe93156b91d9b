import type { Scenario } from "../../src/farm/scenario.js";
import { chargesOf } from "../../src/programme/plan-of.js";
import { RULE_IDS, type RuleId } from "../../src/rules/rule.js";
import { buildSeason } from "../../src/season/build-season.js";
import type { Season } from "../../src/season/season.js";
import { draftOf } from "../programme/drafts.js";
import { copyOf, everyWay, judged, underTheMower, type Way } from "./enumerate.js";

export interface Priced {
  readonly cost: number;
  readonly way: Way;
}

/** What full enumeration found of a season. */
export interface Enumerated {
  readonly season: Season;
  readonly ways: number;
  /** Ways that the check accepts; the planner's own narrower choice under the mower left out. */
  readonly kept: number;
  /** The cheapest of them, the cheapest without a cut of the planner's, and the dearest without. */
  readonly best: Priced | null;
  readonly unmown: Priced | null;
  readonly dearest: Priced | null;
  /** Where programme and check do not say the same, in words. */
  readonly differ: readonly string[];
  /** Rules that broke or charged some way. */
  readonly active: ReadonlySet<RuleId>;
}

/** Asks the check about every way to live a season, and the programme's draft about the same way. */
export function enumerateSeason(scenario: Scenario, mown: number | null): Enumerated {
  const season = buildSeason(scenario);
  const draft = draftOf(season);
  const [differ, active] = [[] as string[], new Set<RuleId>()];
  let [ways, kept] = [0, 0];
  let [best, unmown, dearest]: (Priced | null)[] = [null, null, null];
  everyWay(season, mown, (way) => {
    ways++;
    const { report, keeps } = judged(season, way);
    for (const breach of report.breaches) active.add(breach.rule);
    draft.load(way.place, way.cuts);
    const under = underTheMower(season, way);
    if ((draft.over === 0) !== (keeps && !under)) differ.push(`${textOf(way)}: the check says ${keeps ? "kept" : `broken, ${report.breaches[0].rule}`}, the programme ${draft.over} over`);
    if (!keeps || under) return;
    kept++;
    const own = chargesOf(draft);
    for (const rule of RULE_IDS) {
      if (report.chargesByRule[rule] > 0) active.add(rule);
      if (Math.abs(own[rule] - report.chargesByRule[rule]) > 1e-6) differ.push(`${textOf(way)}: ${rule} is ${report.chargesByRule[rule]} by the check, ${own[rule]} by the programme`);
    }
    if (Math.abs(draft.cost - report.cost) > 1e-6) differ.push(`${textOf(way)}: ${report.cost} by the check, ${draft.cost} by the programme`);
    const { cost } = report;
    const mowing = way.cuts.some((cuts) => cuts.length > 0);
    if (!best || cost < best.cost) best = { cost, way: copyOf(way) };
    if (!mowing && (!unmown || cost < unmown.cost)) unmown = { cost, way: copyOf(way) };
    if (!mowing && (!dearest || cost > dearest.cost)) dearest = { cost, way: copyOf(way) };
  });
  return { season, ways, kept, best, unmown, dearest, differ, active };
}

export function textOf({ place, cuts }: Way): string {
  return `${place.map((days) => days.join(" ")).join(" | ")}${cuts.some((own) => own.length) ? ` cuts ${JSON.stringify(cuts)}` : ""}`;
}
