import { z } from "zod";
import type { Compared, Comparison } from "../decide/compare-plans.js";
import { FIGURES, type SeasonFigures } from "../decide/season-figures.js";
import type { Trial } from "../decide/try-changes.js";
import { RULE_IDS } from "../rules/rule.js";
import { breach, day, finding, gives, money, ruleId, season, wayOut } from "./answer-parts.js";
import { paidOnly } from "./check-text.js";
import { pricesOf } from "./try-prices.js";
import { searchSpread, type TrySeen } from "./try-seen.js";

const compared = z.strictObject({ base: z.number(), change: z.number(), difference: z.number() }).meta({ description: "base + difference = change" });
const both = <T extends z.ZodType>(shape: T) => z.strictObject({ base: shape, change: shape });
const price = z.strictObject({ what: z.string(), price: z.string(), assumed: z.boolean() });
const crowded = z.strictObject({ day, minutes: z.number(), atHome: z.number() }).nullable();
const kitDays = z.strictObject({ nets: day.nullable(), reels: day.nullable(), energisers: day.nullable() });

const trial = z.strictObject({
  title: z.string(),
  planFound: z.boolean(),
  cost: money.nullable().meta({ description: "null where no plan was found" }),
  bound: money.meta({ description: "no plan can cost less than this; 0 where it was not worked out" }),
  handRuleCost: money,
  charges: z.partialRecord(ruleId, money),
  breaches: z.array(breach).meta({ description: "empty unless no plan was found; then what the nearest one breaks" }),
  gives: z.array(gives),
  clashingHolds: z.array(z.string()),
  waysOut: z.array(wayOut),
  otherWays: z.array(wayOut),
  notes: z.array(z.string()),
});

const comparison = z.strictObject({
  figures: z.record(z.enum(FIGURES), compared).meta({ description: "each to hundredths; kg, ha, minutes, money, counts and shares as the key says" }),
  charges: z.partialRecord(ruleId, compared).meta({ description: "money by rule that costs something in either" }),
  nitrogenByCell: z.record(z.string(), both(z.number().nullable())).meta({ description: "kg N/ha dropped in the season; null where the cell is not there" }),
  movesWorstWeek: both(day),
  minutesWorstWeek: both(day),
  nitrogenHighestCell: both(z.string().nullable()),
  cellsOverNitrogen: both(z.array(z.string())),
  crowdedDay: both(crowded),
  kitDays: both(kitDays),
  groups: z.array(z.strictObject({
    group: z.string(),
    on: z.enum(["both", "base", "change"]).meta({ description: "which of the two farms has it" }),
    days: z.number().int().min(0).meta({ description: "days on which it stands elsewhere or is not there" }),
    of: z.number().int().min(0),
    byWeek: z.array(z.number().int().min(0).max(7).nullable()).meta({ description: "those days by week from firstDay; null where it is in neither plan" }),
  })),
  firstDay: day,
  newlyBroken: z.array(ruleId),
  newlyKept: z.array(ruleId),
  newlyPaid: z.array(ruleId),
  noLongerPaid: z.array(ruleId),
});

/** What `try --json` prints. */
export const tryAnswerShape = z.strictObject({
  farm: z.string(),
  season,
  currency: z.string(),
  effort: z.enum(["quick", "usual", "long"]),
  seed: z.number().int(),
  laidFirst: z.array(z.string()).meta({ description: "titles of the changes that make the farm as it is" }),
  base: trial,
  changes: z.array(z.strictObject({
    trial,
    comparison: comparison.nullable().meta({ description: "null where one of the two has no plan" }),
    prices: z.array(price).meta({ description: "those that differ" }),
  })),
  given: z.strictObject({ cost: money, breaches: z.number().int().min(0), daysOtherwise: z.number().int().min(0) }).nullable()
    .meta({ description: "the plan started from, judged on the farm as it is; days of groups on which the base stands otherwise" }),
  searchSpread: money.nullable().meta({ description: "how far two searches of one farm ended apart, at most; null where there is one search each" }),
  prices: z.array(price),
  seconds: z.number().min(0),
  capped: z.boolean().meta({ description: "true when not every farm was searched to the end: differences may be luck" }),
  files: z.array(z.string()),
  fileNotes: z.array(finding),
});

