import { z } from "zod";
import type { Weighed } from "../decide/why-weigh.js";
import { shortBy } from "../decide/why-short.js";
import type { WhyCell, WhyGroup } from "../decide/why.js";
import type { Finding } from "../farm/finding.js";
import type { Scenario } from "../farm/scenario.js";
import type { Stay } from "../plan/plan.js";
import { RULE_IDS, type Breach } from "../rules/rule.js";

const day = z.iso.date();
const money = z.number();
const rule = z.enum(RULE_IDS);
const name = z.string();
const span = { firstDay: day, lastDay: day };
const place = { cell: name.nullable(), yard: name.nullable() };

const broken = z.strictObject({
  rule, group: name.nullable(), cell: name.nullable(), ...span, found: z.string(), allowed: z.string(),
  short: z.string().nullable().meta({ description: "by how much, with its unit, where the two can be compared" }),
});

const weighed = z.strictObject({
  group: name, ...place,
  kind: z.enum(["never", "allowed", "none-found"]).meta({ description: "never: the check refuses it even alone on the farm; none-found: planned again with the stay held, no valid plan was found" }),
  never: z.array(broken),
  asItStands: z.array(broken).meta({ description: "what breaks when the stay is forced into the plan and nobody else is moved" }),
  cost: money.nullable().meta({ description: "of the cheapest season found with the stay" }),
  more: money.nullable().meta({ description: "cost less cheapestCost" }),
  replanned: z.boolean().meta({ description: "true: planned again by a proper search; false: a look, so that it costs at most so much more" }),
});

const beside = {
  farm: name, day, currency: name,
  planCost: money,
  cheapestCost: money.meta({ description: "of the cheapest season found, the plan itself polished among them; every 'more' is reckoned from it" }),
  hereMore: money.nullable().meta({ description: "what the stay that the plan has that day costs more than the cheapest season found" }),
  without: z.strictObject({ cost: money, more: money }).nullable().meta({ description: "the cheapest season found that leaves the cell of that stay empty that day: what the day is worth" }),
  stopped: z.boolean(),
  notes: z.array(z.strictObject({ file: name, line: z.number().int(), column: z.number().int(), code: name, found: z.string(), allowed: z.string(), next: z.string() })),
};

const stay = z.strictObject({ group: name, ...span });

/** Shape of `why --group`. */
export const whyGroupShape = z.strictObject({
  ...beside,
  group: name, runsWith: name.nullable(),
  here: z.strictObject({
    ...place, ...span, held: name.nullable(),
    facts: z.array(z.strictObject({ rule, what: z.string(), found: z.string(), allowed: z.string() })),
    charges: z.array(z.strictObject({ rule, ...span, money, found: z.string() })),
  }),
  places: z.array(weighed),
});

/** Shape of `why --cell`. */
export const whyCellShape = z.strictObject({
  ...beside,
  cell: name, stay: stay.nullable(), coverKgPerHa: z.number(), openShare: z.number(),
  shut: z.strictObject({ reason: z.string(), ...span, opensOn: day.nullable() }).nullable(),
  grazed: z.strictObject({ by: name, lastDay: day, restDays: z.number().int() }).nullable(),
  next: stay.nullable(),
  free: z.array(z.strictObject({ group: name, day: day.nullable() })).meta({ description: "first day on which each group could stand there with nobody else moved" }),
  groups: z.array(weighed),
});

const hundredths = (figure: number): number => Math.round(figure * 100) / 100;

export function whyGroupAnswer(scenario: Scenario, why: WhyGroup, notes: readonly Finding[]): z.infer<typeof whyGroupShape> {
  const { cell, yard, firstDay, lastDay, held, facts, charges } = why.here;
  return {
    ...besideAnswer(scenario, why, notes), group: why.group, runsWith: why.runsWith,
    here: {
      cell, yard, firstDay, lastDay, held, facts: [...facts],
      charges: charges.map((charge) => ({ rule: charge.rule, firstDay: charge.firstDay, lastDay: charge.lastDay, money: hundredths(charge.money), found: charge.found })),
    },
    places: why.places.map(weighedAnswer),
  };
}

export function whyCellAnswer(scenario: Scenario, why: WhyCell, notes: readonly Finding[]): z.infer<typeof whyCellShape> {
  const { cell, stay: now, coverKgPerHa, openShare, shut, grazed, next, free } = why.cell;
  return {
    ...besideAnswer(scenario, why, notes), cell, stay: stayAnswer(now), coverKgPerHa: hundredths(coverKgPerHa), openShare: hundredths(openShare),
    shut, grazed, next: stayAnswer(next), free: [...free], groups: why.places.map(weighedAnswer),
  };
}

function stayAnswer(of: Stay | null): z.infer<typeof stay> | null {
  return of && { group: of.group, firstDay: of.firstDay, lastDay: of.lastDay };
}

function besideAnswer({ farm, prices }: Scenario, why: WhyGroup | WhyCell, notes: readonly Finding[]) {
  const { day: on, planCost, cheapestCost, hereMore, without, stopped } = why;
  return {
    farm, day: on, currency: prices.currency, planCost: hundredths(planCost), cheapestCost: hundredths(cheapestCost), stopped,
    hereMore: hereMore === null ? null : hundredths(hereMore),
    without: without && { cost: hundredths(without.found.cost), more: hundredths(without.more) },
    notes: [...notes],
  };
}

function weighedAnswer({ question, kind, never, asItStands, found, more, replanned }: Weighed): z.infer<typeof weighed> {
  return {
    group: question.group, cell: question.place.cell, yard: question.place.yard, kind, replanned, never: never.map(brokenAnswer), asItStands: asItStands.map(brokenAnswer),
    cost: found && hundredths(found.cost), more: more === null ? null : hundredths(more),
  };
}

function brokenAnswer(breach: Breach): z.infer<typeof broken> {
  const { rule: id, group, cell, firstDay, lastDay, found, allowed } = breach;
  return { rule: id, group, cell, firstDay, lastDay, found, allowed, short: shortBy(breach) };
}
