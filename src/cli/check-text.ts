import type { Report } from "../check/report.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import { spanWords } from "../sheets/day-words.js";
import { wrapped } from "../sheets/text-wrap.js";
import type { CheckAnswer } from "./answers.js";
import { breachText, costRows } from "./cost-text.js";
import { findingsText } from "./findings-text.js";
import { widthOf, type Screen } from "./screen.js";
import { aboutPrice, countWords } from "./words.js";

/** What a check found, for people. */
export function checkText(scenario: Scenario, report: Report, notes: readonly Finding[], screen: Screen): string {
  const { currency } = scenario.prices;
  const columns = widthOf(screen);
  const broken = report.breaches.length;
  const verdict = broken === 0
    ? "The plan keeps every rule that is never broken."
    : `The plan breaks a rule in ${countWords(broken, "place")}.`;
  return [
    screen.heading(`${scenario.farm}, ${spanWords(scenario.season.firstDay, scenario.season.lastDay)} ${scenario.season.lastDay.slice(0, 4)}`),
    verdict,
    ...(broken === 0 ? [] : ["", breachText(report.breaches, columns)]),
    "",
    screen.heading(`It costs ${aboutPrice(report.cost, currency)}`),
    ...costRows(report.chargesByRule, currency),
    "",
    ...yardRows(report).map((row) => wrapped(row, columns)),
    ...(notes.length === 0 ? [] : ["", screen.heading("Notes"), findingsText(notes, columns).trimEnd()]),
    "",
  ].join("\n");
}

function yardRows(report: Report): readonly string[] {
  const standing = Object.entries(report.measures.yardDays).filter(([, days]) => days > 0);
  if (standing.length === 0) return ["No days in a yard."];
  return [`Days in a yard: ${standing.map(([group, days]) => `${group} ${days}`).join(", ")}.`];
}

/** The same as one object. */
export function checkAnswer(scenario: Scenario, report: Report, notes: readonly Finding[]): CheckAnswer {
  return {
    farm: scenario.farm,
    season: scenario.season,
    currency: scenario.prices.currency,
    cost: report.cost,
    charges: paidOnly(report),
    chargeList: [...report.charges],
    yardDays: report.measures.yardDays,
    breaches: [...report.breaches],
    notes: [...notes],
  };
}

/** Rules that cost something. */
export function paidOnly(report: Report): CheckAnswer["charges"] {
  return Object.fromEntries(Object.entries(report.chargesByRule).filter(([, money]) => money > 0));
}
