import { ruleOf } from "../rules/index.js";
import { RULE_IDS, type Breach, type RuleId } from "../rules/rule.js";
import { spanWords } from "../sheets/day-words.js";
import { priceWords } from "../sheets/figure-words.js";
import { english } from "./english.js";
import { ruleWords } from "../sheets/rule-words.js";
import { wrapped } from "../sheets/text-wrap.js";

/** Rules that cost something, dearest first; equal ones in the order they are written for people. */
export function dearestFirst(chargesByRule: Readonly<Record<RuleId, number>>): readonly (readonly [RuleId, number])[] {
  const paid = RULE_IDS.map((id) => [id, chargesByRule[id] ?? 0] as const).filter(([, money]) => money > 0);
  return [...paid].sort((a, b) => b[1] - a[1]);
}

/** What a plan costs by rule, one row each: the money right-aligned before the words. */
export function costRows(chargesByRule: Readonly<Record<RuleId, number>>, currency: string): readonly string[] {
  const rows = dearestFirst(chargesByRule).map(([id, money]) => [priceWords(money, currency), ruleWords(id, english())] as const);
  const width = Math.max(0, ...rows.map(([money]) => money.length));
  return rows.map(([money, words]) => `  ${money.padStart(width)}  ${words}`);
}

/** Every place where a plan breaks a rule, under the rule's sentence and the id to look it up by. */
export function breachText(breaches: readonly Breach[], columns: number): string {
  const broken = RULE_IDS.filter((id) => breaches.some((breach) => breach.rule === id));
  return broken.map((id) => {
    const rows = breaches.filter((breach) => breach.rule === id).map((breach) => wrapped(breachRow(breach), columns, 4));
    return [wrapped(`${ruleOf(id).sentence} [${id}]`, columns, 0), ...rows].join("\n");
  }).join("\n\n");
}

function breachRow(breach: Breach): string {
  const where = [breach.group, breach.cell].filter((name) => name !== null).join(" in ");
  const days = spanWords(breach.firstDay, breach.lastDay);
  return `  ${where === "" ? "" : `${where}, `}${days}: found ${breach.found}; allowed ${breach.allowed}`;
}
