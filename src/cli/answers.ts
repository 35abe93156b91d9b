/** Shapes of what each command prints with --json; schemas/ is made from them. */
import { z } from "zod";
import { breach, byRule, charge, day, daysByGroup, finding, gives, money, season, wayOut } from "./answer-parts.js";
import { calendarAnswerShape } from "./calendar-answer.js";
import { pensAnswerShape } from "./pens-answer.js";
import { feedAnswerShape } from "./feed-answer.js";
import { sheetsAnswerShape } from "./sheets-answer.js";
import { weatherShape } from "./weather-shape.js";
import { tryAnswerShape } from "./try-answer.js";
import { whyCellShape, whyGroupShape } from "./why-answer.js";

const findingsAnswer = z.strictObject({
  findings: z.array(finding).min(1),
});

const faultAnswer = z.strictObject({
  fault: z.string().meta({ description: "one plain sentence; the fault is the program's own" }),
});

const checkAnswer = z.strictObject({
  farm: z.string(),
  season,
  currency: z.string(),
  cost: money,
  charges: byRule.meta({ description: "money by rule id; rules that cost nothing are left out" }),
  chargeList: z.array(charge),
  yardDays: daysByGroup,
  breaches: z.array(breach),
  notes: z.array(finding),
});

const planAnswer = z.strictObject({
  farm: z.string(),
  season,
  currency: z.string(),
  effort: z.enum(["quick", "usual", "long"]),
  seed: z.number().int(),
  cost: money,
  bound: z.number().meta({ description: "no plan can cost less than this" }),
  boundKind: z.string().meta({ description: "how the bound was come by" }),
  handRuleCost: money,
  savedOfPossible: z.number().nullable().meta({ description: "(handRuleCost - cost) / (handRuleCost - bound); null when there is nothing to save" }),
  charges: byRule,
  yardDays: daysByGroup,
  yardDaysByWeather: z.strictObject({ dry: daysByGroup, usual: daysByGroup, wet: daysByGroup }),
  moves: z.number().int().min(0).meta({ description: "changes of place after the season's first day" }),
  hauls: z.number().int().min(0).meta({ description: "of these, into a field from another field or from the yard" }),
  hayFedKg: z.number().min(0),
  hayMadeKg: z.number().min(0),
  firmUntil: day,
  likelyUntil: day,
  breaches: z.array(breach).meta({ description: "empty unless no plan was found; then what the nearest one breaks" }),
  gives: z.array(gives).meta({ description: "the same breaches by the stay in which they fall, each with its unit" }),
  provenDays: z.number().int().min(0).meta({ description: "re-doing so many days of one group at a time, over all the season, found nothing that breaks less; 0 where some were left out" }),
  clashingHolds: z.array(z.string()).meta({ description: "holds that cannot all stand, each needed for that; empty where holds are not what stands in the way" }),
  waysOut: z.array(wayOut).meta({ description: "cheapest single changes that make a plan possible, when none was found" }),
  otherWays: z.array(wayOut).meta({ description: "dearer ones, planned by a look only" }),
  seconds: z.number().min(0),
  steps: z.number().int().min(0),
  capped: z.boolean().meta({ description: "true when the seconds ran out, or the planning was stopped, before the effort was spent" }),
  files: z.array(z.string()),
  notes: z.array(z.string()),
  fileNotes: z.array(finding),
});

const assumed = z.strictObject({ key: z.string(), value: z.string(), source: z.string(), status: z.string() });

const cellGround = z.strictObject({
  cell: z.string(),
  areaHa: z.number().min(0),
  wayRoundM: z.number().min(0),
  fenceM: z.number().min(0),
  rings: z.array(z.array(z.array(z.number()))).meta({ description: "the ring round it, then one round each hole: corners in metres east and north of a point of the farm's map, or of one where its corners were typed" }),
});

const readAnswer = z.strictObject({
  farm: z.string(),
  units: z.enum(["metric", "US"]),
  season,
  areaHa: z.number().min(0),
  cells: z.number().int().min(1),
  groups: z.array(z.strictObject({
    group: z.string(),
    letter: z.string(),
    kind: z.string(),
    head: z.number().int().min(1),
    liveWeightKg: z.number().min(0),
    cellsItMayEnter: z.number().int().min(0),
    cellsNeeded: z.number().min(0).nullable(),
    demandKg: z.number().min(0).meta({ description: "dry matter eaten from the ground, or fed, over the season" }),
  })),
  ground: z.array(cellGround).meta({ description: "cells whose boundary is known, from a map or typed corners" }),
  grownKg: z.strictObject({ low: z.number(), usual: z.number(), high: z.number() }).meta({ description: "dry matter the land grows in the season" }),
  weeks: z.array(z.strictObject({
    firstDay: day,
    grownKg: z.number(),
    eatenKg: z.number(),
    hayKg: z.number(),
    standingKg: z.number(),
    daysInHand: z.number().nullable(),
  })),
  assumed: z.array(assumed),
  notes: z.array(finding),
});

/** Every shape by the name of its file in schemas/. */
export const ANSWERS = {
  "findings-answer": findingsAnswer,
  "fault-answer": faultAnswer,
  "read-answer": readAnswer,
  "plan-answer": planAnswer,
  "check-answer": checkAnswer,
  "pens-answer": pensAnswerShape,
  "sheets-answer": sheetsAnswerShape,
  "calendar-answer": calendarAnswerShape,
  "feed-answer": feedAnswerShape(finding),
  "weather-answer": weatherShape,
  "try-answer": tryAnswerShape,
  "why-group-answer": whyGroupShape,
  "why-cell-answer": whyCellShape,
} as const;

export type AnswerName = keyof typeof ANSWERS;

export type PlanAnswer = z.infer<typeof planAnswer>;
export type CheckAnswer = z.infer<typeof checkAnswer>;
export type ReadAnswer = z.infer<typeof readAnswer>;
