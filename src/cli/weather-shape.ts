/** The shape of what `weather` prints with --json. */
import { z } from "zod";
import { CAUSES, KINDS } from "../decide/weather/lived-year.js";
import { TURNS } from "../decide/weather/figures.js";
import { RULE_IDS } from "../rules/rule.js";

const day = z.iso.date();
const count = z.number().int().min(0);
const kg = z.number().min(0);
const share = z.number().min(0).max(1);

const often = z.strictObject({
  years: count,
  share,
  low: share.meta({ description: "the true share lies between low and high, 19 times in 20" }),
  high: share,
});

const weak = z.strictObject({
  rule: z.enum(RULE_IDS).nullable(),
  cell: z.string().nullable(),
  years: count,
  example: z.strictObject({ day, group: z.string().nullable(), cell: z.string().nullable(), found: z.string(), allowed: z.string(), inYard: z.boolean() }),
});

const weekOf = day.nullable().meta({ description: "first day of the week by which half of these years have failed" });

export const weatherShape = z.strictObject({
  farm: z.string(),
  season: z.strictObject({ firstDay: day, lastDay: day }),
  seed: z.number().int(),
  yearsAsked: count,
  years: count.meta({ description: "years walked; fewer than asked where it was stopped" }),
  usualYear: z.strictObject({ hayFedKg: kg, yardDays: z.record(z.string(), count) }),
  breaksAsItStands: count.meta({ description: "rules that the plan breaks in the usual year, nobody late" }),
  failed: often.meta({ description: "years in which a rule that is never broken breaks, or grazers stand in a yard where the plan has them out" }),
  badness: z.array(z.strictObject({ upToDays: count.nullable(), years: count })).meta({ description: "failed years by the days on which something is amiss; null for all that have more" }),
  halfHaveDaysAmiss: count.nullable().meta({ description: "half of the failed years have no more days amiss" }),
  halfFailedBy: weekOf,
  firstFailures: z.array(z.strictObject({ week: day, years: count })).meta({ description: "years that fail first in each week of the season" }),
  causes: z.strictObject(Object.fromEntries(CAUSES.map((cause) => [cause, z.strictObject({ failed: often, halfFailedBy: weekOf, weakest: z.array(weak), rules: z.array(weak) })]))),
  hay: z.array(z.strictObject({
    share: share.meta({ description: "share of years in which the amount is enough" }),
    kg,
    low: kg.meta({ description: "the true amount lies between low and high, 19 times in 20" }),
    high: kg.nullable().meta({ description: "null where more years would be needed to say" }),
  })),
  hayByWeek: z.array(z.strictObject({ week: day, kg: z.array(kg).meta({ description: "fed so far that is enough in each share of years, in the order of hay" }) })),
  winterKept: often.meta({ description: "years in which hay in store and hay made feed the yards and leave what winter needs" }),
  kinds: z.array(z.strictObject({
    kind: z.enum(KINDS),
    years: count,
    failed: count,
    hayFedKg: kg.nullable().meta({ description: "half of these years need no more" }),
    yardDays: z.record(z.string(), count).nullable(),
  })),
  figures: z.array(z.strictObject({
    figure: z.string(),
    assumed: z.boolean().meta({ description: "true where the farm file does not say it for all of the farm" }),
    flips: z.array(z.strictObject({
      turn: z.enum(TURNS),
      planFound: z.boolean(),
      costMore: z.number(),
      hayMoreKg: z.number(),
      movesMore: z.number().int(),
      daysElsewhere: count,
      days: count,
      keptCostsMore: z.number().min(0).nullable().meta({ description: "keeping to the plan against the one made for the figure; null where it breaks rules" }),
    })),
  })).nullable().meta({ description: "the one that matters most first; null unless asked for" }),
  files: z.array(z.string()),
  notes: z.array(z.strictObject({
    file: z.string(), line: z.number().int().min(1), column: z.number().int().min(1), code: z.string(), found: z.string(), allowed: z.string(), next: z.string(),
  })),
});

export type WeatherAnswer = z.infer<typeof weatherShape>;
