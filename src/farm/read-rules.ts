import { dayNumber, isIsoDate } from "../quantity/calendar.js";
import { parameterUnit } from "../quantity/units.js";
import { RULES } from "../rules/index.js";
import type { Parameter, Rule, RuleId, Use } from "../rules/rule.js";
import { rowOf } from "../science/tables.js";
import { amountAt, say, take, type Desk } from "./desk.js";
import type { FigureSet, RuleFigures } from "./scenario.js";
import { child, entriesOf, textOf, type MapNode, type Tree } from "./tree.js";

type Partly = Partial<Record<RuleId, Partial<RuleFigures>>>;

/** Uses and figures of every rule, as the farm, its fields and its groups have them. */
export function readRules(desk: Desk, root: MapNode): FigureSet {
  const own = rulesIn(desk, child(root, "rules"), "the farm");
  const farm = Object.fromEntries(RULES.map((rule) => [rule.id, farmFigures(desk, rule, own[rule.id])])) as Record<RuleId, RuleFigures>;
  const inside = (key: string): Record<string, Partly> =>
    Object.fromEntries(entriesOf(child(root, key)).flatMap(({ key: name, value }) => (child(value, "rules") ? [[name, rulesIn(desk, child(value, "rules"), name)]] : [])));
  return { farm, fields: inside("fields"), groups: inside("groups") };
}

/** The farm's own figures over the usual ones; each usual one is listed with its source. */
function farmFigures(desk: Desk, rule: Rule, own: Partial<RuleFigures> | undefined): RuleFigures {
  const figures = rule.parameters.map((parameter) => {
    const written = own?.figures?.[parameter.key];
    if (written === undefined) takeFigure(desk, rule, parameter);
    return [parameter.key, written ?? parameter.usual] as const;
  });
  if (own?.use === undefined && rule.uses.length > 1) take(desk, `${rule.id} use`, "", rule.use, "judgement", "judgement");
  return { use: own?.use ?? rule.use, figures: Object.fromEntries(figures) };
}

function takeFigure(desk: Desk, rule: Rule, parameter: Parameter): void {
  const row = desk.tables.defaults.find((r) => r.key === parameter.source);
  const words = row ?? desk.tables.sources.find((r) => r.key === parameter.source);
  const value = parameter.usual === null ? "no limit" : `${parameter.usual} ${parameter.unit}`.trim();
  // A figure set beside a published one is our own reading of it.
  const status = row ? (row.value === parameter.usual || row.source === "judgement" ? row.status : "derived") : (words?.status ?? "judgement");
  take(desk, `${rule.id} ${parameter.key}`, "", value, words?.source ?? parameter.source, status);
}

function rulesIn(desk: Desk, node: Tree | undefined, owner: string): Partly {
  const read = entriesOf(node).flatMap(({ key, value }) => {
    const rule = RULES.find((r) => r.id === key);
    return rule ? [[rule.id, ruleIn(desk, rule, value, owner)] as const] : [];
  });
  return Object.fromEntries(read);
}

function ruleIn(desk: Desk, rule: Rule, node: Tree, owner: string): Partial<RuleFigures> {
  const label = owner === "the farm" ? rule.id : `${owner}: ${rule.id}`;
  const use = useIn(desk, rule, child(node, "use"), label);
  const figures = rule.parameters.flatMap((parameter) => {
    const written = child(node, parameter.key);
    return written && textOf(written) !== undefined ? [[parameter.key, figureAt(desk, written, `${label} ${parameter.key}`, parameter)] as const] : [];
  });
  return { ...(use ? { use } : {}), ...(figures.length > 0 ? { figures: Object.fromEntries(figures) } : {}) };
}

function useIn(desk: Desk, rule: Rule, node: Tree | undefined, label: string): Use | undefined {
  const text = textOf(node);
  const use = rule.uses.find((u) => u === text);
  // A word that is no use at all was said when the shape was checked.
  if (node === undefined || use !== undefined || !["hard", "charged", "off"].includes(text ?? "")) return use;
  const found = rule.use === "hard" ? `${label} is never broken, it cannot be ${text}` : `${label} cannot be ${text}`;
  say(desk, node, { code: "rule-stays-hard", found, allowed: `it is ${rule.uses.join(" or ")}`, next: rule.parameters.length > 0 ? "change one of its figures" : "take use out" });
  return undefined;
}

/** A rule's figure in the parameter's own unit. */
function figureAt(desk: Desk, node: Tree, label: string, parameter: Parameter): number {
  const text = textOf(node)!;
  if (parameter.unit === "day of year" && isIsoDate(text)) return dayNumber(text) - dayNumber(`${text.slice(0, 4)}-01-01`) + 1;
  if (parameter.meaning.startsWith("1:") && /^(yes|no)$/.test(text)) return text === "yes" ? 1 : 0;
  const { quantity, size } = parameterUnit(parameter.unit) ?? { quantity: "count" as const, size: 1 };
  const { least, most, unit } = parameter;
  const value = amountAt(desk, node, label, { quantity, least: least * size, most: most * size, reach: `${least} to ${most} ${unit}`.trim() });
  // 1700 kg/ha and 12.5 % must come out as written, not as 12.500000000000002.
  return Number((value / size).toPrecision(12));
}

/** A sward's published rest, taken for a field's rest-period where the owner says nothing of his own. */
export function swardRest(desk: Desk, figures: FigureSet, swards: Readonly<Record<string, string>>): FigureSet {
  const fields: Record<string, Partly> = { ...figures.fields };
  for (const [field, sward] of Object.entries(swards)) {
    if (!desk.tables.swards.some((row) => row.key === sward)) continue;
    const row = rowOf(desk.tables.swards, sward);
    const [least, most] = row.value.restDays;
    const own = fields[field]?.["rest-period"];
    take(desk, "rest-period by sward", field, `${least} to ${most} d`, row.source, row.status);
    const floor = Math.min(least, figures.farm["rest-period"].figures["floor"] ?? least);
    fields[field] = { ...fields[field], "rest-period": { ...own, figures: { floor, flush: least, midsummer: most, ...own?.figures } } };
  }
  return { ...figures, fields };
}
