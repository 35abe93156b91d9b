/** Parts that answers of several commands have in common. */
import { z } from "zod";
import { RULE_IDS } from "../rules/rule.js";

export const day = z.iso.date();
export const ruleId = z.enum(RULE_IDS);
export const money = z.number().min(0);
export const byRule = z.partialRecord(ruleId, money);
export const daysByGroup = z.record(z.string(), z.number().int().min(0));

export const finding = z.strictObject({
  file: z.string().meta({ description: "name of the file, or \"command line\"" }),
  line: z.number().int().min(1),
  column: z.number().int().min(1),
  code: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  found: z.string(),
  allowed: z.string(),
  next: z.string().meta({ description: "what to write or do instead" }),
});

export const breach = z.strictObject({
  rule: ruleId,
  group: z.string().nullable(),
  cell: z.string().nullable(),
  firstDay: day,
  lastDay: day,
  found: z.string(),
  allowed: z.string(),
});

export const gives = z.strictObject({
  group: z.string().nullable(),
  cell: z.string().nullable(),
  yard: z.string().nullable(),
  firstDay: day,
  lastDay: day,
  breaches: z.array(breach.extend({ unit: z.string() })).min(1),
});

export const wayOut = z.strictObject({
  words: z.string(),
  cost: money.meta({ description: "of the season planned with the change; what the change itself costs or loses is not in it" }),
  change: z.string().nullable().meta({ description: "the text of a change file, where one can say it" }),
});

export const charge = z.strictObject({
  rule: ruleId,
  group: z.string().nullable(),
  cell: z.string().nullable(),
  firstDay: day,
  lastDay: day,
  money,
  found: z.string(),
});

export const season = z.strictObject({ firstDay: day, lastDay: day });
