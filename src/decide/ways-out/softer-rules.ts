import { type Scenario } from "../../farm/scenario.js";
import { ruleOf } from "../../rules/index.js";
import type { Breach, RuleId } from "../../rules/rule.js";
import { changeText, type Sort } from "./way.js";

/** Figures whose change could let a broken rule stand: which, and by what step. */
const SOFTER: Partial<Record<RuleId, readonly { readonly key: string; readonly step: number }[]>> = {
  "residual-cover": [{ key: "grazers", step: -50 }],
  "entry-cover": [{ key: "grazers", step: -50 }, { key: "first-pass", step: -50 }],
  "rest-period": [{ key: "floor", step: -1 }],
  "stay-limit": [{ key: "limit", step: 1 }],
  "upper-cover": [{ key: "birds-barrier", step: 100 }],
  "poultry-rest": [{ key: "layers", step: -30 }, { key: "broilers", step: -30 }],
  "pig-rest": [{ key: "rest", step: -15 }],
  "worked-ground": [{ key: "birds", step: -2 }, { key: "least-open", step: -5 }],
  "after-pigs": [{ key: "back", step: -5 }],
};

/** How often the step is taken at most. */
const MOST_STEPS = 10;

/** Each figure that speaks in a broken rule, moved step by step as far as the rule allows. */
export function softerRules(scenario: Scenario, breaches: readonly Breach[]): readonly Sort[] {
  const broken = [...new Set(breaches.map((breach) => breach.rule))];
  return broken.flatMap((rule) => (SOFTER[rule] ?? []).map(({ key, step }) => softer(scenario, rule, key, step)));
}

function softer(scenario: Scenario, rule: RuleId, key: string, step: number): Sort {
  const parameter = ruleOf(rule).parameters.find((p) => p.key === key);
  const now = scenario.rules.farm[rule].figures[key];
  if (!parameter || now === null || now === undefined) return [];
  const values = Array.from({ length: MOST_STEPS }, (_, n) => Math.min(parameter.most, Math.max(parameter.least, now + (n + 1) * step)));
  return [...new Set(values)].filter((value) => value !== now).map((value) => {
    const words = `${parameter.meaning}: ${value} ${parameter.unit} instead of ${now}`;
    const changed = withFigure(scenario, rule, key, value);
    return { words, scenario: changed.scenario, change: changed.farmOnly ? changeText(words, [`rules: { ${rule}: { ${key}: ${value} ${parameter.unit} } }`]) : null };
  });
}

/** The figure changed for the farm, and for every field and group that has its own. */
function withFigure(scenario: Scenario, rule: RuleId, key: string, value: number): { scenario: Scenario; farmOnly: boolean } {
  let farmOnly = true;
  const inPart = <T extends Scenario["rules"]["fields"]>(parts: T): T => Object.fromEntries(Object.entries(parts).map(([name, own]) => {
    const figures = own[rule]?.figures;
    if (figures?.[key] === undefined) return [name, own];
    farmOnly = false;
    return [name, { ...own, [rule]: { ...own[rule], figures: { ...figures, [key]: value } } }];
  })) as T;
  const own = scenario.rules.farm[rule];
  const farm = { ...scenario.rules.farm, [rule]: { ...own, figures: { ...own.figures, [key]: value } } };
  const rules = { farm, fields: inPart(scenario.rules.fields), groups: inPart(scenario.rules.groups) };
  return { scenario: { ...scenario, rules }, farmOnly };
}
