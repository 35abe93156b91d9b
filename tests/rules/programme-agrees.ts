import { afterAll, expect } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import type { Scenario } from "../../src/farm/scenario.js";
import type { Plan } from "../../src/plan/plan.js";
import { chargesOf } from "../../src/programme/plan-of.js";
import { NO_HALF } from "../../src/programme/rules/index.js";
import type { RuleId } from "../../src/rules/rule.js";
import { buildSeason } from "../../src/season/build-season.js";
import { draftOf, onlyHalf } from "../programme/drafts.js";
import { placesOfPlan } from "../programme/places-of-plan.js";

/** Cases by rule that the programme was asked about, and that it could not be asked about. */
const asked = new Map<RuleId, { held: number; skipped: string[] }>();

/**
 * Lays a case's plan into a draft that knows only the rule's half: it finds the rule broken just when the check does,
 * and charges what the check charges. Plans that no draft can hold are counted by the reason.
 */
export function askProgramme(scenario: Scenario, plan: Plan, rule: RuleId): void {
  if (NO_HALF[rule]) return;
  const season = buildSeason(scenario);
  const places = placesOfPlan(season, plan);
  const count = asked.get(rule) ?? { held: 0, skipped: [] };
  asked.set(rule, count);
  if (typeof places === "string") {
    count.skipped.push(places);
    return;
  }
  count.held++;
  const draft = draftOf(season, onlyHalf(rule));
  draft.load(places.place, places.cuts);
  const report = checkPlan(scenario, plan);
  expect({ kept: draft.over === 0 }).toEqual({ kept: !report.breaches.some((breach) => breach.rule === rule) });
  expect(chargesOf(draft)[rule]).toBeCloseTo(report.chargesByRule[rule], 6);
}

afterAll(() => {
  if (process.env["INBYE_COUNTS"]) process.stdout.write(`${JSON.stringify([...asked])}\n`);
  for (const [rule, { held, skipped }] of asked) {
    expect({ rule, held: held > skipped.length, skipped }).toMatchObject({ held: true });
  }
});
