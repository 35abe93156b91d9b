import type { Report } from "../check/report.js";
import { isGrazer, type Cell, type Group, type Scenario } from "../farm/scenario.js";
import { ruleOf } from "../rules/index.js";
import type { Breach, RuleId } from "../rules/rule.js";

/** A farm changed in one thing, and the change in words. */
export interface WayOut {
  readonly words: string;
  readonly scenario: Scenario;
}

/** Single changes that might make a plan possible, small ones of a sort first; each is to be planned before it is told. */
export function waysOut(scenario: Scenario, report: Report): readonly (readonly WayOut[])[] {
  return [openYards(scenario), moreCells(scenario), fewerHead(scenario), ...softerRules(scenario, report.breaches)].filter((ways) => ways.length > 0);
}

/** Yards that hold everybody, all season. */
function openYards(scenario: Scenario): WayOut[] {
  const { season } = scenario;
  const closed = scenario.yards.some((yard) => yard.room !== null || !yard.open.some((span) => span.firstDay <= season.firstDay && span.lastDay >= season.lastDay));
  if (!closed) return [];
  return [{ words: "the yard open to all, all season", scenario: { ...scenario, yards: scenario.yards.map((yard) => ({ ...yard, room: null, open: [season] })) } }];
}

/** One, two or three more cells like the middling one. */
function moreCells(scenario: Scenario): WayOut[] {
  const like = [...scenario.cells].sort((a, b) => a.areaHa - b.areaHa)[Math.floor(scenario.cells.length / 2)];
  return [1, 2, 3].map((count) => ({ words: `${count === 1 ? "one more cell" : `${count} more cells`} of ${like.areaHa.toFixed(2)} ha in ${like.field}`, scenario: withCells(scenario, like, count) }));
}

function withCells(scenario: Scenario, like: Cell, count: number): Scenario {
  const fresh = Array.from({ length: count }, (_, i) => ({ ...like, name: `more ${i + 1}`, closed: [], past: [], pastNitrogen: [] }));
  const names = fresh.map((cell) => cell.name);
  return {
    ...scenario,
    cells: [...scenario.cells, ...fresh],
    fields: scenario.fields.map((field) => (field.name === like.field ? { ...field, cells: [...field.cells, ...names] } : field)),
    groups: scenario.groups.map((group) => (group.mayEnter.includes(like.name) ? { ...group, mayEnter: [...group.mayEnter, ...names] } : group)),
  };
}

/** Ever fewer head of the group that eats most. */
function fewerHead(scenario: Scenario): WayOut[] {
  const grazers = scenario.groups.filter((group) => isGrazer(group.kind) && group.head > 1);
  const [most] = [...grazers].sort((a, b) => b.head * b.weightKg - a.head * a.weightKg);
  if (!most) return [];
  const counts = [...new Set([1, 2, Math.ceil(most.head / 4), Math.ceil(most.head / 2)])].filter((n) => n < most.head).sort((a, b) => a - b);
  return counts.map((fewer) => ({
    words: `${fewer} fewer head of ${most.name}`,
    scenario: { ...scenario, groups: scenario.groups.map((g) => (g === most ? withHead(g, g.head - fewer) : g)) },
  }));
}

/** A group of so many head, with no more young than that. */
function withHead(group: Group, head: number): Group {
  return { ...group, head, young: group.young && { ...group.young, head: Math.min(group.young.head, head) } };
}

/** Figures whose change could let a broken rule stand: which, and by what step. */
const SOFTER: Partial<Record<RuleId, readonly { readonly key: string; readonly step: number }[]>> = {
  "residual-cover": [{ key: "grazers", step: -100 }],
  "entry-cover": [{ key: "grazers", step: -100 }, { key: "first-pass", step: -100 }],
  "rest-period": [{ key: "floor", step: -3 }],
  "stay-limit": [{ key: "limit", step: 2 }],
  "upper-cover": [{ key: "birds-barrier", step: 200 }],
  "poultry-rest": [{ key: "layers", step: -60 }, { key: "broilers", step: -90 }],
  "pig-rest": [{ key: "rest", step: -30 }],
  "worked-ground": [{ key: "least-open", step: -10 }],
};

function softerRules(scenario: Scenario, breaches: readonly Breach[]): WayOut[][] {
  const broken = [...new Set(breaches.map((breach) => breach.rule))];
  return broken.flatMap((rule) => (SOFTER[rule] ?? []).map(({ key, step }) => softer(scenario, rule, key, step)));
}

/** One figure moved by one, two, three and five steps, inside what the rule allows. */
function softer(scenario: Scenario, rule: RuleId, key: string, step: number): WayOut[] {
  const parameter = ruleOf(rule).parameters.find((p) => p.key === key);
  const now = scenario.rules.farm[rule].figures[key];
  if (!parameter || now === null || now === undefined) return [];
  const values = [1, 2, 3, 5].map((n) => Math.min(parameter.most, Math.max(parameter.least, now + n * step)));
  return [...new Set(values)].filter((value) => value !== now).map((value) => ({
    words: `${parameter.meaning}: ${value} ${parameter.unit} instead of ${now}`,
    scenario: withFigure(scenario, rule, key, value),
  }));
}

function withFigure(scenario: Scenario, rule: RuleId, key: string, value: number): Scenario {
  const own = scenario.rules.farm[rule];
  const farm = { ...scenario.rules.farm, [rule]: { ...own, figures: { ...own.figures, [key]: value } } };
  return { ...scenario, rules: { ...scenario.rules, farm } };
}
