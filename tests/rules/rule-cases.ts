import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/check-plan.js";
import type { Scenario } from "../../src/farm/scenario.js";
import type { Plan } from "../../src/plan/plan.js";
import { daysBetween } from "../../src/quantity/calendar.js";
import { ruleOf } from "../../src/rules/index.js";
import type { Breach, Charge, RuleId } from "../../src/rules/rule.js";
import { tinyFarm, type TinyFarm } from "../fixtures/tiny-farm.js";
import { planFromRows, type Rows } from "./grid.js";
import { askProgramme } from "./programme-agrees.js";

/** A breach as a case writes it: days counted from 1, as columns of the grid. */
interface ExpectedBreach {
  readonly group: string | null;
  readonly cell: string | null;
  readonly days: readonly [number, number];
  readonly found: string;
  readonly allowed: string;
}

interface ExpectedCharge {
  readonly group: string | null;
  readonly cell: string | null;
  readonly days: readonly [number, number];
  readonly money: number;
  readonly found: string;
}

export interface RuleCase {
  readonly name: string;
  readonly farm: TinyFarm;
  readonly rows: Rows;
  readonly cuts?: readonly string[];
  /** Stays that no row can hold, as typed by hand. */
  readonly typed?: Plan["stays"];
  readonly breaches?: readonly ExpectedBreach[];
  /** All charges of the rule. Left out: none for a rule that is charged by default, not asked for others. */
  readonly charges?: readonly ExpectedCharge[];
}

/**
 * Tests one rule on small plans typed as grids. `keeps` have no breach; `breaks` have exactly what they say. Of every
 * limit the last day that breaks it and the first that keeps it should be there.
 */
export function ruleCases(rule: RuleId, { keeps, breaks }: { keeps: readonly RuleCase[]; breaks: readonly RuleCase[] }): void {
  if (keeps.length === 0 || breaks.length === 0) throw new Error(`${rule} needs cases that keep it and cases that break it`);
  for (const c of keeps) if (c.breaches?.length) throw new Error(`${c.name}: a case that keeps the rule has no breach`);
  for (const c of breaks) if (!c.breaches?.length && !c.charges?.length) throw new Error(`${c.name}: says nothing of what breaks`);
  describe(rule, () => {
    describe("keeps", () => keeps.forEach((c) => it(c.name, () => holdCase(rule, c))));
    describe("breaks", () => breaks.forEach((c) => it(c.name, () => holdCase(rule, c))));
  });
}

function holdCase(rule: RuleId, c: RuleCase): void {
  const scenario = frozen(tinyFarm(c.farm));
  const rows = planFromRows(scenario, c.rows, c.cuts);
  const plan = frozen<Plan>({ ...rows, stays: [...rows.stays, ...(c.typed ?? [])] });
  const before = JSON.stringify([scenario, plan]);
  const report = checkPlan(scenario, plan);
  expect(report.breaches.filter((b) => b.rule === rule).map((b) => breachWords(scenario, b))).toEqual(c.breaches ?? []);
  const charges = c.charges ?? (ruleOf(rule).use === "charged" ? [] : null);
  if (charges) sameCharges(report.charges.filter((x) => x.rule === rule).map((x) => chargeWords(scenario, x)), charges);
  expect(JSON.stringify([scenario, plan])).toBe(before);
  askProgramme(scenario, plan, rule);
}

function sameCharges(found: readonly ExpectedCharge[], expected: readonly ExpectedCharge[]): void {
  expect(found).toEqual(expected.map((charge) => ({ ...charge, money: expect.closeTo(charge.money, 9) })));
}

function daysOf(scenario: Scenario, { firstDay, lastDay }: Breach | Charge): [number, number] {
  return [daysBetween(scenario.season.firstDay, firstDay) + 1, daysBetween(scenario.season.firstDay, lastDay) + 1];
}

function breachWords(scenario: Scenario, breach: Breach): ExpectedBreach {
  const { group, cell, found, allowed } = breach;
  return { group, cell, days: daysOf(scenario, breach), found, allowed };
}

function chargeWords(scenario: Scenario, charge: Charge): ExpectedCharge {
  const { group, cell, money, found } = charge;
  return { group, cell, days: daysOf(scenario, charge), money, found };
}

/** The same value, with every object and list in it shut against writing. */
export function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