export type TryAnswer = z.infer<typeof tryAnswerShape>;

/** Trials and their comparisons as one object; figures to hundredths, differences of those, so that they close as printed. */
export function tryAnswer(seen: TrySeen): TryAnswer {
  const { scenario, asked, base, changes, given, notes, files } = seen;
  const trials = [base, ...changes.map(({ trial: one }) => one)];
  return {
    farm: scenario.farm, season: scenario.season, currency: scenario.prices.currency, ...asked,
    laidFirst: [...seen.laidFirst],
    base: trialAnswer(base),
    changes: changes.map(({ trial: one, comparison: found }) => (
      { trial: trialAnswer(one), comparison: found && comparisonAnswer(found), prices: pricesOf(one.scenario, scenario) }
    )),
    given: given && { ...given, cost: hundredths(given.cost) },
    searchSpread: nullOr(searchSpread(trials)),
    prices: pricesOf(scenario, null),
    seconds: hundredths(seen.seconds),
    capped: trials.some(({ planned }) => planned.capped),
    files: [...files],
    fileNotes: [...notes],
  };
}

function trialAnswer({ title, planned }: Trial): TryAnswer["base"] {
  const { kind, report, refusal, cost, bound, handRuleCost } = planned;
  const ways = (list: readonly TryAnswer["base"]["waysOut"][number][]) => list.map((way) => ({ words: way.words, cost: hundredths(way.cost), change: way.change }));
  return {
    title,
    planFound: kind === "plan",
    cost: kind === "plan" ? hundredths(cost) : null,
    bound: Number.isFinite(bound) ? Math.floor(Math.max(0, bound) * 100) / 100 : 0,
    handRuleCost: hundredths(handRuleCost),
    charges: Object.fromEntries(Object.entries(paidOnly(report)).map(([id, paid]) => [id, hundredths(paid)])),
    breaches: [...report.breaches],
    gives: (refusal?.gives ?? []).map((place) => ({ ...place, breaches: [...place.breaches] })),
    clashingHolds: [...(refusal?.clash?.holds ?? [])],
    waysOut: ways(refusal?.waysOut ?? []),
    otherWays: ways(refusal?.otherWays ?? []),
    notes: [...planned.notes],
  };
}

function comparisonAnswer(found: Comparison): NonNullable<TryAnswer["changes"][number]["comparison"]> {
  const { base, change } = found;
  const of = <T>(pick: (season: SeasonFigures) => T) => ({ base: pick(base), change: pick(change) });
  const paid = RULE_IDS.filter((id) => found.charges[id].base > 0 || found.charges[id].change > 0);
  return {
    figures: Object.fromEntries(FIGURES.map((key) => [key, closing(found.figures[key])])) as Record<(typeof FIGURES)[number], Compared>,
    charges: Object.fromEntries(paid.map((id) => [id, closing(found.charges[id])])),
    nitrogenByCell: Object.fromEntries(Object.entries(found.nitrogenByCell).map(([cell, kg]) => [cell, { base: nullOr(kg.base), change: nullOr(kg.change) }])),
    movesWorstWeek: of((one) => one.movesWorstWeek),
    minutesWorstWeek: of((one) => one.minutesWorstWeek),
    nitrogenHighestCell: of((one) => one.nitrogenHighestCell),
    cellsOverNitrogen: of((one) => [...one.cellsOverNitrogen]),
    crowdedDay: of((one) => one.crowdedDay && { ...one.crowdedDay, minutes: hundredths(one.crowdedDay.minutes) }),
    kitDays: of((one) => ({ ...one.kitDays })),
    groups: found.groups.map((group) => ({ ...group, byWeek: [...group.byWeek] })),
    firstDay: found.firstDay,
    newlyBroken: [...found.newlyBroken], newlyKept: [...found.newlyKept], newlyPaid: [...found.newlyPaid], noLongerPaid: [...found.noLongerPaid],
  };
}

function closing({ base, change }: Compared): Compared {
  const [before, after] = [hundredths(base), hundredths(change)];
  return { base: before, change: after, difference: hundredths(after - before) };
}

function nullOr(figure: number | null): number | null {
  return figure === null ? null : hundredths(figure);
}

function hundredths(figure: number): number {
  return Math.round(figure * 100) / 100;
}
