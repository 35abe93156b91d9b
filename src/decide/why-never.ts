import { checkPlan } from "../check/check-plan.js";
import { figureOf, isGrazer, type Scenario } from "../farm/scenario.js";
import { daysBetween, monthOf, spanHolds } from "../quantity/calendar.js";
import type { Breach, RuleId } from "../rules/rule.js";
import { hostOf, type Question } from "./why-forced.js";

/**
 * Rules that a stay which breaks them alone on the farm breaks in every plan: dates and doors do not turn on other stays, and with
 * other stays there is no more grass, rest, clean or open ground in the cell than with none. Left out are those that other stays can
 * mend: minutes and kit (a group that came the day before needs no move), long grass (somebody eats it), followers.
 */
const LASTING: readonly RuleId[] = [
  "closed-dates", "housing-order", "holds", "yard-room", "water", "shade", "entry-cover", "residual-cover", "demand-met", "rest-period",
  "clean-ground", "poultry-rest", "pig-rest", "pen-steps", "density-ceiling", "rate-ceiling", "nitrogen-ceiling",
];

/**
 * What no plan can mend about a group in a place on a day: the check's breaches where the group stands there on that day alone and
 * nothing else is planned at all. Empty where some plan might have it there.
 */
export function neverThere(scenario: Scenario, question: Question): readonly Breach[] {
  const { group, place, day } = question;
  const along = scenario.groups.filter(({ name, here }) => here.some((span) => spanHolds(span, day)) && hostOf(scenario, name, day) === group);
  const alone = along.map(({ name }) => ({ group: name, ...place, firstDay: day, lastDay: day }));
  const before = new Set(checkPlan(scenario, { stays: [], cuts: [] }).breaches.map(keyOf));
  const told = checkPlan(scenario, { stays: alone, cuts: [] }).breaches.filter((breach) => LASTING.includes(breach.rule) && !before.has(keyOf(breach)));
  return told.filter((breach) => isOf(breach, question) && fromAnyFirstDay(scenario, question, breach.rule));
}

/** Of the day asked about, or of what it does to the cell later: no hay is made where birds were. */
function isOf(breach: Breach, { place, day }: Question): boolean {
  return spanHolds(breach, day) || (breach.group === null && breach.cell !== null && breach.cell === place.cell);
}

function keyOf({ rule, group, cell, firstDay, lastDay, found }: Breach): string {
  return JSON.stringify([rule, group, cell, firstDay, lastDay, found]);
}

/** Whether a stay that began before the day breaks a rule as well that is judged by a stay's first day: young pigs are asked which year they came. */
function fromAnyFirstDay(scenario: Scenario, question: Question, rule: RuleId): boolean {
  if (rule === "clean-ground") return scenario.season.firstDay.slice(0, 4) === question.day.slice(0, 4);
  return rule !== "entry-cover" || lastingCover(scenario, question);
}

/**
 * Whether too little grass on the day is too little for any stay that holds it. Ground never grazed has the most; but a stay that
 * began while spring's lower figure held may go on after that.
 */
function lastingCover(scenario: Scenario, { group: name, place, day }: Question): boolean {
  const group = scenario.groups.find((one) => one.name === name)!;
  const cell = scenario.cells.find((one) => one.name === place.cell)!;
  if (!isGrazer(group.kind)) return true;
  const figure = (rule: RuleId, key: string): number => figureOf(scenario, rule, key, cell.field, name) ?? Infinity;
  const since = daysBetween(scenario.season.firstDay, day) - figure("entry-cover", "first-pass-days");
  if (figure("entry-cover", "first-pass") >= figure("entry-cover", "grazers") || since < 0) return true;
  return cell.growthByMonth[monthOf(day)]! > figure("stay-limit", "nil-growth") && since >= figure("stay-limit", "limit");
}
