import type { Scenario } from "../../farm/scenario.js";
import { ruleOf } from "../../rules/index.js";
import type { RuleId } from "../../rules/rule.js";

/** How far a figure was turned: half, double, or as far as it may be written. */
export const TURNS = ["halved", "doubled", "least", "most"] as const;
export type Turn = (typeof TURNS)[number];

export interface Turned {
  readonly turn: Turn;
  readonly scenario: Scenario;
}

/** A figure that can be turned. */
export interface Figure {
  readonly key: string;
  readonly words: string;
  /** Rows of `scenario.assumed` that tell it. */
  readonly assumed: RegExp;
  readonly turned: (scenario: Scenario, times: number) => Turned | null;
}

/** Figures looked at, in the order of this list where they matter alike. */
export const FIGURES: readonly Figure[] = [
  { key: "growth", words: "growth of the grass", assumed: /^(growth|growth-scale|grows)\b/, turned: timed((farm, times) => ({ ...farm, cells: farm.cells.map((cell) => ({ ...cell, growthByMonth: cell.growthByMonth.map((kg) => kg * times) })) })) },
  { key: "residual-cover", words: "grass that must be left", assumed: /^residual-cover grazers$/, turned: ruled("residual-cover", ["grazers"]) },
  { key: "entry-cover", words: "grass that must stand to go in", assumed: /^entry-cover (grazers|first-pass)$/, turned: ruled("entry-cover", ["grazers", "first-pass"]) },
  { key: "rest-period", words: "usual rest", assumed: /^rest-period (flush|midsummer)$/, turned: ruled("rest-period", ["flush", "midsummer"]) },
  { key: "minutes", words: "minutes of people", assumed: /^people$/, turned: timed(withMinutes) },
  { key: "move-takes", words: "minutes a move takes", assumed: /^(move|set)-takes\b/, turned: timed(withMoves) },
  { key: "hay-price", words: "price of hay", assumed: /^price of hay$/, turned: priced("hayPerKg") },
  { key: "labour-price", words: "price of an hour's work", assumed: /^price of labour$/, turned: priced("labourPerHour") },
  { key: "mowing-price", words: "price of mowing", assumed: /^price of mowing$/, turned: priced("mowingPerHa") },
];

function timed(change: (scenario: Scenario, times: number) => Scenario): Figure["turned"] {
  return (scenario, times) => ({ turn: times < 1 ? "halved" : "doubled", scenario: change(scenario, times) });
}

/** Nothing to turn where nothing is paid. */
function priced(key: "hayPerKg" | "labourPerHour" | "mowingPerHa"): Figure["turned"] {
  const change = timed((farm, times) => ({ ...farm, prices: { ...farm.prices, [key]: farm.prices[key] * times } }));
  return (scenario, times) => (scenario.prices[key] > 0 ? change(scenario, times) : null);
}

function withMinutes(farm: Scenario, times: number): Scenario {
  const people = farm.people.map((person) => ({
    ...person,
    minutesByWeekday: person.minutesByWeekday.map((minutes) => minutes * times),
    minutesByDay: Object.fromEntries(Object.entries(person.minutesByDay).map(([day, minutes]) => [day, minutes * times])),
  }));
  return { ...farm, people };
}

function withMoves(farm: Scenario, times: number): Scenario {
  return { ...farm, groups: farm.groups.map((group) => ({ ...group, moveMinutes: group.moveMinutes * times, setMinutes: group.setMinutes * times })) };
}

/** Figures of a rule, of the farm, its fields and groups, no farther than they may be written. */
function ruled(rule: RuleId, keys: readonly string[]): Figure["turned"] {
  return (scenario, times) => {
    const known = Object.values(scenario.rules.farm[rule].figures).some((value) => value !== null);
    if (!known || scenario.rules.farm[rule].use === "off") return null;
    let [cut, changed] = [false, false];
    const turned = (figures: Readonly<Record<string, number | null>>): Readonly<Record<string, number | null>> =>
      Object.fromEntries(Object.entries(figures).map(([key, value]) => {
        if (value === null || !keys.includes(key)) return [key, value];
        const { least, most } = limitsOf(rule, key);
        const now = Math.min(Math.max(most, value), Math.max(Math.min(least, value), value * times));
        if (now !== value * times) cut = true;
        if (now !== value) changed = true;
        return [key, now];
      }));
    const farm = { ...scenario.rules.farm, [rule]: { ...scenario.rules.farm[rule], figures: turned(scenario.rules.farm[rule].figures) } };
    const own = (of: Scenario["rules"]["fields"]): Scenario["rules"]["fields"] =>
      Object.fromEntries(Object.entries(of).map(([name, rules]) => {
        const figures = rules[rule]?.figures;
        return [name, figures ? { ...rules, [rule]: { ...rules[rule], figures: turned(figures) } } : rules];
      }));
    const rules = { farm, fields: own(scenario.rules.fields), groups: own(scenario.rules.groups) };
    return changed ? { turn: cut ? (times < 1 ? "least" : "most") : times < 1 ? "halved" : "doubled", scenario: { ...scenario, rules } } : null;
  };
}

function limitsOf(rule: RuleId, key: string): { readonly least: number; readonly most: number } {
  const parameter = ruleOf(rule).parameters.find((one) => one.key === key);
  if (!parameter) throw new Error(`${rule} has no figure ${key}`);
  return parameter;
}
